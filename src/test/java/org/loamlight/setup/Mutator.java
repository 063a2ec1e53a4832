package org.loamlight.setup;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.BooleanNode;
import com.fasterxml.jackson.databind.node.ContainerNode;
import com.fasterxml.jackson.databind.node.NullNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** Damages a setup as people, editors, phones and disks do. The same seed makes the same damage. */
final class Mutator {
    private static final String[] TEXTS = {"", " ", "not looked", "yes", "no", "0", "0 cm", "1 cm", "1000 cm", "0.1 W", "500", "-1 cm", "1e999 cm", "1e-9 cm",
        "999999999999 km", "4 ft 2 in", "78 °F ± 1 °F", "24 to 26 °C", "50 to 50 %", "0 %", "100 %", "400 °C", "-60 °C", "daily", "0.01 d", "warm end",
        "cool end, back", "middle", "basking place", "hide", "branch", "stone", "heat mat", "UV tube", "UV bulb", "glass", "day", "night", "humidity",
        "air temperature", "two hands", "2026-02-30", "2026-11-02", "1900-01-01", "2199-12-31", "飼育 \uD83E\uDD8E", "\u202Eabc", "\u0000", "\uD800", "a].guard", "=1+1",
        "lampropeltis-californiae", "pantherophis-guttatus", "permanent", "quarantine", "NaN", "Infinity", "null", "x".repeat(300)};
    private static final String[] LITERALS = {"0", "-0", "1", "-1", "2", "3.1", "1e999", "-1e999", "1e-999", "9".repeat(400), "0.1", "500", "1E400"};

    /** Extremes among what is possible, by the unit a value ends with. */
    private static final Map<String, List<String>> POSSIBLE = new TreeMap<>(Map.of("cm", List.of("1 cm", "0.1 cm", "1000 cm", "30 ± 0.001 cm", "0 to 900 cm", "33.333333333 cm"),
            "mm", List.of("0 mm", "1000 mm", "0.5 mm", "6 mm ± 900 mm"), "in", List.of("0.4 in", "393 in", "4 ft 2 in"), "ft", List.of("32 ft", "0.1 ft"),
            "°C", List.of("-60 °C", "400 °C", "24 °C ± 400 °C", "0 °C", "23 to 25 °C"), "°F", List.of("-76 °F", "750 °F", "78 ± 0.0001 °F"),
            "%", List.of("0 %", "100 %", "60 % ± 100 %"), "W", List.of("0.1 W", "100000 W"), "g", List.of("0.1 g", "400000 g", "1 lb 4 oz")));
    /** The words a member may be answered with, by its key. */
    private static final Map<String, List<String>> WORDS = SchemaMembers.members().stream().filter(member -> !SchemaMembers.words(member).isEmpty())
            .collect(Collectors.toMap(SchemaMembers.Member::key, member -> List.copyOf(SchemaMembers.words(member)), (one, other) -> other));

    private final Random random;

    Mutator(long seed) {
        this.random = new Random(seed);
    }

    /** The text with some answers left out or given otherwise, one time in three damaged in its tree, one in four in its bytes. */
    byte[] damaged(JsonNode setup) {
        ObjectNode copy = setup.deepCopy();
        for (int i = random.nextInt(6); i >= 0; i--) {
            change(copy);
        }
        if (random.nextInt(3) == 0) {
            damage(copy);
        }
        byte[] bytes = withLiterals(copy.toString()).getBytes(StandardCharsets.UTF_8);
        return random.nextInt(4) == 0 ? damaged(bytes) : bytes;
    }

    /** Leaves a member out or answers it in another way that can be. */
    private void change(ObjectNode root) {
        if (anyContainer(root) instanceof ObjectNode object && !object.isEmpty()) {
            String key = anyKey(object);
            if (random.nextInt(3) == 0 && !Set.of("format", "animals", "name", "species", "of").contains(key)) {
                object.remove(key);
            } else {
                possible(key, object.get(key)).ifPresent(value -> object.put(key, value));
            }
        }
    }

    private Optional<String> possible(String key, JsonNode value) {
        List<String> words = WORDS.getOrDefault(key, List.of());
        List<String> measures = POSSIBLE.entrySet().stream().filter(unit -> value.asText().endsWith(unit.getKey()) && Character.isDigit(value.asText().charAt(0)))
                .findFirst().map(Map.Entry::getValue).orElse(List.of());
        List<String> all = words.isEmpty() ? measures : words;
        return all.isEmpty() ? Optional.empty() : Optional.of(all.get(random.nextInt(all.size())));
    }

    private void damage(ObjectNode root) {
        ContainerNode<?> at = anyContainer(root);
        if (at.isEmpty()) {
            insert(at, anyValue(root));
        } else if (at instanceof ArrayNode list) {
            damage(list, root);
        } else {
            damage((ObjectNode) at, anyKey((ObjectNode) at), root);
        }
    }

    private ContainerNode<?> anyContainer(ContainerNode<?> root) {
        List<ContainerNode<?>> all = new ArrayList<>();
        collect(root, all);
        return all.get(random.nextInt(all.size()));
    }

    private static void collect(ContainerNode<?> at, List<ContainerNode<?>> all) {
        all.add(at);
        at.forEach(child -> {
            if (child instanceof ContainerNode<?> inner) {
                collect(inner, all);
            }
        });
    }

    private void damage(ObjectNode object, String key, ObjectNode root) {
        switch (random.nextInt(8)) {
            case 0, 1, 2 -> object.remove(key);
            case 3 -> object.set(anyKey(object), object.get(key));
            case 4 -> object.set(key + (char) ('a' + random.nextInt(26)), object.remove(key));
            case 5 -> object.set(anyKey((ObjectNode) ownerOf(root)), anyValue(root));
            default -> object.set(key, anyValue(root));
        }
    }

    private ContainerNode<?> ownerOf(ObjectNode root) {
        ContainerNode<?> found = anyContainer(root);
        return found instanceof ObjectNode object && !object.isEmpty() ? object : root;
    }

    private void damage(ArrayNode list, ObjectNode root) {
        int index = random.nextInt(list.size());
        switch (random.nextInt(5)) {
            case 0 -> list.remove(index);
            case 1 -> list.insert(random.nextInt(list.size() + 1), list.get(index).deepCopy());
            case 2 -> list.removeAll();
            case 3 -> list.set(index, list.set(random.nextInt(list.size()), list.get(index)));
            default -> list.set(index, anyValue(root));
        }
    }

    private static void insert(ContainerNode<?> empty, JsonNode value) {
        if (empty instanceof ArrayNode list) {
            list.add(value);
        } else {
            ((ObjectNode) empty).set("name", value);
        }
    }

    private String anyKey(ObjectNode object) {
        List<String> keys = new ArrayList<>();
        object.fieldNames().forEachRemaining(keys::add);
        return keys.isEmpty() ? "name" : keys.get(random.nextInt(keys.size()));
    }

    private JsonNode anyValue(ObjectNode root) {
        return switch (random.nextInt(12)) {
            case 0 -> NullNode.getInstance();
            case 1 -> BooleanNode.valueOf(random.nextBoolean());
            case 2 -> root.objectNode();
            case 3 -> root.arrayNode();
            case 4 -> TextNode.valueOf("@literal " + LITERALS[random.nextInt(LITERALS.length)] + "@");
            case 5 -> anyContainer(root).deepCopy();
            default -> TextNode.valueOf(TEXTS[random.nextInt(TEXTS.length)]);
        };
    }

    /** Numbers a tree would round are put in as they are to be read. */
    private static String withLiterals(String json) {
        return json.replaceAll("\"@literal ([^@]*)@\"", "$1");
    }

    private byte[] damaged(byte[] bytes) {
        int at = random.nextInt(bytes.length);
        return switch (random.nextInt(5)) {
            case 0 -> Arrays.copyOf(bytes, at);
            case 1 -> flipped(bytes, at);
            case 2 -> spliced(bytes, at, new byte[0], 1 + random.nextInt(8));
            case 3 -> spliced(bytes, at, Arrays.copyOfRange(bytes, at, Math.min(bytes.length, at + 40)), 0);
            default -> spliced(bytes, at, noise(), 0);
        };
    }

    private byte[] flipped(byte[] bytes, int at) {
        byte[] copy = bytes.clone();
        copy[at] = (byte) (copy[at] ^ 1 << random.nextInt(8));
        return copy;
    }

    private byte[] noise() {
        byte[] noise = new byte[1 + random.nextInt(6)];
        random.nextBytes(noise);
        return noise;
    }

    private static byte[] spliced(byte[] bytes, int at, byte[] middle, int dropped) {
        byte[] out = Arrays.copyOf(bytes, at + middle.length + Math.max(0, bytes.length - at - dropped));
        System.arraycopy(middle, 0, out, at, middle.length);
        System.arraycopy(bytes, Math.min(bytes.length, at + dropped), out, at + middle.length, out.length - at - middle.length);
        return out;
    }
}
