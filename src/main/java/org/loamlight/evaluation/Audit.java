package org.loamlight.evaluation;

import java.time.LocalDate;
import java.util.List;
import org.loamlight.criterion.Knowledge;
import org.loamlight.criterion.Waivers;
import org.loamlight.finding.Finding;
import org.loamlight.quantity.Quantity;
import org.loamlight.setup.Setup;

/**
 * An audited setup.
 *
 * @param on         day of the audit
 * @param quantities every quantity that was derived, in the order of derivation
 * @param findings   one for each pair of criterion and subject, in the order of criterion id and subject key
 * @param waived     which of them somebody gave leave for
 */
public record Audit(Setup setup, LocalDate on, Knowledge knowledge, List<Quantity> quantities, List<Finding> findings,
        WaivedFindings waived) {
    public Audit {
        quantities = List.copyOf(quantities);
        findings = List.copyOf(findings);
    }

    /** Nothing is waived. */
    public Audit(Setup setup, LocalDate on, Knowledge knowledge, List<Quantity> quantities, List<Finding> findings) {
        this(setup, on, knowledge, quantities, findings, WaivedFindings.NONE);
    }

    /** The same, with the leave that was given. */
    public Audit with(Waivers waivers) {
        return new Audit(setup, on, knowledge, quantities, findings, WaivedFindings.of(this, waivers));
    }
}
