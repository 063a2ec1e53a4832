package org.loamlight.finding;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.loamlight.criterion.Citation;
import org.loamlight.criterion.Criterion;
import org.loamlight.criterion.Grade;
import org.loamlight.criterion.ResolvedLimit;
import org.loamlight.quantity.Quantity;
import org.loamlight.setup.Subject;

/**
 * The outcome for one criterion and one subject. It carries keys and numbers only; sentences are made later.
 *
 * @param grade       how grave it is, or would be
 * @param variants    rule variants that found it wrong, sorted, "" for the rule without variant; empty when none did
 * @param held        every quantity held against a limit, the deciding one first; empty for criteria judged by rules
 * @param evidence    quantities a rule rests on, sorted; empty when it rests on what the setup says
 * @param missing     paths of unanswered questions, sorted; empty when nothing is missing
 * @param wanted      limits nothing could be held against, in their order; empty when every limit was held
 * @param voided      quantities that did not count, sorted
 * @param reason      why it does not apply, as a sentence key or a sentence of the profile; empty for other results
 * @param explains    the findings it explains, sorted by key
 * @param explainedBy the findings it is explained by, sorted by key
 */
public record Finding(Criterion criterion, Subject subject, Result result, Grade grade, List<String> variants, List<Held> held,
        List<Quantity> evidence, List<String> missing, List<ResolvedLimit> wanted, List<Voided> voided, String reason, List<Pair> explains, List<Pair> explainedBy) {

    public Finding {
        variants = List.copyOf(variants);
        held = List.copyOf(held);
        evidence = List.copyOf(evidence);
        missing = List.copyOf(missing);
        wanted = List.copyOf(wanted);
        voided = List.copyOf(voided);
        explains = List.copyOf(explains);
        explainedBy = List.copyOf(explainedBy);
    }

    public Pair pair() {
        return new Pair(criterion.id(), subject);
    }

    /** The variant that gives the grade: the first of {@link #variants()}; "" when there is none. */
    public String variant() {
        return variants.isEmpty() ? "" : variants.get(0);
    }

    /** The quantity and limit that decided; empty for criteria judged by rules and where evidence is missing. */
    public Optional<Held> deciding() {
        return held.stream().findFirst();
    }

    /** The probability that the requirement is not met; 1 for what a rule found, 0 where nothing could be held. */
    public double nonconformityProbability() {
        if (held.isEmpty()) {
            return result == Result.NONCONFORMITY ? 1 : 0;
        }
        return 1 - held.get(0).probability();
    }

    /** Where it stands what is asked: of the limits that decide or are wanted, else of the criterion. */
    public List<Citation> citations() {
        List<Citation> ofLimits = Stream.concat(deciding().map(Held::limit).stream(), wanted.stream()).map(ResolvedLimit::citation).toList();
        return ofLimits.isEmpty() ? criterion.citations() : ofLimits;
    }

    /** Whether there is something to do or to find out. */
    public boolean isOpen() {
        return result == Result.NONCONFORMITY || result == Result.NO_EVIDENCE || result == Result.UNDECIDED;
    }

    /** The same finding with its place among causes and effects. */
    public Finding linked(List<Pair> effects, List<Pair> causes) {
        return new Finding(criterion, subject, result, grade, variants, held, evidence, missing, wanted, voided, reason, effects, causes);
    }
}
