package org.loamlight.cli;

import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;

/** Work done beside the main thread: two cores start a short program sooner than one. */
final class Beside<T> {
    private final FutureTask<T> task;

    private Beside(FutureTask<T> task) {
        this.task = task;
    }

    static <T> Beside<T> start(String name, Callable<T> work) {
        FutureTask<T> task = new FutureTask<>(work);
        Thread thread = new Thread(task, name);
        thread.setDaemon(true);
        thread.start();
        return new Beside<>(task);
    }

    /**
     * What the work came to, waiting for it.
     *
     * @throws IllegalStateException when the work failed; its cause is what it failed of
     */
    T result() {
        try {
            return task.get();
        } catch (ExecutionException e) {
            throw new IllegalStateException(e.getCause().getMessage(), e.getCause());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("Interrupted while the work was done", e);
        }
    }
}
