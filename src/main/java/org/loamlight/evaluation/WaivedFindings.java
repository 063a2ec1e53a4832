package org.loamlight.evaluation;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.loamlight.criterion.Waiver;
import org.loamlight.criterion.Waivers;
import org.loamlight.finding.Finding;
import org.loamlight.finding.Pair;
import org.loamlight.setup.Setup;
import org.loamlight.setup.SubjectKind;

/**
 * Which findings of an audit are waived. A finding that is in order or does not apply needs no waiver.
 *
 * @param inForce the waiver of each open finding that is waived on the day of the audit, in the order of the findings
 * @param expired the waiver of each open finding whose waiver has run out
 * @param unused  waivers that matched no open finding, in the order of their file
 */
public record WaivedFindings(Map<Pair, Waiver> inForce, Map<Pair, Waiver> expired, List<Waiver> unused) {
    /** Nothing is waived. */
    public static final WaivedFindings NONE = new WaivedFindings(Map.of(), Map.of(), List.of());

    /** Holds the waivers against the open findings; the first that still holds counts, else the first that has run out. */
    public static WaivedFindings of(Audit audit, Waivers waivers) {
        Map<Pair, Waiver> inForce = new LinkedHashMap<>();
        Map<Pair, Waiver> expired = new LinkedHashMap<>();
        List<Waiver> unused = new ArrayList<>(waivers.all());
        audit.findings().stream().filter(Finding::isOpen).forEach(finding -> {
            List<Waiver> matching = waivers.all().stream().filter(waiver -> isFor(waiver, finding, audit.setup())).toList();
            unused.removeAll(matching);
            Optional<Waiver> holding = first(matching, audit.on(), true);
            holding.ifPresent(waiver -> inForce.put(finding.pair(), waiver));
            if (holding.isEmpty()) {
                first(matching, audit.on(), false).ifPresent(waiver -> expired.put(finding.pair(), waiver));
            }
        });
        return new WaivedFindings(inForce, expired, List.copyOf(unused));
    }

    private static Optional<Waiver> first(List<Waiver> waivers, LocalDate on, boolean holds) {
        return waivers.stream().filter(waiver -> waiver.holdsOn(on) == holds).findFirst();
    }

    private static boolean isFor(Waiver waiver, Finding finding, Setup setup) {
        return waiver.criterion().equals(finding.criterion().id())
                && waiver.setup().map(title -> title.equals(setup.title())).orElse(true)
                && waiver.animal().map(name -> isAbout(name, finding, setup)).orElse(true)
                && waiver.subject().map(name -> name.equals(finding.subject().name())).orElse(true);
    }

    /** What is not about one animal concerns each that lives there. */
    private static boolean isAbout(String animal, Finding finding, Setup setup) {
        return finding.subject().kind() == SubjectKind.ANIMAL ? finding.subject().name().equals(animal)
                : setup.animals().stream().anyMatch(one -> one.name().equals(animal));
    }
}
