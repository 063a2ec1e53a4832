package org.loamlight.build;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.loamlight.setup.JsonFile;
import org.loamlight.setup.JsonPlace;
import org.loamlight.setup.JsonValue;
import org.loamlight.setup.Problem;
import org.loamlight.setup.Problems;
import org.loamlight.setup.ProblemsFound;

/** Leads a problem of the joined knowledge back to the file of rules/ that was written by hand, so that it can be put right there. */
final class Origins {
    private static final Pattern MEMBER = Pattern.compile("([a-z-]+)\\[(\\d+)](?:\\.(.+))?");
    private static final Pattern STEP = Pattern.compile("([^.\\[\\]]+)|\\[(\\d+)]");

    /** @param path where in the file the list member stands; empty when the file is the member */
    private record Origin(Path file, String path) {
    }

    private final Path project;
    private final Map<String, Origin> members = new HashMap<>();

    /** @param project folder that the files are named from */
    Origins(Path project) {
        this.project = project;
    }

    /** One file for each member of a list, in the order of the list. */
    void each(String list, List<Path> files) {
        for (int i = 0; i < files.size(); i++) {
            members.put(list + "[" + i + "]", new Origin(files.get(i), ""));
        }
    }

    /**
     * One file for a whole list.
     *
     * @param path where in the file the list stands; empty when the file is the list
     */
    void whole(String list, Path file, String path) {
        members.put(list, new Origin(file, path));
    }

    /** The same problems, each at its place in the file it was written in; a problem of no such file stays as it is. */
    ProblemsFound leadBack(ProblemsFound joined) throws IOException, ProblemsFound {
        List<Problem> ledBack = new ArrayList<>();
        for (Problem problem : joined.problems()) {
            ledBack.add(leadBack(problem));
        }
        return new ProblemsFound(ledBack);
    }

    private Problem leadBack(Problem problem) throws IOException, ProblemsFound {
        Matcher member = MEMBER.matcher(problem.path());
        if (!member.matches()) {
            return problem;
        }
        String rest = member.group(3) == null ? "" : member.group(3);
        Origin one = members.get(member.group(1) + "[" + member.group(2) + "]");
        Origin all = members.get(member.group(1));
        if (one != null) {
            return at(problem, one.file, rest);
        }
        return all == null ? problem : at(problem, all.file, all.path + "[" + member.group(2) + "]" + (rest.isEmpty() ? "" : "." + rest));
    }

    private Problem at(Problem problem, Path file, String path) throws IOException, ProblemsFound {
        JsonPlace place = file.toString().endsWith(".json") ? inJson(file, path) : inFrontMatter(file, path);
        return new Problem(project.relativize(file).toString().replace('\\', '/'), place.line(), place.column(), path,
                problem.found(), problem.allowed());
    }

    /** The deepest part of the path that the file holds: of a member that is missing, what lacks it. */
    private static JsonPlace inJson(Path file, String path) throws IOException, ProblemsFound {
        Problems none = new Problems(file.toString());
        JsonValue value = JsonFile.read(Files.readAllBytes(file), none);
        none.throwIfAny();
        for (MatchResult step : STEP.matcher(path).results().toList()) {
            JsonValue next = next(value, step);
            if (next == null) {
                return value.at();
            }
            value = next;
        }
        return value.at();
    }

    private static JsonValue next(JsonValue value, MatchResult step) {
        if (value instanceof JsonValue.JsonObject object) {
            return object.members().get(step.group(1));
        }
        boolean isPosition = step.group(2) != null && value instanceof JsonValue.JsonArray array
                && Integer.parseInt(step.group(2)) < array.elements().size();
        return isPosition ? ((JsonValue.JsonArray) value).elements().get(Integer.parseInt(step.group(2))) : null;
    }

    /** The line its first key stands in; the first line when the key is missing. */
    private static JsonPlace inFrontMatter(Path page, String path) throws IOException {
        List<String> lines = Files.readAllLines(page);
        String key = path.replaceFirst("[.\\[].*", "");
        for (int line = 0; line < lines.size(); line++) {
            if (!key.isEmpty() && lines.get(line).startsWith(key + ":")) {
                return new JsonPlace(line + 1, 1, path);
            }
        }
        return new JsonPlace(1, 1, path);
    }
}
