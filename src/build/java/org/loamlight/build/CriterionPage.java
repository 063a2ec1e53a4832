package org.loamlight.build;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.yaml.snakeyaml.DumperOptions;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.constructor.SafeConstructor;
import org.yaml.snakeyaml.error.YAMLException;
import org.yaml.snakeyaml.representer.Representer;
import org.yaml.snakeyaml.resolver.Resolver;

/** Reads criterion.md: front matter between two lines of three dashes, then one section of prose under each known heading. */
final class CriterionPage {
    private static final Pattern PARTS = Pattern.compile("\\A---\\R(.*?)\\R---\\R(.*)\\z", Pattern.DOTALL);
    private static final Pattern HEADING = Pattern.compile("(?m)^## (.+)$");
    private static final Pattern RULE = Pattern.compile("(?m)^rule \"([^\"]+)\"");
    private static final Map<String, String> SECTIONS = Map.of("Requirement", "requirement", "Why", "why",
            "How to measure", "measure", "How to correct", "correct", "Until then", "meanwhile", "Exceptions", "exceptions");
    /** Sections with words of their own for some of the rule variants. */
    private static final Set<String> BY_VARIANT = Set.of("correct", "meanwhile");

    private CriterionPage() {
    }

    /** A page that cannot be used; the message names the file and the way out. */
    static final class Unusable extends RuntimeException {
        private static final long serialVersionUID = 1;

        Unusable(Path page, String found) {
            super(page + ": " + found);
        }
    }

    static Map<String, Object> read(Path page) throws IOException {
        Matcher parts = PARTS.matcher(Files.readString(page));
        if (!parts.matches()) {
            throw new Unusable(page, "no front matter between two lines of three dashes; copy rules/TEMPLATE");
        }
        Map<String, Object> criterion = frontMatter(page, parts.group(1));
        Map<String, Object> prose = prose(page, parts.group(2));
        Object found = criterion.remove("found");
        prose.put("found", found instanceof String text ? Map.of("", text) : found == null ? Map.of() : found);
        criterion.put("page", prose);
        Path drl = page.resolveSibling("criterion.drl");
        criterion.put("rules", Files.exists(drl) ? ruleNames(drl) : List.of());
        return criterion;
    }

    static List<String> ruleNames(Path drl) throws IOException {
        List<String> names = new ArrayList<>();
        Matcher rules = RULE.matcher(Files.readString(drl));
        while (rules.find()) {
            names.add(rules.group(1));
        }
        return names;
    }

    private static Map<String, Object> frontMatter(Path page, String text) {
        try {
            Map<String, Object> members = new LinkedHashMap<>();
            if (!(yaml().load(text) instanceof Map<?, ?> map)) {
                throw new Unusable(page, "the front matter is no list of keys");
            }
            map.forEach((key, value) -> members.put(String.valueOf(key), value));
            return members;
        } catch (YAMLException e) {
            throw new Unusable(page, "the front matter is no YAML: " + e.getMessage());
        }
    }

    /** Every scalar stays the text it is: no yes that becomes true, no 1_0 that becomes ten. */
    private static Yaml yaml() {
        LoaderOptions options = new LoaderOptions();
        options.setAllowDuplicateKeys(false);
        DumperOptions dumper = new DumperOptions();
        return new Yaml(new SafeConstructor(options), new Representer(dumper), dumper, options, new Resolver() {
            @Override
            protected void addImplicitResolvers() {
                // none, so that nothing is resolved
            }
        });
    }

    private static Map<String, Object> prose(Path page, String text) {
        Map<String, Object> sections = new LinkedHashMap<>();
        split(text, HEADING).forEach((heading, body) -> {
            String key = SECTIONS.get(heading);
            if (key == null) {
                throw new Unusable(page, "the heading \"" + heading + "\" is not one of " + SECTIONS.keySet());
            }
            sections.put(key, BY_VARIANT.contains(key) ? byVariant(body) : unwrapped(body));
        });
        return sections;
    }

    private static Map<String, String> byVariant(String body) {
        Map<String, String> variants = new LinkedHashMap<>();
        split("### \n" + body, Pattern.compile("(?m)^### (.*)$")).forEach((variant, text) -> variants.put(variant, unwrapped(text)));
        variants.values().removeIf(String::isEmpty);
        return variants;
    }

    private static Map<String, String> split(String text, Pattern headings) {
        Map<String, String> parts = new LinkedHashMap<>();
        Matcher matcher = headings.matcher(text);
        int start = -1;
        String heading = null;
        while (matcher.find()) {
            if (heading != null) {
                parts.put(heading, text.substring(start, matcher.start()));
            }
            heading = matcher.group(1).strip();
            start = matcher.end();
        }
        if (heading != null) {
            parts.put(heading, text.substring(start));
        }
        return parts;
    }

    /** Lines of one paragraph joined, paragraphs kept apart by one line break. */
    private static String unwrapped(String body) {
        return String.join("\n", body.strip().lines().reduce(new ArrayList<String>(List.of("")), CriterionPage::joined,
                (one, other) -> one).stream().filter(line -> !line.isBlank()).toList());
    }

    private static ArrayList<String> joined(ArrayList<String> paragraphs, String line) {
        int last = paragraphs.size() - 1;
        if (line.isBlank()) {
            paragraphs.add("");
        } else if (paragraphs.get(last).isEmpty()) {
            paragraphs.set(last, line.strip());
        } else {
            paragraphs.set(last, paragraphs.get(last) + " " + line.strip());
        }
        return paragraphs;
    }
}
