package org.loamlight.evaluation;

/** What is stated of one setup, from the same facts, in one way or another. Serves all threads. */
@FunctionalInterface
interface WayOfJudging {
    Statements judge(Auditor.Asked asked);
}
