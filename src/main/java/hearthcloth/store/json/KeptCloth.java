package hearthcloth.store.json;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.databind.JsonNode;
import hearthcloth.work.Project;
import hearthcloth.work.Project.Bench;
import hearthcloth.work.Project.Done;
import hearthcloth.work.Project.Life;
import hearthcloth.work.Project.Measure;
import java.time.Instant;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * A cloth as it is kept.
 *
 * @param plan missing where the stash does not suffice
 * @param lacks the same as {@code lacking}, which is in English for earlier versions, so that it can be said in any language
 * @param sewn and {@code measures} and {@code done} are missing in the earliest documents
 */
public record KeptCloth(
        String format,
        int version,
        KeptDesign design,
        @JsonInclude(JsonInclude.Include.NON_NULL) @Nullable KeptPlan plan,
        List<String> lacking,
        @JsonInclude(JsonInclude.Include.NON_NULL) @Nullable List<String> lacks,
        List<String> locked,
        List<String> ticked,
        @JsonInclude(JsonInclude.Include.NON_NULL) @Nullable Integer sewn,
        @JsonInclude(JsonInclude.Include.NON_NULL) @Nullable List<Measure> measures,
        @JsonInclude(JsonInclude.Include.NON_NULL) @Nullable List<StepDone> done,
        Life life) {

    private static final String FORMAT = "hearthcloth-cloth";
    private static final int VERSION = 1;

    /**
     * A step that was done.
     *
     * @param at when, as ISO 8601 writes it
     */
    record StepDone(String kind, String at) {

        static StepDone of(Done done) {
            return new StepDone(done.kind(), done.at().toString());
        }

        Done done() {
            try {
                return new Done(kind, Instant.parse(at));
            } catch (DateTimeParseException e) {
                throw new IllegalArgumentException("this is no cloth of ours: a step has no time", e);
            }
        }
    }

    /** The JSON text kept in the store and the archive. */
    public static String text(Project cloth) {
        return Json.text(of(cloth));
    }

    private static KeptCloth of(Project cloth) {
        Bench bench = cloth.bench();
        return new KeptCloth(
                FORMAT,
                VERSION,
                KeptDesign.of(cloth.design()),
                cloth.plan().map(KeptPlan::of).orElse(null),
                KeptStory.english(cloth.lacking()),
                KeptStory.beside(cloth.lacking()),
                bench.locked().stream().sorted().toList(),
                bench.ticked().stream().sorted().toList(),
                bench.sewn(),
                bench.measures(),
                bench.done().stream().map(StepDone::of).toList(),
                cloth.life());
    }

    /**
     * Reads what {@link #text} wrote.
     *
     * @throws IllegalArgumentException saying what does not fit
     */
    public static Project read(String text) {
        JsonNode tree = Json.tree(text);
        if (!tree.path("format").asText().equals(FORMAT) || tree.path("version").asInt() != VERSION) {
            throw new IllegalArgumentException("this is no cloth of ours, or of a newer Hearthcloth");
        }
        return Json.read(tree, KeptCloth.class).cloth();
    }

    private Project cloth() {
        return new Project(
                design.design(),
                Optional.ofNullable(plan).map(KeptPlan::plan),
                KeptStory.read(lacks, lacking),
                new Bench(
                        Set.copyOf(locked),
                        Set.copyOf(ticked),
                        sewn == null ? 0 : sewn,
                        measures == null ? List.of() : measures,
                        done == null
                                ? List.of()
                                : done.stream().map(StepDone::done).toList()),
                life);
    }
}
