package hearthcloth.store.json;

import com.fasterxml.jackson.annotation.JsonInclude;
import hearthcloth.cloth.Cloth;
import hearthcloth.cloth.Notation;
import hearthcloth.cloth.Rect;
import hearthcloth.cloth.making.Making;
import hearthcloth.measure.Length;
import hearthcloth.measure.Size;
import hearthcloth.plan.model.Bound;
import hearthcloth.plan.model.CutTree;
import hearthcloth.plan.model.PieceCut;
import hearthcloth.plan.model.PiecingRules;
import hearthcloth.plan.model.Plan;
import hearthcloth.stash.Fabric;
import hearthcloth.stash.Piece;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A whole plan as it is kept.
 *
 * @param work the cloth in its {@link Notation}
 * @param cuts how each piece is cut up
 */
record KeptPlan(KeptStory story, String work, Making making, PiecingRules rules, List<Cut> cuts, Bound bound) {

    static KeptPlan of(Plan plan) {
        return new KeptPlan(
                KeptStory.of(plan.story()),
                Notation.print(plan.cloth().work()),
                plan.cloth().making(),
                plan.rules(),
                plan.cuts().stream().map(Cut::of).toList(),
                plan.bound());
    }

    Plan plan() {
        return new Plan(
                story.story(),
                new Cloth(Notation.parse(work), making),
                rules,
                cuts.stream().map(Cut::cut).toList(),
                bound);
    }

    /**
     * A piece with the cuts that divide it.
     *
     * @param past where it was cut for an earlier plan of the cloth; else missing
     */
    record Cut(
            String id,
            Piece.Washed washed,
            int row,
            Fabric fabric,
            Size size,

            @JsonInclude(JsonInclude.Include.NON_NULL) @Nullable
            Boolean past,

            Part tree) {

        static Cut of(PieceCut cut) {
            Piece piece = cut.piece();
            return new Cut(
                    piece.id(),
                    piece.washed(),
                    piece.row(),
                    piece.fabric(),
                    piece.size(),
                    cut.past() ? true : null,
                    Part.of(cut.tree()));
        }

        PieceCut cut() {
            Rect whole = Rect.at(Length.ZERO, Length.ZERO, size);
            return new PieceCut(new Piece(id, fabric, size, washed, row), tree.tree(whole), past != null && past);
        }
    }

    /**
     * A part of a piece: divided by a cut, kept as a patch, or left over, of which nothing is told.
     *
     * @param upright whether the cut runs along the length; with {@code at}, {@code first} and {@code second}
     * @param at where it runs, from the piece's left or upper edge
     * @param patch which one it becomes; with {@code turned}
     */
    record Part(
            @JsonInclude(JsonInclude.Include.NON_NULL) @Nullable
            Boolean upright,

            @JsonInclude(JsonInclude.Include.NON_NULL) @Nullable
            Length at,

            @JsonInclude(JsonInclude.Include.NON_NULL) @Nullable
            Part first,

            @JsonInclude(JsonInclude.Include.NON_NULL) @Nullable
            Part second,

            @JsonInclude(JsonInclude.Include.NON_NULL) @Nullable
            String patch,

            @JsonInclude(JsonInclude.Include.NON_NULL) @Nullable
            Boolean turned) {

        static Part of(CutTree tree) {
            if (tree instanceof CutTree.Parted cut) {
                return new Part(cut.upright(), cut.line(), of(cut.first()), of(cut.second()), null, null);
            }
            return tree instanceof CutTree.Kept kept
                    ? new Part(null, null, null, null, kept.patch(), kept.turned())
                    : new Part(null, null, null, null, null, null);
        }

        /** @param whole where this part lies in the piece */
        CutTree tree(Rect whole) {
            if (upright != null && at != null && first != null && second != null) {
                return upright ? sideBySide(whole, at, first, second) : oneBelowTheOther(whole, at, first, second);
            }
            if (patch != null && turned != null) {
                return new CutTree.Kept(whole, patch, turned);
            }
            if (at != null || patch != null) {
                throw new IllegalArgumentException("a cut of a piece is only half told");
            }
            return new CutTree.Left(whole);
        }

        private static CutTree sideBySide(Rect whole, Length at, Part left, Part right) {
            Rect first = Rect.at(whole.x(), whole.y(), new Size(at.minus(whole.x()), whole.height()));
            Rect second = Rect.at(at, whole.y(), new Size(whole.right().minus(at), whole.height()));
            return CutTree.parted(whole, true, at, left.tree(first), right.tree(second));
        }

        private static CutTree oneBelowTheOther(Rect whole, Length at, Part upper, Part lower) {
            Rect first = Rect.at(whole.x(), whole.y(), new Size(whole.width(), at.minus(whole.y())));
            Rect second = Rect.at(
                    whole.x(), at, new Size(whole.width(), whole.bottom().minus(at)));
            return CutTree.parted(whole, false, at, upper.tree(first), lower.tree(second));
        }
    }
}
