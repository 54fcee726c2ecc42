package hearthcloth.draw;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import hearthcloth.judge.PlanJudge;
import hearthcloth.measure.Ruler;
import hearthcloth.plan.model.Plan;
import java.io.IOException;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** The plan file against its contract, which docs/using.md states. */
class PlanFileTest {

    @Test
    void a_plan_file_is_kept_as_it_is() throws IOException {
        Golden.isKept("plan.json", PlanFile.text(Samples.small()));
    }

    @Test
    void fields_come_in_the_order_of_the_contract() throws IOException {
        JsonNode plan = new ObjectMapper().readTree(PlanFile.text(Samples.small()));
        assertThat(names(plan))
                .containsExactly(
                        "format",
                        "version",
                        "units",
                        "seam",
                        "hem",
                        "leeway",
                        "leastPiece",
                        "clearance",
                        "finished",
                        "stock",
                        "patches",
                        "seams",
                        "offcuts",
                        "figures",
                        "title",
                        "fabrics",
                        "making");
        assertThat(names(plan.get("fabrics").get(0))).containsExactly("name", "colour", "faces", "nap");
        assertThat(names(plan.get("stock").get(0))).containsExactly("id", "fabric", "width", "length", "row");
        assertThat(names(plan.get("patches").get(0)))
                .containsExactly(
                        "id",
                        "fabric",
                        "role",
                        "bar",
                        "round",
                        "side",
                        "finished",
                        "allowances",
                        "exact",
                        "cut",
                        "from",
                        "at",
                        "turned",
                        "front");
        assertThat(names(plan.get("seams").get(0)))
                .containsExactly("step", "axis", "first", "second", "wraps", "kind", "length", "running");
        assertThat(names(plan.get("figures")))
                .containsExactly(
                        "joins",
                        "cuts",
                        "lostArea",
                        "offcutArea",
                        "usedArea",
                        "boundLostArea",
                        "boundJoins",
                        "threadLength",
                        "seamLength");
    }

    @Test
    void every_number_is_whole() throws IOException {
        List<JsonNode> numbers = new ArrayList<>();
        collect(new ObjectMapper().readTree(PlanFile.text(Samples.large(2, 2))), numbers);
        assertThat(numbers).isNotEmpty().allMatch(JsonNode::isIntegralNumber);
    }

    @Test
    void what_is_used_lost_and_kept_is_all_that_was_cut_into() throws IOException {
        JsonNode plan = new ObjectMapper().readTree(PlanFile.text(Samples.large(2, 3)));
        BigInteger stock = BigInteger.ZERO;
        for (JsonNode piece : plan.get("stock")) {
            stock = stock.add(piece.get("width")
                    .bigIntegerValue()
                    .multiply(piece.get("length").bigIntegerValue()));
        }
        JsonNode figures = plan.get("figures");
        assertThat(figures.get("usedArea")
                        .bigIntegerValue()
                        .add(figures.get("lostArea").bigIntegerValue())
                        .add(figures.get("offcutArea").bigIntegerValue()))
                .isEqualTo(stock);
    }

    @Test
    void a_judge_that_knows_only_the_file_finds_no_fault() throws IOException {
        Plan plan = Samples.small();
        assertThat(PlanJudge.faults(PlanFile.text(plan), Ruler.EIGHTHS.step().nm(), Set.of()))
                .isEmpty();
    }

    private static List<String> names(JsonNode node) {
        List<String> names = new ArrayList<>();
        node.fieldNames().forEachRemaining(names::add);
        return names;
    }

    private static void collect(JsonNode node, List<JsonNode> numbers) {
        if (node.isNumber()) {
            numbers.add(node);
        }
        node.forEach(child -> collect(child, numbers));
    }
}
