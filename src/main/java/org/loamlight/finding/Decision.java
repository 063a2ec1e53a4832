package org.loamlight.finding;

/** Whether a quantity keeps a limit, by the decision rule of the criterion. */
public enum Decision {
    OUTSIDE, UNDECIDED, INSIDE;

    /** The result a pair closes with when this decision decides. */
    public Result result() {
        return switch (this) {
            case OUTSIDE -> Result.NONCONFORMITY;
            case UNDECIDED -> Result.UNDECIDED;
            case INSIDE -> Result.CONFORMITY;
        };
    }
}
