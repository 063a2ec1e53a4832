package org.loamlight.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.loamlight.evaluation.Audit;
import org.loamlight.finding.Finding;
import org.loamlight.finding.Pair;
import org.loamlight.ranking.Ranking;
import org.loamlight.wording.EveryLocale;

class TextReportTest {
    private static final int WIDTH = 80;

    static List<String> nastyNames() {
        return List.of("x".repeat(200), "lamp ".repeat(40).strip(), "飼育".repeat(60), "Lampe e\u0301\u0302\u0303".repeat(20), "e" + "\u0301".repeat(150),
                "מנורת חימום ".repeat(12).strip(), "\u202Emirrored lamp\u202C", "مصباح ".repeat(20).strip(), "\uD83E\uDD8E".repeat(60), "a [b].c {0} {limit} $1",
                "<b>&amp;</b> | ' %s %n", "1234567890 °C ".repeat(10).strip());
    }

    @ParameterizedTest
    @MethodSource("nastyNames")
    void no_name_makes_a_line_longer_than_eighty_columns(String name) {
        for (Audit audit : List.of(Audited.named(name, "basking lamp"), Audited.named("Bracken", name), Audited.named(name + "!", name))) {
            String report = Audited.text(audit);
            report.lines().forEach(TextReportTest::assertFits);
            assertFalse(report.contains("\u202E"), "nothing turns the direction of the text");
        }
    }

    private static void assertFits(String line) {
        assertTrue(line.codePointCount(0, line.length()) <= WIDTH, line);
        long han = line.codePoints().filter(c -> Character.UnicodeScript.of(c) == Character.UnicodeScript.HAN).count();
        assertTrue(line.codePointCount(0, line.length()) + han <= WIDTH, line);
        assertEquals(line.stripTrailing(), line);
    }

    @ParameterizedTest
    @MethodSource("nastyNames")
    void no_letter_of_a_name_is_lost(String name) {
        String report = Audited.text(Audited.named("Bracken", name)).replaceAll("\\s", "");
        assertTrue(report.contains(name.replaceAll("[\\s\u202C\u202E]", "")), report);
    }

    static Stream<Audit> audits() {
        return Stream.concat(Stream.of(Audited.bare()), Audited.examples().stream());
    }

    @ParameterizedTest
    @MethodSource("audits")
    void every_report_has_its_parts_and_ends_with_the_knowledge(Audit audit) {
        String report = Audited.text(audit);
        List<String> lines = report.lines().toList();
        assertEquals("Loamlight - husbandry audit of " + audit.on(), lines.get(0));
        List<String> headings = lines.stream().filter(line -> line.matches("[A-Z ]{8,}")).filter(line -> !line.equals("WHAT WAS WORKED OUT BESIDE")).toList();
        assertEquals(List.of("WHAT TO DO", "WHAT TO FIND OUT", "WHAT IS RIGHT", "WHAT DOES NOT APPLY", "TAKE CARE", "HOW TO READ THIS"), headings);
        assertEquals("Knowledge " + audit.knowledge().version() + ", SHA-256 " + audit.knowledge().sha256().substring(0, 12),
                lines.get(lines.size() - 1));
        lines.forEach(TextReportTest::assertFits);
        assertFalse(Pattern.compile("\\{\\w+}").matcher(report).find(), "no slot is left open");
        assertFalse(report.contains("\n\n\n") || report.contains("\r"), "one empty line at most");
    }

    @ParameterizedTest
    @MethodSource("audits")
    void every_open_finding_has_its_number_in_the_order_of_the_ranking(Audit audit) {
        Ranking ranking = Ranking.of(audit.findings());
        String report = Audited.text(audit);
        int from = 0;
        int number = 1;
        for (Finding finding : ranking.open()) {
            int at = report.indexOf("\n" + number + ". ", from);
            String item = at < 0 ? "" : report.substring(at).replaceAll("\\s+", " ");
            int title = item.indexOf(finding.criterion().title());
            assertTrue(title > 0 && title < 60, number + ". " + finding.pair().key());
            from = at;
            number++;
        }
        assertEquals(-1, report.indexOf("\n" + number + ". ", from));
    }

    @Test
    void a_danger_says_where_what_how_by_when_and_whence() {
        String report = Audited.text(Audited.bare());
        String lamp = item(report, "DANGER, not right: A hot heater within reach has a guard");
        assertTrue(lamp.contains("Where basking lamp (heater)"), lamp);
        assertTrue(lamp.contains("Found The animal can touch the heater \"basking lamp\""), lamp);
        assertTrue(lamp.contains("Put right "), lamp);
        assertTrue(lamp.contains("By 2026-11-02 (today)"), lamp);
        assertTrue(lamp.contains("Source ") && lamp.contains("(read)"), lamp);
        String length = item(report, "The animal can lie stretched out along the enclosure");
        assertTrue(length.contains("Found 18 cm too short; inside length: 100.0 cm ± 0.6 cm"), length);
        assertTrue(length.contains("Required at least 118 cm"), length);
    }

    /** The item of this title, its lines joined. */
    private static String item(String report, String title) {
        String joined = report.replaceAll("\n\n", "\u0000").replaceAll("\\s+", " ");
        int at = joined.indexOf(title);
        assertTrue(at > 0, report);
        return joined.substring(at, joined.indexOf('\u0000', at));
    }

    @Test
    void what_is_not_known_says_with_what_to_find_out() {
        String lamp = item(Audited.text(Audited.bare()), "HARM, not known yet: A hot heater within reach has a guard");
        assertTrue(lamp.contains("What Not known: whether a guard keeps the animal off \"basking lamp too\"."), lamp);
        assertTrue(lamp.contains("With your eyes"), lamp);
    }

    @Test
    void an_effect_stands_under_its_cause_and_says_so() {
        Audit bare = Audited.bare();
        Finding cause = Audited.finding(bare, "heat.guard", "heater:basking lamp");
        Finding effect = Audited.finding(bare, "space.length", "animal:Bracken");
        Audit linked = Audited.only(bare, Audited.explained(bare, cause.pair(), effect.pair()).findings().stream()
                .filter(finding -> List.of(cause.pair(), effect.pair()).contains(finding.pair())).toList());
        String report = Audited.text(linked).replaceAll("[ \n]+", " ");
        assertTrue(report.contains("2. HARM, not right: The animal can lie stretched out along the enclosure Because of 1: put that right first, then "
                + "look again"), report);
        assertTrue(report.contains("Leads to 2"), report);
    }

    @Test
    void a_cause_that_is_not_in_the_report_is_not_numbered() {
        Audit bare = Audited.bare();
        Finding effect = Audited.finding(bare, "space.length", "animal:Bracken").linked(List.of(), List.of(new Pair("heat.guard", bare.findings().get(0).subject())));
        assertFalse(Audited.text(Audited.only(bare, List.of(effect))).contains("Because"));
    }

    @Test
    void empty_lists_are_said() {
        String nothing = Audited.text(Audited.only(Audited.bare(), List.of()));
        for (String sentence : List.of("Nothing to put right.", "Nothing to find out.", "Nothing could be shown to be right yet.", "Every point applies.")) {
            assertTrue(nothing.contains("\n" + sentence + "\n"), nothing);
        }
    }

    @Test
    void what_is_right_says_what_was_measured_not_only_of_whom() {
        Audit longEnough = Audited.of("""
                {"format": 1, "animals": [{"name": "Bracken", "species": "pantherophis-guttatus", "length": "118 cm"}],
                 "enclosure": {"inside": {"length": "130 cm"}}}""");
        String report = Audited.text(longEnough).replaceAll("\\s+", " ");
        assertTrue(report.contains("+ The animal can lie stretched out along the enclosure: Bracken, inside length 130.0 cm ± 0.6 cm"), report);
    }

    @Test
    void what_does_not_apply_gives_its_reason() {
        String report = Audited.text(Audited.bare()).replaceAll("\\s+", " ");
        assertTrue(report.contains("- A hot heater within reach has a guard - basking lamp again (heater): the animal lies on or over it, so its control and its surface are judged instead"), report);
    }

    @Test
    void each_caution_stands_once() {
        String report = Audited.text(Audited.bare());
        String cautions = report.substring(report.indexOf("TAKE CARE"), report.indexOf("HOW TO READ THIS")).replaceAll("\\s+", " ");
        List<String> texts = Audited.bare().knowledge().cautions().stream().map(caution -> caution.text().replaceAll("\\s+", " ")).toList();
        assertTrue(texts.stream().anyMatch(cautions::contains), cautions);
        texts.forEach(text -> assertEquals(cautions.indexOf(text), cautions.lastIndexOf(text)));
    }

    @Test
    void lengths_are_told_in_the_units_asked_for() {
        Audit bare = Audited.bare();
        String report = TextReport.of(bare, Ranking.of(bare.findings()), Audited.US).replaceAll("\\s+", " ");
        // 118 cm = 46.457 in, rounded up so that the printed length suffices; 18 cm = 7.087 in (1 in = 2.54 cm, NIST SP 811, B.8).
        assertTrue(report.contains("Required at least 46.5 in"), report);
        assertTrue(report.contains("7.1 in too short"), report);
        assertFalse(report.contains(" cm "), report);
    }

    @Test
    void the_report_does_not_change_with_the_default_locale() {
        Audit bare = Audited.bare();
        assertEquals(1, EveryLocale.texts(() -> Audited.text(bare)).size());
        assertTrue(EveryLocale.texts(() -> Audited.text(bare)).iterator().next().contains("\n1.  DANGER, "));
    }

    @Test
    void several_animals_are_all_named() {
        Audit two = Audited.of("""
                {"format": 1, "animals": [{"name": "Bracken", "species": "pantherophis-guttatus"},
                  {"name": "Sedge", "species": "lampropeltis-californiae", "since": "2027-01-01"}]}""");
        String report = Audited.text(two);
        assertTrue(report.replaceAll("\\s+", " ").contains("Animals Bracken: corn snake (Pantherophis guttatus), not said to live here yet "
                + "Sedge: California kingsnake (Lampropeltis californiae), moves in on 2027-01-01 Enclosure "), report);
        assertFalse(report.contains("\nSetup"), "what has no title is not given one");
    }

    @Test
    void sources_named_before_are_referred_to() {
        Audit bare = Audited.bare();
        Audit lamps = Audited.only(bare, bare.findings().stream().filter(finding -> finding.criterion().id().equals("heat.guard"))
                .map(finding -> finding.linked(List.of(), List.of())).toList());
        String report = Audited.text(lamps).replaceAll("\\s+", " ");
        assertTrue(report.contains("Source as for 1"), report);
        assertTrue(report.indexOf("(read)") < report.indexOf("Source as for 1"), "the first item names them in full");
    }
}
