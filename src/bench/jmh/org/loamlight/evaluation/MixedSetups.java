package org.loamlight.evaluation;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.loamlight.criterion.Knowledge;
import org.loamlight.review.InventedSetup;
import org.loamlight.setup.ProblemsFound;
import org.loamlight.setup.Setup;
import org.loamlight.setup.SetupReader;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;

/** Setups as a review meets them, as bytes: {@value #INVENTED} invented ones of eleven species, then every description in {@code examples}. */
@State(Scope.Benchmark)
public class MixedSetups {
    static final int INVENTED = 500;

    private static final Path EXAMPLES = Path.of("examples");
    /** Holds rules of a house and waivers, which are no descriptions. */
    private static final Path HOUSE = EXAMPLES.resolve("house");
    private static final LocalDate UNDATED = LocalDate.of(2026, 11, 2);

    private final List<byte[]> files = all();
    private final AtomicInteger taken = new AtomicInteger();

    /** The next one, after the last the first again; shared by all threads. */
    public byte[] next() {
        return files.get(Math.floorMod(taken.getAndIncrement(), files.size()));
    }

    /** In the same order each time. */
    static List<byte[]> all() {
        List<byte[]> all = new ArrayList<>(IntStream.rangeClosed(1, INVENTED).mapToObj(MixedSetups::invented).toList());
        try (Stream<Path> files = Files.walk(EXAMPLES)) {
            for (Path file : files.filter(file -> !file.startsWith(HOUSE)).sorted().toList()) {
                all.addAll(descriptions(file));
            }
            return all;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static byte[] invented(int number) {
        return InventedSetup.somewhere(number).getBytes(StandardCharsets.UTF_8);
    }

    private static List<byte[]> descriptions(Path file) throws IOException {
        String name = file.toString();
        if (name.endsWith(".jsonl")) {
            return Files.readAllLines(file).stream().map(line -> line.getBytes(StandardCharsets.UTF_8)).toList();
        }
        return name.endsWith(".json") ? List.of(Files.readAllBytes(file)) : List.of();
    }

    /** @throws IllegalStateException when it cannot be read: then there is nothing to be timed */
    static Setup read(byte[] file, Knowledge knowledge) {
        try {
            return SetupReader.read("setup.json", file, knowledge.speciesNames());
        } catch (ProblemsFound e) {
            throw new IllegalStateException(e.problems().toString(), e);
        }
    }

    /** The day its description names, else one of our choice: the same setup has the same audit on each day it is timed. */
    static LocalDate day(Setup setup) {
        return setup.on().orElse(UNDATED);
    }
}
