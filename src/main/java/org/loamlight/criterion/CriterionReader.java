package org.loamlight.criterion;

import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.loamlight.quantity.Topic;
import org.loamlight.setup.Purpose;
import org.loamlight.setup.Section;
import org.loamlight.setup.Stated;
import org.loamlight.setup.SubjectKind;
import org.loamlight.setup.Words;

/** Reads a criterion as its folder in rules/ tells it: front matter and page. */
final class CriterionReader {
    private CriterionReader() {
    }

    /** A criterion with its page. */
    static Criterion whole(Section criterion) {
        return front(criterion, criterion.section("page", CriterionReader::page));
    }

    /** A criterion by its front matter, its page read elsewhere. */
    static Criterion front(Section criterion, Page page) {
        return new Criterion(dotted(criterion), criterion.requiredText("title", "a title"),
                must(criterion, "need", Need.class), must(criterion, "grade", Grade.class), grades(criterion),
                must(criterion, "subject", SubjectKind.class), List.copyOf(criterion.choices("applies-when", Condition.class)),
                purposes(criterion), criterion.texts("needs"), criterion.texts("reads"), topics(criterion),
                criterion.stated("held-by-rule") == Stated.YES, criterion.stated("informs") == Stated.YES,
                criterion.choice("decision", DecisionRule.class, DecisionRule.SIMPLE),
                criterion.unnamed("sources", LimitReader::citation), criterion.texts("cautions"),
                criterion.requiredText("since", "the version it came with"), page,
                criterion.texts("rules"));
    }

    private static String dotted(Section criterion) {
        String id = criterion.requiredText("id", "an id");
        if (!id.isEmpty() && !id.matches("[a-z-]+\\.[a-z-]+")) {
            criterion.problem("id", "found \"" + id + "\"", "an id is a topic, a dot and a name in small letters: \"heat.guard\"");
        }
        return id;
    }

    /** A word that must be there; what is allowed is put together only for whoever has to be told. */
    static <E extends Enum<E>> E must(Section section, String key, Class<E> type) {
        return section.isAnswered(key) ? section.choice(key, type, null) : LimitReader.must(section, key, type, "say one of " + String.join(", ", Words.all(type)));
    }

    private static Map<String, Grade> grades(Section criterion) {
        return criterion.section("grades", section -> {
            Map<String, Grade> grades = new LinkedHashMap<>();
            section.keys().forEach(variant -> grades.put(variant, must(section, variant, Grade.class)));
            return grades;
        });
    }

    private static Set<Purpose> purposes(Section criterion) {
        Set<Purpose> named = criterion.choices("purposes", Purpose.class);
        return named.isEmpty() ? EnumSet.allOf(Purpose.class) : named;
    }

    private static List<Topic> topics(Section criterion) {
        return criterion.texts("topics").stream().flatMap(id -> LimitReader.topic(criterion, "topics", id).stream()).toList();
    }

    static Page page(Section page) {
        return new Page(page.prose("requirement"), page.prose("why"), page.prose("measure"), page.textsByKey("correct"),
                page.textsByKey("meanwhile"), page.prose("exceptions"), page.textsByKey("found"));
    }
}
