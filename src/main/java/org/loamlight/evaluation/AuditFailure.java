package org.loamlight.evaluation;

/** The audit itself failed: an exception in a rule, rules that differ from the catalogue. Never a pass. */
public final class AuditFailure extends RuntimeException {
    private static final long serialVersionUID = 1;

    public AuditFailure(String message) {
        super(message);
    }

    public AuditFailure(String message, Throwable cause) {
        super(message, cause);
    }
}
