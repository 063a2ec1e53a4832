package org.loamlight.workbook.visit;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.loamlight.setup.Question;
import org.loamlight.setup.QuestionCatalogue;
import org.loamlight.setup.Setup;
import org.loamlight.setup.Subject;
import org.loamlight.setup.SubjectKind;
import org.loamlight.setup.Told;

/** The questions that can be asked of the parts of one setup, by the path of the answer: {@code heaters[basking lamp].guard}. */
final class AskedPaths {
    private final Map<String, Question> byPath = new HashMap<>();

    private AskedPaths() {
    }

    static AskedPaths of(Setup setup) {
        AskedPaths asked = new AskedPaths();
        for (Question question : QuestionCatalogue.builtIn()) {
            if (question.kind() != Question.Kind.PARTS && question.kind() != Question.Kind.VERSION) {
                subjects(question, setup).forEach(subject -> asked.byPath.put(Told.resolved(question.path(), subject), question));
            }
        }
        return asked;
    }

    /** The parts a question is asked of; the enclosure for what is asked once; none for the parts of a part. */
    static List<Subject> subjects(Question question, Setup setup) {
        if (question.list().isEmpty()) {
            return List.of(Subject.ENCLOSURE);
        }
        return Stream.of(SubjectKind.values()).filter(kind -> kind.section().equals(question.list())).findFirst().map(setup::subjects).orElse(List.of());
    }

    /** The question of a path; empty when the setup has no such part, or nothing is asked there. */
    Optional<Question> question(String path) {
        return Optional.ofNullable(byPath.get(path));
    }
}
