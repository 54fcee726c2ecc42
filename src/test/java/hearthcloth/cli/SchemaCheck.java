package hearthcloth.cli;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * Holds JSON against a schema, as far as our schemas go: type, properties, required, additionalProperties, items, const,
 * enum, minimum and $ref within the file (JSON Schema 2020-12). A word it does not know is a fault of its own.
 */
final class SchemaCheck {

    private static final List<String> KNOWN = List.of(
            "$schema",
            "$id",
            "$defs",
            "$ref",
            "title",
            "description",
            "type",
            "properties",
            "required",
            "additionalProperties",
            "items",
            "const",
            "enum",
            "minimum");

    private final JsonNode whole;
    private final List<String> faults = new ArrayList<>();

    private SchemaCheck(JsonNode whole) {
        this.whole = whole;
    }

    static List<String> faults(Path schema, JsonNode json) throws IOException {
        JsonNode read = new ObjectMapper().readTree(schema.toFile());
        SchemaCheck check = new SchemaCheck(read);
        check.look(read, json, "");
        return check.faults;
    }

    private void look(JsonNode schema, JsonNode json, String at) {
        if (schema.has("$ref")) {
            look(whole.at(schema.get("$ref").asText().substring(1)), json, at);
            return;
        }
        schema.fieldNames().forEachRemaining(word -> require(KNOWN.contains(word), at, "unknown word " + word));
        require(!schema.has("type") || isOf(schema.get("type").asText(), json), at, "is no " + schema.get("type"));
        require(!schema.has("const") || schema.get("const").equals(json), at, "is not " + schema.get("const"));
        require(!schema.has("enum") || contains(schema.get("enum"), json), at, "is none of " + schema.get("enum"));
        require(
                !schema.has("minimum")
                        || json.asDouble() >= schema.get("minimum").asDouble(),
                at,
                "is below " + schema.get("minimum"));
        properties(schema, json, at);
        if (schema.has("items")) {
            json.forEach(item -> look(schema.get("items"), item, at + "[]"));
        }
    }

    private void properties(JsonNode schema, JsonNode json, String at) {
        schema.path("required").forEach(name -> require(json.has(name.asText()), at, "has no " + name));
        json.fieldNames().forEachRemaining(name -> {
            JsonNode known = schema.path("properties").get(name);
            if (known != null) {
                look(known, json.get(name), at + "/" + name);
            } else {
                require(schema.path("additionalProperties").asBoolean(true), at, "has " + name + " too");
            }
        });
    }

    private static boolean contains(JsonNode list, JsonNode json) {
        for (JsonNode one : list) {
            if (one.equals(json)) {
                return true;
            }
        }
        return false;
    }

    private static boolean isOf(String type, JsonNode json) {
        return switch (type) {
            case "object" -> json.isObject();
            case "array" -> json.isArray();
            case "string" -> json.isTextual();
            case "boolean" -> json.isBoolean();
            case "integer" -> json.isIntegralNumber();
            case "number" -> json.isNumber();
            default -> false;
        };
    }

    private void require(boolean holds, String at, String otherwise) {
        if (!holds) {
            faults.add(at + " " + otherwise);
        }
    }
}
