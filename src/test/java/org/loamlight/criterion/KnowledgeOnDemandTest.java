package org.loamlight.criterion;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Supplier;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.loamlight.setup.ProblemsFound;

/** Knowledge read in parts: the same as read whole, and what is damaged is told by whoever needs it. */
class KnowledgeOnDemandTest {
    private static final String GUARD = "heat.guard";
    private static final String CORN_SNAKE = "pantherophis-guttatus";
    private static final String KING_SNAKE = "lampropeltis-californiae";
    /** Latin 1, so that every byte of the file is one character here. */
    private static final String FILE = builtIn();

    private static String builtIn() {
        try (InputStream file = KnowledgeReader.class.getResourceAsStream(KnowledgeReader.RESOURCE)) {
            return new String(file.readAllBytes(), StandardCharsets.ISO_8859_1);
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    private static byte[] bytes(String file) {
        return file.getBytes(StandardCharsets.ISO_8859_1);
    }

    private static Knowledge onDemand(String file) {
        return KnowledgeReader.onDemand(bytes(file), "00");
    }

    /** The file with something else in the second line of the element of an id. */
    private static String damaged(String id, String from, String to) {
        int element = FILE.indexOf("\"id\":\"" + id + "\"");
        assertTrue(element > 0, id);
        int rest = FILE.indexOf("\n,", element);
        String changed = FILE.substring(0, rest) + FILE.substring(rest).replaceFirst(from, to);
        assertNotEquals(FILE, changed);
        return changed;
    }

    private static String told(Runnable asking) {
        String message = assertThrows(IllegalStateException.class, asking::run).getMessage();
        assertTrue(message.startsWith("The knowledge file " + KnowledgeReader.RESOURCE + " cannot be read: "), message);
        return message;
    }

    @Test
    void read_in_parts_it_is_what_it_is_read_whole() throws ProblemsFound {
        Knowledge whole = KnowledgeReader.read(bytes(FILE));
        Knowledge parts = KnowledgeReader.onDemand(bytes(FILE), whole.sha256());
        assertEquals(whole, parts);
        assertEquals(whole.hashCode(), parts.hashCode());
        assertEquals(whole.speciesNames(), parts.speciesNames());
        assertEquals(List.copyOf(whole.sources().values()), List.copyOf(parts.sources().values()));
        assertTrue(parts.criteria().size() > 100 && parts.profiles().size() > 10 && parts.sources().size() > 100);
    }

    @Test
    void a_damaged_page_is_told_by_whoever_asks_for_it_and_by_reading_whole() {
        String file = damaged(GUARD, "\"requirement\":", "\"requirement\" ");
        Knowledge knowledge = onDemand(file);
        assertEquals(KnowledgeReader.builtIn().criterion("heat.control").page(), knowledge.criterion("heat.control").page());
        assertEquals(KnowledgeReader.builtIn().criterion(GUARD).title(), knowledge.criterion(GUARD).title());
        for (int asked = 0; asked < 2; asked++) {
            String message = told(() -> knowledge.criterion(GUARD).page().why());
            assertTrue(message.contains("the page of " + GUARD) && message.contains("this is not JSON"), message);
        }
        assertThrows(ProblemsFound.class, () -> KnowledgeReader.read(bytes(file)));
    }

    @Test
    void a_damaged_profile_is_told_by_whoever_asks_for_it_and_by_reading_whole() {
        String file = damaged(CORN_SNAKE, "\"at-least\":", "\"at-last\":");
        Knowledge knowledge = onDemand(file);
        assertEquals(KnowledgeReader.builtIn().profile(KING_SNAKE), knowledge.profile(KING_SNAKE));
        assertEquals(KnowledgeReader.builtIn().speciesNames(), knowledge.speciesNames());
        assertTrue(knowledge.profiles().containsKey(CORN_SNAKE));
        String message = told(() -> knowledge.profile(CORN_SNAKE));
        assertTrue(message.contains("the profile of " + CORN_SNAKE) && message.contains("at-last"), message);
        assertThrows(ProblemsFound.class, () -> KnowledgeReader.read(bytes(file)));
    }

    @Test
    void a_byte_that_is_no_text_is_told() {
        Knowledge knowledge = onDemand(damaged(CORN_SNAKE, "\"note\":\"", "\"note\":\"\u00ff"));
        String message = told(() -> knowledge.profile(CORN_SNAKE));
        assertTrue(message.contains("0xFF"), message);
    }

    @Test
    void damaged_sources_are_told_when_a_source_is_asked_for() {
        Knowledge knowledge = onDemand(FILE.replaceFirst("(?<=\"sources\":\\[\\{\"id\":\"[a-z0-9-]{1,40}\",\"tit)le", "el"));
        assertTrue(told(() -> knowledge.source("judgement")).contains("the sources"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"\"need\":", "\"limit-rules\":", "\"english\":"})
    void what_every_audit_needs_is_told_at_once(String key) {
        told(() -> onDemand(FILE.replaceFirst(key, "\"no-" + key.substring(1))));
    }

    @Test
    void a_file_cut_short_or_gone_on_or_of_other_lines_is_told_at_once() {
        String cut = told(() -> onDemand(FILE.substring(0, FILE.length() - 4000)));
        assertTrue(cut.contains("not as the build writes it"), cut);
        told(() -> onDemand(FILE + "{}\n"));
        told(() -> onDemand(FILE.replaceFirst("\n,\"page\"", ",\"page\"")));
        told(() -> onDemand(""));
        told(() -> onDemand("{\"version\": \"0.1.0\"}\n"));
    }

    @Test
    void a_profile_is_read_once_however_many_ask() throws Exception {
        Knowledge knowledge = onDemand(FILE);
        List<Profile> profiles = together(() -> knowledge.profile(CORN_SNAKE));
        assertSame(profiles.get(0), profiles.get(1));
        assertEquals(KnowledgeReader.builtIn().profile(CORN_SNAKE), profiles.get(0));
        List<Page> pages = together(() -> knowledge.criterion(GUARD).page());
        assertEquals(KnowledgeReader.builtIn().criterion(GUARD).page(), pages.get(1));
    }

    @Test
    void a_value_is_made_once_by_the_first_of_two_threads() throws Exception {
        AtomicInteger made = new AtomicInteger();
        Once<Integer> once = Once.by(made::incrementAndGet);
        assertEquals(List.of(1, 1), together(once::get));
        assertEquals(1, made.get());
    }

    @Test
    void making_that_fails_is_tried_again() {
        AtomicInteger tried = new AtomicInteger();
        Once<Integer> once = Once.by(() -> {
            if (tried.incrementAndGet() == 1) {
                throw new IllegalStateException("not yet");
            }
            return 7;
        });
        assertThrows(IllegalStateException.class, once::get);
        assertEquals(7, once.get());
    }

    @Test
    void keys_are_known_without_reading_and_nobody_changes_the_map() {
        Once<Integer> unread = Once.by(() -> {
            throw new IllegalStateException("read");
        });
        Map<String, Integer> map = new OnDemand<>(Once.of(Map.of("one", unread)));
        assertTrue(map.containsKey("one") && map.size() == 1 && map.keySet().contains("one"));
        assertEquals(null, map.get("two"));
        assertThrows(IllegalStateException.class, () -> map.get("one"));
        assertThrows(UnsupportedOperationException.class, () -> map.put("two", 2));
        assertThrows(UnsupportedOperationException.class, () -> map.keySet().remove("one"));
    }

    /** What two threads get that ask at the same time. */
    private static <T> List<T> together(Supplier<T> asked) throws Exception {
        ExecutorService pool = Executors.newFixedThreadPool(2);
        CyclicBarrier start = new CyclicBarrier(2);
        try {
            List<Future<T>> answers = new ArrayList<>();
            for (int thread = 0; thread < 2; thread++) {
                answers.add(pool.submit(() -> {
                    start.await();
                    return asked.get();
                }));
            }
            return List.of(answers.get(0).get(), answers.get(1).get());
        } finally {
            pool.shutdownNow();
        }
    }
}
