package org.loamlight.wording;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import org.loamlight.criterion.Citation;
import org.loamlight.criterion.Criterion;
import org.loamlight.criterion.DecisionRule;
import org.loamlight.criterion.Grade;
import org.loamlight.criterion.Knowledge;
import org.loamlight.criterion.Need;
import org.loamlight.criterion.Page;
import org.loamlight.criterion.LimitUse;
import org.loamlight.criterion.ResolvedLimit;
import org.loamlight.criterion.Source;
import org.loamlight.criterion.Standing;
import org.loamlight.criterion.Where;
import org.loamlight.finding.Finding;
import org.loamlight.finding.Held;
import org.loamlight.finding.Result;
import org.loamlight.finding.Voided;
import org.loamlight.quantity.Method;
import org.loamlight.quantity.Origin;
import org.loamlight.quantity.Place;
import org.loamlight.quantity.Quantity;
import org.loamlight.quantity.Step;
import org.loamlight.quantity.Topic;
import org.loamlight.quantity.Zone;
import org.loamlight.setup.Purpose;
import org.loamlight.setup.Subject;
import org.loamlight.setup.SubjectKind;

/** Findings made by hand, so that words can be checked one by one. */
final class Made {
    static final Citation JUDGEMENT = new Citation("judgement", "", Standing.JUDGEMENT);
    static final Citation BOOK = new Citation("field-notes", "table 2", Standing.SECONDARY);
    static final Subject LAMP = new Subject(SubjectKind.LAMP, "UV tube");

    private Made() {
    }

    static Knowledge knowledge() {
        Criterion shade = criterion("air.shade", SubjectKind.READING, List.of(), new Page("In the shade.", "", "", Map.of(), "", Map.of()));
        return new Knowledge("0.1.0", "00", Map.of(shade.id(), shade), Map.of(), Map.of("judgement",
                new Source("judgement", "Our own judgement, no source", "nothing"), "field-notes",
                new Source("field-notes", "Sedge, A. Field notes from the Marram coast, 2019", "abstract")), List.of(), List.of());
    }

    static Criterion criterion(String id, SubjectKind subject, List<Topic> topics, Page page) {
        return new Criterion(id, "The title of " + id, Need.ENVIRONMENT, Grade.MAJOR, Map.of(), subject, List.of(), EnumSet.allOf(Purpose.class),
                List.of(), List.of(), topics, false, false, DecisionRule.SIMPLE, List.of(BOOK), List.of(), "0.1.0", page, List.of());
    }

    static Quantity quantity(Topic topic, Place place, double value, double uncertainty, Step... trail) {
        return new Quantity(topic, place, value, uncertainty, new Origin(Method.MEASURED, "reading:cool probe", "2026-10-30"), List.of(trail));
    }

    /** Air by day at the cool end. */
    static Quantity air(double value, double uncertainty) {
        return quantity(Topic.AIR_TEMPERATURE_BY_DAY, Place.of(Zone.COOL_END), value, uncertainty);
    }

    static ResolvedLimit limit(Topic topic, Place place, double low, double high) {
        return new ResolvedLimit("air.made", Subject.ENCLOSURE, topic, place, Where.EVERYWHERE, LimitUse.NEED, low, high, 0, DecisionRule.SIMPLE, Grade.MAJOR,
                JUDGEMENT, "Bracken");
    }

    static ResolvedLimit airLimit(double low, double high) {
        return limit(Topic.AIR_TEMPERATURE_BY_DAY, Place.of(Zone.COOL_END), low, high);
    }

    static ResolvedLimit graded(ResolvedLimit limit, Grade grade) {
        return new ResolvedLimit(limit.criterion(), limit.subject(), limit.topic(), limit.place(), limit.where(), limit.use(), limit.low(), limit.high(), 0,
                limit.decision(), grade, limit.citation(), limit.animal());
    }

    static ResolvedLimit somewhere(ResolvedLimit limit) {
        return new ResolvedLimit(limit.criterion(), limit.subject(), limit.topic(), limit.place(), Where.SOMEWHERE, LimitUse.NEED, limit.low(), limit.high(), 0,
                limit.decision(), limit.grade(), limit.citation(), limit.animal());
    }

    /** A finding on limits, the deciding one first; its page corrects with both amounts. */
    static Finding held(Quantity quantity, ResolvedLimit... limits) {
        List<Held> held = new ArrayList<>();
        List.of(limits).forEach(limit -> held.add(Held.of(quantity, limit)));
        Page page = new Page("Keep to it.", "", "Hang it up.\nWait.", Map.of("", "Bring {subject} to {limit}: {shortfall} from now.\nMore words."), "", Map.of());
        Criterion criterion = criterion("air.made", SubjectKind.ENCLOSURE, List.of(quantity.topic()), page);
        return finding(criterion, Subject.ENCLOSURE, held.get(0).decision().result(), held);
    }

    static Finding finding(Criterion criterion, Subject subject, Result result, List<Held> held) {
        return new Finding(criterion, subject, result, criterion.grade(), List.of(), held, List.of(), List.of(), List.of(), List.of(), "", List.of(),
                List.of());
    }

    /** A finding without evidence. */
    static Finding lacking(List<String> missing, List<ResolvedLimit> wanted, List<Voided> voided) {
        List<Topic> topics = wanted.stream().map(ResolvedLimit::topic).toList();
        Criterion criterion = criterion("air.made", SubjectKind.ENCLOSURE, topics, new Page("", "", "", Map.of(), "", Map.of()));
        return new Finding(criterion, Subject.ENCLOSURE, Result.NO_EVIDENCE, Grade.MAJOR, List.of(), List.of(), List.of(), missing, wanted, voided, "",
                List.of(), List.of());
    }

    /** A finding of rules with these variants. */
    static Finding faulty(Subject subject, Page page, List<String> variants, Quantity... evidence) {
        return new Finding(criterion("air.made", subject.kind(), List.of(), page), subject, Result.NONCONFORMITY, Grade.MAJOR, variants, List.of(),
                List.of(evidence), List.of(), List.of(), List.of(), "", List.of(), List.of());
    }
}
