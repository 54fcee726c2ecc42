package hearthcloth.judge;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * A second look at a folder of kits. Shares no code with the program: it knows only kits.json and each plan.json, in their
 * published form. Each plan is judged by {@link PlanJudge}; here it is held that no piece of the stash stands in two plans
 * and that a leftover is whole, was left, and is cut by its taker only after whoever leaves it.
 */
public final class KitsJudge {

    private final Path folder;
    private final JsonNode kits;
    private final List<String> wrong = new ArrayList<>();
    private final Map<String, JsonNode> leftovers = new HashMap<>();
    private final Map<Integer, JsonNode> plans = new HashMap<>();
    private final Map<String, Integer> cutBy = new HashMap<>();

    private KitsJudge(Path folder) throws IOException {
        this.folder = folder;
        this.kits = new ObjectMapper().readTree(folder.resolve("kits.json").toFile());
    }

    /**
     * Everything that is wrong.
     *
     * @param stash every piece's width and length in nanometres, by its id
     * @param step the ruler's step in nanometres
     * @param napped fabrics that may not be turned
     */
    public static List<String> faults(Path folder, Map<String, long[]> stash, long step, Set<String> napped)
            throws IOException {
        KitsJudge judge = new KitsJudge(folder);
        judge.judge(stash, step, napped);
        return judge.wrong;
    }

    private void judge(Map<String, long[]> stash, long step, Set<String> napped) throws IOException {
        kits.get("leftovers").forEach(left -> leftovers.put(left.get("id").asText(), left));
        for (JsonNode cloth : kits.get("cloths")) {
            if (cloth.has("folder")) {
                String json =
                        Files.readString(folder.resolve(cloth.get("folder").asText() + "/plan.json"));
                PlanJudge.faults(json, step, napped)
                        .forEach(fault -> wrong.add(cloth.get("name").asText() + ": " + fault));
                plans.put(cloth.get("number").asInt(), new ObjectMapper().readTree(json));
            }
        }
        plans.forEach((number, plan) -> {
            for (JsonNode stock : plan.get("stock")) {
                stock(number, stock, stash);
            }
        });
        leftovers.values().forEach(this::leftover);
        order();
    }

    private void stock(int number, JsonNode stock, Map<String, long[]> stash) {
        String id = stock.get("id").asText();
        Integer other = cutBy.put(id, number);
        if (other != null) {
            wrong.add("piece " + id + " stands in the plans of " + other + " and " + number);
        }
        JsonNode left = leftovers.get(id);
        long[] size = left == null
                ? stash.get(id)
                : new long[] {left.get("width").asLong(), left.get("length").asLong()};
        if (size == null) {
            wrong.add("piece " + id + " is neither of the stash nor left over");
        } else if (size[0] != stock.get("width").asLong()
                || size[1] != stock.get("length").asLong()) {
            wrong.add("piece " + id + " has another size than it has");
        }
    }

    /** It lies within one offcut of the piece it is left of, in the plan of whoever leaves it. */
    private void leftover(JsonNode left) {
        JsonNode plan = plans.get(left.get("leftBy").asInt());
        boolean whole = false;
        if (plan != null) {
            for (JsonNode offcut : plan.get("offcuts")) {
                whole |= offcut.get("from").asText().equals(left.get("of").asText())
                        && offcut.get("x").asLong() == left.get("x").asLong()
                        && offcut.get("y").asLong() == left.get("y").asLong()
                        && offcut.get("width").asLong() == left.get("width").asLong()
                        && offcut.get("height").asLong() == left.get("length").asLong();
            }
        }
        if (!whole) {
            wrong.add("leftover " + left.get("id") + " is no offcut of piece " + left.get("of"));
        }
    }

    private void order() {
        Set<Integer> cut = new HashSet<>();
        for (JsonNode number : kits.get("cuttingOrder")) {
            JsonNode plan = plans.get(number.asInt());
            if (plan == null) {
                wrong.add("cloth " + number + " is cut without a plan");
                continue;
            }
            for (JsonNode stock : plan.get("stock")) {
                JsonNode left = leftovers.get(stock.get("id").asText());
                if (left != null && !cut.contains(left.get("leftBy").asInt())) {
                    wrong.add("cloth " + number + " is cut before piece " + left.get("id") + " is left for it");
                }
            }
            cut.add(number.asInt());
        }
        if (!cut.equals(plans.keySet())) {
            wrong.add("cut are " + cut + ", planned are " + plans.keySet());
        }
    }
}
