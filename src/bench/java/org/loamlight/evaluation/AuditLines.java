package org.loamlight.evaluation;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayDeque;
import java.util.HexFormat;
import java.util.List;
import java.util.Queue;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.loamlight.criterion.Knowledge;
import org.loamlight.criterion.KnowledgeReader;
import org.loamlight.finding.Finding;
import org.loamlight.setup.ProblemsFound;
import org.loamlight.setup.Setup;
import org.loamlight.setup.SetupReader;

/**
 * Audits setups in JSON Lines and does nothing else with them: bytes in, findings counted, in the order of the lines, a few in memory at a time. What a review
 * does beyond it is words, rows and a table.
 */
public final class AuditLines {
    private static final int WAITING_FOR_EACH = 8;

    private final Knowledge knowledge = KnowledgeReader.builtIn();
    private final Auditor auditor = new Auditor(knowledge, RuleBase.load(knowledge));
    private final boolean sums;
    private final MessageDigest all;
    private long setups;
    private long findings;

    private AuditLines(boolean sums) throws NoSuchAlgorithmException {
        this.sums = sums;
        this.all = MessageDigest.getInstance("SHA-256");
    }

    /** @param sha256 over every finding; empty when no sum was asked for */
    private record Audited(int findings, byte[] sha256) {
    }

    /** @param arguments file; number of threads; "sum" for a SHA-256 over all findings in their order, which takes its time */
    public static void main(String[] arguments) throws Exception {
        AuditLines lines = new AuditLines(arguments.length > 2 && arguments[2].equals("sum"));
        lines.audit(Path.of(arguments[0]), Integer.parseInt(arguments[1]));
        System.out.println(lines.setups + " setups, " + lines.findings + " findings" + (lines.sums ? ", " + HexFormat.of().formatHex(lines.all.digest()) : ""));
    }

    private void audit(Path file, int threads) throws IOException, InterruptedException, ExecutionException {
        ExecutorService workers = Executors.newFixedThreadPool(threads);
        Queue<Future<Audited>> waiting = new ArrayDeque<>();
        try (BufferedReader lines = Files.newBufferedReader(file)) {
            for (String line = lines.readLine(); line != null; line = lines.readLine()) {
                byte[] bytes = line.getBytes(StandardCharsets.UTF_8);
                waiting.add(workers.submit(() -> audited(bytes)));
                if (waiting.size() >= WAITING_FOR_EACH * threads) {
                    take(waiting.remove().get());
                }
            }
            for (Future<Audited> one : waiting) {
                take(one.get());
            }
        } finally {
            workers.shutdownNow();
        }
    }

    private void take(Audited one) {
        setups++;
        findings += one.findings();
        all.update(one.sha256());
    }

    private Audited audited(byte[] bytes) throws ProblemsFound, NoSuchAlgorithmException {
        Setup setup = SetupReader.read("line", bytes, knowledge.speciesNames());
        List<Finding> found = auditor.audit(setup, setup.on().orElseThrow()).findings();
        return new Audited(found.size(), sums ? sum(found) : new byte[0]);
    }

    private static byte[] sum(List<Finding> found) throws NoSuchAlgorithmException {
        MessageDigest sum = MessageDigest.getInstance("SHA-256");
        found.forEach(one -> sum.update(text(one).getBytes(StandardCharsets.UTF_8)));
        return sum.digest();
    }

    /** All of a finding, every digit; of its criterion the id only, which stands for what the build knows of it. */
    private static String text(Finding one) {
        return List.of(one.pair().key(), one.result(), one.grade(), one.variants(), one.held(), one.evidence(), one.missing(), one.wanted(), one.voided(),
                one.reason(), one.explains(), one.explainedBy()) + "\n";
    }
}
