package org.loamlight.setup;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;

/** The setup schema of docs/, taken apart: every object a setup can hold, by its path, and documents that hold one thing there. */
final class SchemaMembers {
    static final ObjectMapper JSON = new ObjectMapper();
    static final JsonNode TREE = tree();
    private static final Schema SCHEMA = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12).getSchema(TREE.toString(), InputFormat.JSON);
    private static final String LIST = "[]";

    private SchemaMembers() {
    }

    private static JsonNode tree() {
        try {
            return JSON.readTree(Files.readString(Path.of("docs", "setup.schema.json"), StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** What the schema has against a document; empty when nothing. */
    static List<String> complaints(String document) {
        return SCHEMA.validate(document, InputFormat.JSON).stream().map(error -> error.getInstanceLocation() + ": " + error.getMessage()).toList();
    }

    /**
     * A member of an object of the setup.
     *
     * @param path keys from the document to its object, "[]" for an element of a list
     */
    record Member(List<String> path, String key, JsonNode schema, boolean required) {
        @Override
        public String toString() {
            return (String.join(".", path) + "." + key).replace(".[]", "[]");
        }
    }

    /** Every object of a setup by its path, with its schema. */
    static Map<List<String>, JsonNode> objects() {
        Map<List<String>, JsonNode> objects = new LinkedHashMap<>();
        collect(TREE, List.of(), objects);
        return objects;
    }

    private static void collect(JsonNode schema, List<String> path, Map<List<String>, JsonNode> objects) {
        for (JsonNode one : alternatives(schema)) {
            if (one.has("properties")) {
                objects.put(path, one);
                one.get("properties").properties().forEach(property -> collect(property.getValue(), with(path, property.getKey()), objects));
            }
            if (one.has("items")) {
                collect(one.get("items"), with(path, LIST), objects);
            }
        }
    }

    private static List<String> with(List<String> path, String key) {
        return Stream.concat(path.stream(), Stream.of(key)).toList();
    }

    /** The schema itself, what it refers to, and what it is any of. */
    static List<JsonNode> alternatives(JsonNode schema) {
        List<JsonNode> all = new ArrayList<>(List.of(schema));
        if (schema.has("$ref")) {
            all.addAll(alternatives(TREE.at(schema.get("$ref").textValue().substring(1))));
        }
        schema.path("anyOf").forEach(one -> all.addAll(alternatives(one)));
        return all;
    }

    static List<Member> members() {
        return objects().entrySet().stream().flatMap(object -> object.getValue().get("properties").properties().stream()
                .map(property -> new Member(object.getKey(), property.getKey(), property.getValue(), texts(object.getValue().path("required"))
                        .contains(property.getKey())))).toList();
    }

    static Set<String> texts(JsonNode list) {
        return StreamSupport.stream(list.spliterator(), false).filter(JsonNode::isTextual).map(JsonNode::textValue)
                .collect(Collectors.toCollection(LinkedHashSet::new));
    }

    /** The words a member may be answered with, list elements included; empty when it is not answered in words. */
    static Set<String> words(Member member) {
        return alternatives(member.schema).stream().flatMap(one -> Stream.concat(Stream.of(one), alternatives(one.path("items")).stream()))
                .flatMap(one -> texts(one.path("enum")).stream()).collect(Collectors.toCollection(LinkedHashSet::new));
    }

    /** A setup with nothing in it but what it must have, and this value at this place. */
    static ObjectNode document(List<String> path, String key, JsonNode value) {
        ObjectNode document = JSON.createObjectNode().put("format", 1);
        document.putArray("animals").addObject().put("name", "Bracken").put("species", "pantherophis-guttatus");
        ObjectNode object = document;
        for (int i = 0; i < path.size(); i++) {
            boolean isList = i + 1 < path.size() && path.get(i + 1).equals(LIST);
            if (!path.get(i).equals(LIST)) {
                object = isList ? element(object, path.get(i)) : object.putObject(path.get(i));
            }
        }
        object.set(key, value);
        return document;
    }

    /** The object at a path of a document that has one element in each list. */
    static ObjectNode object(ObjectNode document, List<String> path) {
        JsonNode at = document;
        for (String key : path) {
            at = key.equals(LIST) ? at.get(0) : at.get(key);
        }
        return (ObjectNode) at;
    }

    private static ObjectNode element(ObjectNode holder, String key) {
        if (holder.get(key) instanceof ArrayNode present) {
            return (ObjectNode) present.get(0);
        }
        ObjectNode element = holder.putArray(key).addObject();
        boolean isOfLamp = holder.has("name");
        if (isOfLamp) {
            return element;
        }
        return key.equals("readings") ? element.put("name", "first").put("of", "air temperature") : element.put("name", "first");
    }
}
