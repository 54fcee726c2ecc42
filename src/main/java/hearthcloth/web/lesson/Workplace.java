package hearthcloth.web.lesson;

import hearthcloth.guideline.fit.Fitted;
import hearthcloth.measure.Ruler;
import hearthcloth.plan.model.Plan;
import hearthcloth.words.sentence.Sentence;
import java.util.List;
import java.util.Optional;

/** What one student has before her in a class: what she wrote, what was found, and how far it has grown. Immutable. */
record Workplace(Written written, Found found, Growing growing) {

    /**
     * Her scraps as she wrote them.
     *
     * @param heap a line for each kind
     * @param favourite the fabric she likes best; may be empty
     */
    record Written(String heap, String favourite, Ruler ruler) {}

    /** How far the search has come. */
    enum Stage {
        /** She has asked nothing yet. */
        OPEN,
        /** She waits. */
        LOOKING,
        /** It has been answered. */
        ANSWERED
    }

    /**
     * What was found.
     *
     * @param faults a sentence for each line that was not understood
     * @param cloths the nearest first
     * @param why what is short where a rule had to be bent
     */
    record Found(Stage stage, List<Sentence> faults, List<Fitted.Nearest> cloths, List<Sentence> why) {

        static final Found NOTHING = new Found(Stage.OPEN, List.of(), List.of(), List.of());
        static final Found LOOKING = new Found(Stage.LOOKING, List.of(), List.of(), List.of());

        Found {
            faults = List.copyOf(faults);
            cloths = List.copyOf(cloths);
            why = List.copyOf(why);
        }
    }

    /**
     * How far she has come with her cloth.
     *
     * @param chosen which of the cloths, from 0
     * @param sewn how many seams
     * @param isShown whether she lets the others see it
     */
    record Growing(int chosen, int sewn, boolean isShown) {

        static final Growing BEGUN = new Growing(0, 0, false);
    }

    static Workplace empty(Ruler ruler) {
        return new Workplace(new Written("", "", ruler), Found.NOTHING, Growing.BEGUN);
    }

    Workplace asking(Written other) {
        return new Workplace(other, Found.LOOKING, new Growing(0, 0, growing.isShown()));
    }

    Workplace with(Found other) {
        return new Workplace(written, other, growing);
    }

    Workplace with(Growing other) {
        return new Workplace(written, found, other);
    }

    Optional<Fitted.Nearest> cloth() {
        return growing.chosen() < found.cloths().size()
                ? Optional.of(found.cloths().get(growing.chosen()))
                : Optional.empty();
    }

    Optional<Plan> plan() {
        return cloth().map(Fitted.Nearest::plan);
    }

    /** One seam more or less, within what there is. */
    Workplace sewn(int more) {
        int all = plan().map(plan -> plan.cloth().steps().size()).orElse(0);
        int now = Math.max(0, Math.min(all, growing.sewn() + more));
        return with(new Growing(growing.chosen(), now, growing.isShown()));
    }

    /** The next of the cloths found, not begun. */
    Workplace other() {
        int count = Math.max(1, found.cloths().size());
        return with(new Growing((growing.chosen() + 1) % count, 0, growing.isShown()));
    }

    Workplace shown(boolean on) {
        return with(new Growing(growing.chosen(), growing.sewn(), on));
    }
}
