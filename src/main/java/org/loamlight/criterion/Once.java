package org.loamlight.criterion;

import java.util.function.Supplier;

/** A value that is made when it is first asked for: once, whichever thread asks. Making it that fails is tried again. */
final class Once<T> implements Supplier<T> {
    private Supplier<? extends T> made;
    private volatile T value;

    private Once(Supplier<? extends T> made, T value) {
        this.made = made;
        this.value = value;
    }

    /** @param made never gives null */
    static <T> Once<T> by(Supplier<? extends T> made) {
        return new Once<>(made, null);
    }

    /** A value that is there already. */
    static <T> Once<T> of(T value) {
        return new Once<>(null, value);
    }

    @Override
    public T get() {
        T there = value;
        return there != null ? there : make();
    }

    private synchronized T make() {
        if (value == null) {
            value = made.get();
            made = null;
        }
        return value;
    }
}
