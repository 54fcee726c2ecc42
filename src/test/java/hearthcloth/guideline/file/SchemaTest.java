package hearthcloth.guideline.file;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import hearthcloth.cutstock.search.Budget;
import hearthcloth.draw.PlanFolder;
import hearthcloth.draw.cloth.Paper;
import hearthcloth.measure.Ruler;
import hearthcloth.plan.model.PlanOutcome;
import hearthcloth.plan.propose.Planner;
import hearthcloth.plan.propose.Stashes;
import hearthcloth.wish.Door;
import hearthcloth.wish.Usual;
import hearthcloth.wish.WishReader;
import hearthcloth.wish.WishWords;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What is written, against the schemas of docs/formats, by the words of JSON Schema that they use (draft 2020-12). */
class SchemaTest {

    private final List<String> wrong = new ArrayList<>();

    private static JsonNode schema(String name) throws IOException {
        return new ObjectMapper().readTree(Path.of("docs/formats", name).toFile());
    }

    @Test
    void plan_files_keep_to_their_schema() throws IOException {
        var stash = Stashes.scraps(20, 3);
        var wish = new WishReader(WishWords.NOTHING, stash, Usual.of(Ruler.EIGHTHS), Door.SHELL).wish(Optional.empty());
        var outcome = (PlanOutcome.Proposals) Planner.plan(stash, wish, 1, Budget.steps(100), seen -> {});
        for (var plan : outcome.plans()) {
            String file = new PlanFolder(plan, Ruler.EIGHTHS, Paper.A4).planFile();
            holds(schema("plan.schema.json"), new ObjectMapper().readTree(file), "plan");
        }
        assertThat(wrong).isEmpty();
        String spoilt = Files.readString(Path.of("src/test/resources/golden/draw/plan.json"))
                .replace("#3f5d52", "green")
                .replace("\"nm\"", "\"mm\"");
        holds(schema("plan.schema.json"), new ObjectMapper().readTree(spoilt), "plan");
        assertThat(wrong).hasSize(2);
    }

    @Test
    void guidelines_keep_to_their_schema() throws IOException {
        String example = Files.readString(Path.of("examples/idea.json"));
        for (String file : List.of(example, GuidelineFile.write(GuidelineFileTest.read(example)))) {
            holds(schema("guideline.schema.json"), new ObjectMapper().readTree(file), "guideline");
        }
        assertThat(wrong).isEmpty();
        holds(schema("guideline.schema.json"), new ObjectMapper().readTree("{\"sise\":1}"), "guideline");
        assertThat(wrong).hasSize(4);
    }

    private void holds(JsonNode schema, JsonNode value, String at) {
        if (schema.has("const") && !schema.get("const").asText().equals(value.asText())) {
            wrong.add(at + " is " + value);
        }
        if (schema.has("enum") && !contains(schema.get("enum"), value)) {
            wrong.add(at + " is " + value);
        }
        if (schema.has("type") && !isOf(schema.get("type"), value)) {
            wrong.add(at + " is no " + schema.get("type"));
        }
        if (schema.has("pattern")
                && !value.asText().matches(schema.get("pattern").asText())) {
            wrong.add(at + " is " + value);
        }
        if (schema.has("minimum")
                && value.decimalValue().compareTo(schema.get("minimum").decimalValue()) < 0) {
            wrong.add(at + " is " + value);
        }
        schema.path("required").forEach(name -> {
            if (!value.has(name.asText())) {
                wrong.add(at + " lacks " + name);
            }
        });
        value.fieldNames().forEachRemaining(name -> {
            if (schema.path("properties").has(name)) {
                holds(schema.get("properties").get(name), value.get(name), at + "." + name);
            } else if (schema.has("properties")) {
                wrong.add(at + " has " + name);
            }
        });
        if (schema.has("items")) {
            value.forEach(item -> holds(schema.get("items"), item, at + "[]"));
        }
    }

    private static boolean contains(JsonNode values, JsonNode value) {
        for (JsonNode each : values) {
            if (each.equals(value)) {
                return true;
            }
        }
        return false;
    }

    private static boolean isOf(JsonNode types, JsonNode value) {
        List<String> names = new ArrayList<>();
        if (types.isArray()) {
            types.forEach(type -> names.add(type.asText()));
        } else {
            names.add(types.asText());
        }
        return names.stream().anyMatch(name -> switch (name) {
            case "object" -> value.isObject();
            case "array" -> value.isArray();
            case "string" -> value.isTextual();
            case "integer" -> value.isIntegralNumber();
            case "boolean" -> value.isBoolean();
            default -> value.isNull();
        });
    }
}
