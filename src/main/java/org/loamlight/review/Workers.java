package org.loamlight.review;

import java.io.Closeable;
import java.io.IOException;
import java.util.ArrayDeque;
import java.util.Queue;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;

/**
 * Judges what comes in on several threads and hands on what came of it in the order in which it came in. Only few descriptions are
 * in memory at a time, however many come.
 */
final class Workers implements Closeable {
    private static final int WAITING_FOR_EACH = 3;
    /** Bytes of descriptions that wait at most; a larger one waits alone. */
    private static final long MOST_BYTES_WAITING = 12_000_000;

    private final ExecutorService threads;
    private final int most;
    private final Judge judge;
    private final Taker taker;
    private final Queue<Waiting> waiting = new ArrayDeque<>();
    private long bytesWaiting;
    private int number;

    /** Takes results one by one, in order. */
    @FunctionalInterface
    interface Taker {
        void take(Outcome outcome) throws IOException;
    }

    private record Waiting(Future<Outcome> outcome, int bytes) {
    }

    /** @param workers how many threads judge, at least one */
    Workers(int workers, Judge judge, Taker taker) {
        this.threads = Executors.newFixedThreadPool(workers, work -> {
            Thread thread = new Thread(work, "review");
            thread.setDaemon(true);
            return thread;
        });
        this.most = WAITING_FOR_EACH * workers;
        this.judge = judge;
        this.taker = taker;
    }

    void judge(Incoming incoming) throws IOException {
        while (!waiting.isEmpty() && (waiting.size() >= most || bytesWaiting + incoming.bytes().length > MOST_BYTES_WAITING || isNextDone())) {
            handOn();
        }
        int next = ++number;
        waiting.add(new Waiting(threads.submit(() -> judge.judge(next, incoming)), incoming.bytes().length));
        bytesWaiting += incoming.bytes().length;
    }

    /** What is done is handed on as soon as more comes in, and not only when too much waits: standard input may come slowly. */
    private boolean isNextDone() {
        return waiting.element().outcome().isDone();
    }

    /** Waits for everything that came in. */
    void finish() throws IOException {
        while (!waiting.isEmpty()) {
            handOn();
        }
    }

    private void handOn() throws IOException {
        Waiting first = waiting.remove();
        bytesWaiting -= first.bytes();
        try {
            taker.take(first.outcome().get());
        } catch (ExecutionException e) {
            throw new IllegalStateException("A setup could not be judged: " + e.getCause().getMessage(), e.getCause());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("Interrupted while setups were judged", e);
        }
    }

    @Override
    public void close() {
        threads.shutdownNow();
    }
}
