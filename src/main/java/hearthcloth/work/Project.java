package hearthcloth.work;

import hearthcloth.measure.Length;
import hearthcloth.plan.model.Design;
import hearthcloth.plan.model.Plan;
import hearthcloth.words.sentence.Sentence;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * A cloth in the making: what was decided, how it is cut, how far the work has come, what it is for. Immutable; a change
 * makes a new one.
 *
 * @param design what was decided, bar by bar
 * @param plan how it is cut; empty where the stash does not suffice
 * @param lacking what is short in that case, in sentences
 * @param bench what is locked, cut, sewn and measured
 * @param life what became of the cloth
 */
public record Project(Design design, Optional<Plan> plan, List<Sentence> lacking, Bench bench, Life life) {

    /**
     * What the maker has marked while cutting and sewing.
     *
     * @param locked ids of bars (or hearth) that planning again leaves as they are
     * @param ticked what has been cut: a piece's id, or piece id, colon and the number of the cut
     * @param sewn how many steps at the machine are done
     * @param measures what she measured, in that order
     * @param done when steps were done, in that order; a step done twice is there twice
     */
    public record Bench(Set<String> locked, Set<String> ticked, int sewn, List<Measure> measures, List<Done> done) {

        public static final Bench CLEAR = new Bench(Set.of(), Set.of(), 0, List.of(), List.of());

        public Bench {
            locked = Set.copyOf(locked);
            ticked = Set.copyOf(ticked);
            measures = List.copyOf(measures);
            done = List.copyOf(done);
        }

        public Bench withLocked(Set<String> other) {
            return new Bench(other, ticked, sewn, measures, done);
        }

        public Bench withTicked(Set<String> other) {
            return new Bench(locked, other, sewn, measures, done);
        }
    }

    /**
     * A step that was done.
     *
     * @param kind name of the step's {@link hearthcloth.sew.machine.AtTheMachine.Kind}
     */
    public record Done(String kind, Instant at) {}

    /**
     * What the work measured after a step, across its seam.
     *
     * @param step its number, from 0
     * @param planned the size it should have had, given the real size of the work before it
     * @param real what she measured
     */
    public record Measure(int step, Length planned, Length real) {}

    /**
     * The life of a cloth.
     *
     * @param stage how far it has come
     * @param made the day it was made, as she writes it; may be blank
     * @param wrapped what it is for or has wrapped
     * @param keeper who has it
     * @param uses how many times it was used again
     * @param purpose what it was planned for; missing where it was kept before cloths remembered that
     * @param paper the word of the paper its guide is printed on; missing where it was kept before cloths remembered that
     * @param keepsake what she wrote of the finished cloth and its uses; missing while she has written nothing
     */
    public record Life(
            Stage stage,
            String made,
            String wrapped,
            String keeper,
            int uses,
            @Nullable Purpose purpose,
            @Nullable String paper,
            @Nullable Keepsake keepsake) {

        public static Life begun(@Nullable Purpose purpose) {
            return new Life(Stage.DESIGNED, "", "", "", 0, purpose, null, null);
        }

        public Life at(Stage other) {
            return new Life(other, made, wrapped, keeper, uses, purpose, paper, keepsake);
        }

        public Life noted(String day, String what, String who) {
            return new Life(stage, day, what, who, uses, purpose, paper, keepsake);
        }

        /** With what she wrote of the finished cloth, its uses as they are. */
        public Life noted(Optional<Keepsake.Measured> real, String word) {
            Keepsake now = new Keepsake(real.orElse(null), word, kept().used());
            return new Life(
                    stage, made, wrapped, keeper, uses, purpose, paper, now.equals(Keepsake.NOTHING) ? null : now);
        }

        public Life usedAgain(Keepsake.Use use) {
            return new Life(stage, made, wrapped, keeper, uses + 1, purpose, paper, kept().and(use));
        }

        /** What she wrote of it; nothing where that is missing. */
        public Keepsake kept() {
            return keepsake == null ? Keepsake.NOTHING : keepsake;
        }

        Life onPaper(String word) {
            return new Life(stage, made, wrapped, keeper, uses, purpose, word, keepsake);
        }

        public Life meantFor(Purpose other) {
            return new Life(stage, made, wrapped, keeper, uses, other, paper, keepsake);
        }
    }

    /** How far a cloth has come. */
    public enum Stage {
        DESIGNED,
        CUT,
        /** Sewn in part, and something is to be cut before sewing goes on: what its plan does not call past. */
        RECUT,
        SEWN;

        /** True while some of its cuts are still to be made. */
        public boolean isToCut() {
            return this == DESIGNED || this == RECUT;
        }
    }

    public Project {
        lacking = List.copyOf(lacking);
    }

    public static Project of(Design design, Plan plan, Purpose purpose) {
        return new Project(design, Optional.of(plan), List.of(), Bench.CLEAR, Life.begun(purpose));
    }

    /** Whether it is free patchwork, which is not changed bar by bar. */
    public boolean isFree() {
        return plan.filter(whole -> whole.cloth().isFree()).isPresent();
    }

    public Project with(Bench other) {
        return new Project(design, plan, lacking, other, life);
    }

    /** The same cloth, its guide printed on the paper of this word. */
    public Project onPaper(String word) {
        return with(life.onPaper(word));
    }

    public Project with(Life other) {
        return new Project(design, plan, lacking, bench, other);
    }
}
