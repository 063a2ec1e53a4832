package org.loamlight.physics;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;

/**
 * The results of a pure function that were asked for lately, so that asking again costs nothing. It holds a fixed number at most and
 * then forgets all of them. One instance serves all threads; two that ask for the same at once may both compute it.
 */
final class Memory<A, R> {

    private final int most;
    private final Function<A, R> function;
    private final Map<A, R> results = new ConcurrentHashMap<>();

    /**
     * @param most     results held, 1 or above
     * @param function gives equal results for equal arguments, and never null
     */
    Memory(int most, Function<A, R> function) {
        this.most = most;
        this.function = function;
    }

    /** What the function gives for an argument. */
    R of(A argument) {
        R known = results.get(argument);
        return known == null ? keep(argument, function.apply(argument)) : known;
    }

    private synchronized R keep(A argument, R result) {
        if (results.size() >= most) {
            results.clear();
        }
        results.put(argument, result);
        return result;
    }

    /** How many results are held now. */
    int size() {
        return results.size();
    }
}
