package org.loamlight.physics;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/**
 * Consumer's and producer's risk of a whole production (JCGM 106:2012 A.5, eq. A.15 to A.17), integrated over
 * {@link Conformance#probability}: the printed risks hold only if the conformance probability is right over its whole
 * range, not just near one example. Covered are the resistors of 9.5.3, normal throughout; the ball bearings of 9.5.4
 * have a gamma distribution and are left out.
 *
 * <p>Both risks are shares of all items made, R_C of those accepted and nonconforming, R_P of those rejected and
 * conforming. They are not the share of conforming items among the rejected ones, as which the bearings text words it.
 */
class GlobalRiskTest {

    private static final double SIX_DECIMALS = 5e-7;
    private static final double WHOLE_PERCENT = 0.005;
    private static final double FAR_OUT = 9;

    private static final PublishedTable TABLE = PublishedTable.read("thermal-conformity.csv");
    private static final PublishedTable.Row PROCESS = TABLE.row("id", "J15");
    private static final PublishedTable.Row CONSUMER = TABLE.row("id", "J16");
    private static final PublishedTable.Row PRODUCER = TABLE.row("id", "J17");

    private static final double MEAN = PROCESS.number("inputs");
    private static final double LOW = MEAN - PROCESS.numberAfter("inputs", "+-");
    private static final double HIGH = MEAN + PROCESS.numberAfter("inputs", "+-");
    private static final double SPREAD = PROCESS.numberAfter("inputs", "u0");
    private static final double UNCERTAINTY = CONSUMER.numberAfter("inputs", "u_m");
    private static final double ACCEPT_LOW = CONSUMER.numberAfter("inputs", "A");
    private static final double ACCEPT_HIGH = CONSUMER.numberAfter("inputs", "to");

    @Test
    void accepted_resistors_that_do_not_conform_are_1_percent_of_all() {
        double risk = Simpson.integral(GlobalRiskTest::madeAndAccepted, MEAN - FAR_OUT * SPREAD, LOW)
                + Simpson.integral(GlobalRiskTest::madeAndAccepted, HIGH, MEAN + FAR_OUT * SPREAD);
        assertEquals(CONSUMER.numberAfter("published", "R_C") / 100, risk, WHOLE_PERCENT);
        assertEquals(CONSUMER.number("exact_recomputed"), risk, SIX_DECIMALS);
    }

    @Test
    void rejected_resistors_that_conform_are_7_percent_of_all() {
        double conforming = Conformance.probability(MEAN, SPREAD, LOW, HIGH);
        double risk = conforming - Simpson.integral(GlobalRiskTest::madeAndAccepted, LOW, HIGH);
        assertEquals(PRODUCER.numberAfter("published", "R_P") / 100, risk, WHOLE_PERCENT);
        assertEquals(PRODUCER.number("exact_recomputed"), risk, SIX_DECIMALS);
    }

    /**
     * Row J23, JCGM 106:2012 A.4.4 eq. A.13 and A.14: what is known of a resistor after it was measured is normal again,
     * about the mean of process and indication weighted by 1/u^2. Summing 1 - pc over the accepted indications must give
     * the same consumer's risk as summing over the true values.
     */
    @Test
    void the_risk_is_the_same_seen_from_the_indications() {
        double risk = Simpson.integral(GlobalRiskTest::indicatedAndNotConforming, ACCEPT_LOW, ACCEPT_HIGH);
        assertEquals(CONSUMER.number("exact_recomputed"), risk, SIX_DECIMALS);
    }

    private static double madeAndAccepted(double trueOhms) {
        return Simpson.normalDensity(trueOhms, MEAN, SPREAD)
                * Conformance.probability(trueOhms, UNCERTAINTY, ACCEPT_LOW, ACCEPT_HIGH);
    }

    private static double indicatedAndNotConforming(double indicatedOhms) {
        double weightOfProcess = 1 / (SPREAD * SPREAD);
        double weightOfIndication = 1 / (UNCERTAINTY * UNCERTAINTY);
        double weight = weightOfProcess + weightOfIndication;
        double best = (weightOfProcess * MEAN + weightOfIndication * indicatedOhms) / weight;
        double conforms = Conformance.probability(best, 1 / StrictMath.sqrt(weight), LOW, HIGH);
        return Simpson.normalDensity(indicatedOhms, MEAN, Conformance.combine(SPREAD, UNCERTAINTY)) * (1 - conforms);
    }
}
