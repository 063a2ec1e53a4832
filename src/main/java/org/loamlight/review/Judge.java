package org.loamlight.review;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.locks.Lock;
import java.util.concurrent.locks.ReadWriteLock;
import java.util.concurrent.locks.ReentrantReadWriteLock;
import org.loamlight.criterion.Knowledge;
import org.loamlight.criterion.Waivers;
import org.loamlight.evaluation.Audit;
import org.loamlight.evaluation.Auditor;
import org.loamlight.setup.JsonFile;
import org.loamlight.setup.JsonPrinter;
import org.loamlight.setup.JsonValue;
import org.loamlight.setup.Problem;
import org.loamlight.setup.Problems;
import org.loamlight.setup.ProblemsFound;
import org.loamlight.setup.Setup;
import org.loamlight.setup.SetupReader;

/** Reads and judges one setup after the other. One instance serves all workers. */
final class Judge {
    /** A description as people write them has some ten kilobytes. What is far larger is judged while nothing else is, for want of memory. */
    private static final int LARGE_BYTES = 300_000;

    private final Judging with;
    private final EarlierLines earlier;
    private final Map<Set<String>, Sentencing> bySpecies = new ConcurrentHashMap<>();
    private final ReadWriteLock memory = new ReentrantReadWriteLock(true);

    Judge(Judging with, EarlierLines earlier) {
        this.with = with;
        this.earlier = earlier;
    }

    /** What judges setups of the same species, and puts it into words. */
    private record Sentencing(Auditor auditor, PointsInWords words) {
    }

    /** A setup that can be read, with its names or without. */
    private record Readable(Setup setup, String sha256, Optional<Names.Hidden> names) {
    }

    /**
     * Judges what came in. Never fails: what cannot be read or judged is a result that says so.
     *
     * @param number its place in the review
     */
    Outcome judge(int number, Incoming incoming) {
        Lock lock = incoming.bytes().length > LARGE_BYTES ? memory.writeLock() : memory.readLock();
        lock.lock();
        try {
            return incoming.problem().isEmpty() ? read(number, incoming) : broken(number, incoming, List.of(incoming.name() + ": " + incoming.problem() + "."));
        } catch (ProblemsFound e) {
            return broken(number, incoming, e.problems().stream().map(problem -> placed(problem, incoming).text()).toList());
        } catch (OutOfMemoryError e) {
            return broken(number, incoming, List.of(incoming.name() + ": it takes more memory than there is; give the program more with java -Xmx, or split it."));
        } catch (RuntimeException | StackOverflowError e) {
            return failed(number, incoming, e);
        } finally {
            lock.unlock();
        }
    }

    /** The place in the file of JSON Lines, where each line is a document of its own. */
    private static Problem placed(Problem problem, Incoming incoming) {
        return incoming.line() == 0 ? problem
                : new Problem(incoming.file(), incoming.line(), Math.max(1, problem.column()), problem.path(), problem.found(), problem.allowed(), problem.cell());
    }

    private Outcome read(int number, Incoming incoming) throws ProblemsFound {
        String sha256 = incoming.sha256();
        if (!with.anonymous()) {
            Optional<Reviewed> before = earlier.find(sha256, with, number);
            if (before.isPresent()) {
                return new Outcome(before.get().at(number, incoming), Optional.empty());
            }
        }
        Readable readable = readable(number, incoming, sha256);
        Incoming shown = with.anonymous() ? new Incoming(NameKey.file(number), 0, new byte[0], "") : incoming;
        Reviewed reviewed = Optional.of(readable.sha256()).filter(hash -> with.anonymous()).flatMap(hash -> earlier.find(hash, with, number)).map(before -> before.at(number, shown))
                .orElseGet(() -> Reviewed.of(number, shown, readable.sha256(), with.basis(), judged(readable)));
        return new Outcome(reviewed, readable.names().map(names -> new NameKey(number, incoming.name(), names.key(), List.of())));
    }

    private Readable readable(int number, Incoming incoming, String sha256) throws ProblemsFound {
        Problems problems = new Problems(incoming.file());
        Map<String, List<String>> species = with.knowledge().apply(Set.of()).speciesNames();
        JsonValue document = with.documents().read(incoming.file(), incoming.bytes(), problems);
        Setup setup = SetupReader.read(document, problems, species);
        if (!with.anonymous()) {
            return new Readable(setup, sha256, Optional.empty());
        }
        Names.Hidden hidden = Names.hide(document, NameKey.setup(number));
        String without = JsonFile.sha256(JsonPrinter.print(hidden.document()).getBytes(StandardCharsets.UTF_8));
        return new Readable(SetupReader.read(hidden.document(), new Problems(NameKey.file(number)), species), without, Optional.of(hidden));
    }

    private Judged judged(Readable readable) {
        Setup setup = readable.setup();
        Sentencing sentencing = bySpecies.computeIfAbsent(setup.species(), this::sentencing);
        LocalDate day = with.on().or(setup::on).orElse(with.today());
        Waivers waivers = readable.names().map(names -> names.of(with.waivers())).orElse(with.waivers());
        Audit audit = sentencing.auditor().audit(setup, day).with(waivers);
        return sentencing.words().judged(audit, with.on().isEmpty() && setup.on().isEmpty());
    }

    private Sentencing sentencing(Set<String> species) {
        Knowledge knowledge = with.knowledge().apply(species);
        return new Sentencing(new Auditor(knowledge, with.rules()), new PointsInWords(knowledge, with.units()));
    }

    private Outcome broken(int number, Incoming incoming, List<String> problems) {
        if (!with.anonymous()) {
            return new Outcome(Reviewed.broken(number, incoming, with.basis(), problems), Optional.empty());
        }
        List<String> counted = List.of("It cannot be read; " + (problems.size() == 1 ? "the problem stands" : problems.size() + " problems stand") + " in the key.");
        Incoming shown = new Incoming(NameKey.file(number), 0, new byte[0], "");
        return new Outcome(Reviewed.broken(number, shown, with.basis(), counted), Optional.of(new NameKey(number, incoming.name(), Map.of(), problems)));
    }

    private Outcome failed(int number, Incoming incoming, Throwable failure) {
        List<String> problems = new ArrayList<>();
        problems.add(incoming.name() + ": this is a defect of the program, not of your setup: " + failure.getMessage() + ". Please report it with the setup.");
        Outcome broken = broken(number, incoming, problems);
        Reviewed row = broken.reviewed();
        return new Outcome(new Reviewed(number, row.file(), row.line(), row.sha256(), row.basis(), row.problems(), true, Optional.empty()), broken.key());
    }
}
