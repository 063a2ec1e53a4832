package org.loamlight.workbook;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.loamlight.evaluation.BuiltIn;
import org.loamlight.setup.Problem;
import org.loamlight.setup.ProblemsFound;
import org.loamlight.setup.Question;
import org.loamlight.setup.QuestionCatalogue;
import org.loamlight.setup.SetupReader;

/** A setup that can be used, with any question answered in any of the ways it can be. The same seed makes the same setup. */
public final class GeneratedSetup {
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final int ROUNDS = 60;
    private static final String[] TEXTS = {"wooden box", "=1+1", "+3", "@x", "-", "3", "a; b", "none", "yes", "飼育 \uD83E\uDD8E", "_x0041_", "\u202Eabc", "l'été \"quoted\"",
        "120 cm", "x".repeat(250)};
    private static final String[] ZONES = {"warm end", "cool end, back", "middle,floor", "basking place", "left", "hot end"};
    private static final Map<String, List<String>> MEASURES = Map.ofEntries(Map.entry("cm", List.of("12 cm", "4.50 cm", "0.5 ft", "5 in", "120 mm", "12 cm ± 1 cm", "10 to 12 cm", "1 ft 2 in")),
            Map.entry("g", List.of("540 g", "0.5 kg", "13 oz", "1 lb 4 oz", "500 g ± 5 %")), Map.entry("°C", List.of("24 °C", "78 °F ± 1 °F", "24 to 26 °C", "24.50 °C")),
            Map.entry("W", List.of("60 W", "60 watts", "60 W ± 5 %")), Map.entry("V", List.of("230 V", "120 V")), Map.entry("A", List.of("10 A")),
            Map.entry("per kWh", List.of("0.31 per kWh", "0.17 /kWh")), Map.entry("°", List.of("53.4 °", "-34 °")), Map.entry("L", List.of("1.5 L", "0.5 gal", "250 mL")),
            Map.entry("h", List.of("12 h", "90 min", "0.5 d")), Map.entry("%", List.of("62 %", "50 to 60 %", "62 % ± 5 %")), Map.entry("UVI", List.of("3.1", "3.1 ± 10 %", "2 to 3", "3 UVI")));

    private final Random random;

    public GeneratedSetup(long seed) {
        this.random = new Random(seed);
    }

    /** The setup as its file says it. */
    public String json() {
        ObjectNode setup = JSON.createObjectNode().put("format", 1);
        fill(setup, "", 1 + random.nextInt(4));
        for (int round = 0; round < ROUNDS; round++) {
            try {
                SetupReader.read("generated", setup.toString().getBytes(StandardCharsets.UTF_8), BuiltIn.KNOWLEDGE.speciesNames());
                return setup.toString();
            } catch (ProblemsFound e) {
                e.problems().forEach(problem -> leaveOut(problem, setup));
            }
        }
        throw new AssertionError("No setup comes of this: " + setup);
    }

    /** Takes out what cannot be beside the rest. */
    private static void leaveOut(Problem problem, ObjectNode setup) {
        String pointer = "/" + problem.path().replace("[", "/").replace("]", "").replace('.', '/');
        JsonNode holder = setup.at(pointer.substring(0, pointer.lastIndexOf('/')));
        String member = pointer.substring(pointer.lastIndexOf('/') + 1);
        if (holder instanceof ObjectNode object) {
            object.remove(member);
        } else if (holder instanceof ArrayNode list && Integer.parseInt(member) < list.size()) {
            list.remove(Integer.parseInt(member));
        }
    }

    /** @param likely of four questions so many are answered */
    private void fill(ObjectNode into, String list, int likely) {
        for (Question question : QuestionCatalogue.builtIn()) {
            String last = question.members().get(question.members().size() - 1);
            boolean isNeeded = List.of("name", "species", "of", "animals").contains(last);
            if (question.list().equals(list) && question.kind() != Question.Kind.VERSION && (isNeeded || random.nextInt(4) < likely)) {
                ObjectNode holder = into;
                for (String member : question.members().subList(0, question.members().size() - 1)) {
                    holder = holder.withObjectProperty(member);
                }
                holder.set(last, answer(question, last, likely, isNeeded));
            }
        }
    }

    private JsonNode answer(Question question, String member, int likely, boolean isNeeded) {
        if (!isNeeded && random.nextInt(8) == 0) {
            return JSON.getNodeFactory().textNode("not looked");
        }
        return switch (question.kind()) {
            case PARTS -> parts(question, likely, isNeeded);
            case SEVERAL -> several(question);
            case PLACE -> place();
            case ONE_OF -> question.choices().contains("yes") && random.nextInt(4) == 0 ? JSON.getNodeFactory().booleanNode(random.nextBoolean()) : text(any(question.choices()));
            case MEASURE -> text(any(question.choices().isEmpty() || random.nextBoolean() ? measures(question) : question.choices()));
            case DAY -> text("2026-0" + (1 + random.nextInt(9)) + "-1" + random.nextInt(10));
            case TEXT, VERSION -> text(member.equals("name") ? TEXTS[random.nextInt(TEXTS.length)].substring(0, 1) + random.nextInt(1_000_000)
                    : member.equals("species") ? any(List.copyOf(BuiltIn.KNOWLEDGE.profiles().keySet())) : TEXTS[random.nextInt(TEXTS.length)]);
        };
    }

    private JsonNode parts(Question question, int likely, boolean isNeeded) {
        ArrayNode parts = JSON.createArrayNode();
        for (int i = random.nextInt(4) + (isNeeded ? 1 : 0); i > 0; i--) {
            fill(parts.addObject(), question.path(), likely);
        }
        return parts;
    }

    private JsonNode several(Question question) {
        if (random.nextInt(4) == 0) {
            return text(any(question.choices()));
        }
        ArrayNode words = JSON.createArrayNode();
        question.choices().stream().filter(word -> random.nextInt(3) == 0).forEach(words::add);
        return words;
    }

    private JsonNode place() {
        if (random.nextBoolean()) {
            return text(ZONES[random.nextInt(ZONES.length)]);
        }
        ObjectNode place = JSON.createObjectNode();
        List.of("along", "across", "above").stream().filter(member -> random.nextBoolean()).forEach(member -> place.put(member, any(MEASURES.get("cm"))));
        return random.nextBoolean() ? place : place.put("zone", ZONES[random.nextInt(ZONES.length)]);
    }

    private List<String> measures(Question question) {
        List<String> units = question.units();
        String unit = units.size() > 1 && units.contains("UVI") ? List.of("°C", "%", "UVI").get(random.nextInt(3)) : units.stream().filter(MEASURES::containsKey).findFirst().orElseThrow();
        return MEASURES.get(unit);
    }

    private String any(List<String> words) {
        return words.get(random.nextInt(words.size()));
    }

    private static JsonNode text(String text) {
        return JSON.getNodeFactory().textNode(text);
    }
}
