package hearthcloth.store.json;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import hearthcloth.words.sentence.Sentence;
import hearthcloth.words.sentence.StoringSentences;
import hearthcloth.work.Project.Done;
import hearthcloth.work.Project.Measure;
import hearthcloth.work.Project.Stage;
import java.util.Collection;
import java.util.Set;
import java.util.TreeSet;

/**
 * A cloth's text with what is said of the work on the bench changed in place: which cuts are made, how far it is sewn, what
 * was measured. Whatever else the text says stays as it is written, also what a newer program adds.
 */
public final class BenchText {

    private static final Sentence UNFIT = StoringSentences.misfit();

    private final ObjectNode tree;

    private BenchText(ObjectNode tree) {
        this.tree = tree;
    }

    /**
     * Reads the text of a cloth.
     *
     * @throws StoreException where it is none
     */
    public static BenchText of(String text) {
        if (Json.tree(text) instanceof ObjectNode tree) {
            return new BenchText(tree);
        }
        throw new StoreException(UNFIT);
    }

    public String text() {
        return Json.text(tree);
    }

    /** Ticks cuts, or takes their ticks away; each must have been the other way before. */
    public void tick(Collection<String> cuts, boolean made) {
        Set<String> ticked = new TreeSet<>();
        array("ticked").forEach(one -> ticked.add(one.asText()));
        for (String cut : cuts) {
            require(made ? ticked.add(cut) : ticked.remove(cut));
        }
        ArrayNode now = tree.putArray("ticked");
        ticked.forEach(now::add);
    }

    /** Goes from so many steps that are done to so many others. */
    public void sewn(int from, int to) {
        require(tree.path("sewn").asInt(-1) == from);
        tree.put("sewn", to);
    }

    /** Goes from one stage to another. */
    public void stage(Stage from, Stage to) {
        JsonNode life = tree.path("life");
        require(life.path("stage").asText().equals(from.name()) && life instanceof ObjectNode);
        ((ObjectNode) life).put("stage", to.name());
    }

    /** Adds when a step was done. */
    public void add(Done done) {
        array("done").add(Json.tree(KeptCloth.StepDone.of(done)));
    }

    public void remove(Done done) {
        removeLast("done", Json.tree(KeptCloth.StepDone.of(done)));
    }

    /** Adds what was measured. */
    public void add(Measure measure) {
        array("measures").add(Json.tree(measure));
    }

    public void remove(Measure measure) {
        removeLast("measures", Json.tree(measure));
    }

    private void removeLast(String name, JsonNode one) {
        ArrayNode all = array(name);
        require(!all.isEmpty() && Json.text(all.get(all.size() - 1)).equals(Json.text(one)));
        all.remove(all.size() - 1);
    }

    private ArrayNode array(String name) {
        if (tree.path(name) instanceof ArrayNode array) {
            return array;
        }
        throw new StoreException(UNFIT);
    }

    private static void require(boolean fits) {
        if (!fits) {
            throw new StoreException(UNFIT);
        }
    }
}
