package hearthcloth.plan.rework;

import hearthcloth.plan.model.CutTree;
import hearthcloth.plan.model.PieceCut;
import hearthcloth.plan.model.Plan;
import hearthcloth.stash.Piece;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;

/**
 * How the pieces of a cloth were cut before the rest of it was planned again, so that the new plan still tells from which
 * piece each patch came.
 *
 * @param before the plan that was cut
 * @param made its cuts that were made, as {@link Miscut#made}
 * @param lies for each patch that lies on the table as a piece of its own, where it was cut
 */
public record CutSoFar(Plan before, Set<String> made, Map<Piece, CutTree.Kept> lies) {

    public CutSoFar {
        made = Set.copyOf(made);
        lies = Map.copyOf(lies);
    }

    /** The parts into which the cuts made have divided a piece; one where it is whole. */
    static List<CutTree> parts(PieceCut cut, Set<String> made) {
        List<CutTree> parts = new ArrayList<>();
        collect(cut, cut.tree(), made, parts);
        return parts;
    }

    private static void collect(PieceCut from, CutTree tree, Set<String> made, List<CutTree> parts) {
        if (tree instanceof CutTree.Parted cut && isMade(from, cut, made)) {
            collect(from, cut.first(), made, parts);
            collect(from, cut.second(), made, parts);
        } else {
            parts.add(tree);
        }
    }

    private static boolean isMade(PieceCut from, CutTree.Parted cut, Set<String> made) {
        return from.past() || made.contains(Miscut.name(from, from.tree().cuts().indexOf(cut)));
    }

    /** Patches that a plan uses just as they lie on the table. */
    Set<Piece> used(Plan found) {
        Set<Piece> used = new HashSet<>();
        found.cuts().stream()
                .filter(cut -> cut.tree() instanceof CutTree.Kept && lies.containsKey(cut.piece()))
                .forEach(cut -> used.add(cut.piece()));
        return used;
    }

    /**
     * The plan with every piece that was cut before as it was cut: with the patches of it that are used, and what is not
     * used as left.
     *
     * @param found made from the patches as pieces of their own
     */
    public Plan told(Plan found) {
        Set<Piece> used = used(found);
        Map<CutTree.Kept, CutTree.Kept> now = new HashMap<>();
        List<PieceCut> cuts = new ArrayList<>();
        for (PieceCut cut : found.cuts()) {
            if (used.contains(cut.piece())) {
                CutTree.Kept was = Objects.requireNonNull(lies.get(cut.piece()));
                CutTree.Kept is = (CutTree.Kept) cut.tree();
                now.put(was, new CutTree.Kept(was.at(), is.patch(), is.turned()));
            } else {
                cuts.add(cut);
            }
        }
        List<PieceCut> all = new ArrayList<>();
        for (PieceCut was : before.cuts()) {
            CutTree tree = asCut(was, was.tree(), now);
            if (!tree.cuts().isEmpty() || !tree.kept().isEmpty()) {
                all.add(was.asCut(tree));
            }
        }
        all.addAll(cuts);
        Plan plan = new Plan(found.story(), found.cloth(), found.rules(), all, found.bound()).checked();
        return new KeptNames(before).of(plan);
    }

    /**
     * Patches cut for an earlier plan that this one uses no more; they are fabric again.
     *
     * @param next the first number that is free for a new piece
     */
    public static List<Piece> freed(Plan before, Plan after, int next) {
        Set<String> used = new HashSet<>();
        after.sources().values().forEach(source -> used.add(place(source.from(), source.kept())));
        List<Piece> freed = new ArrayList<>();
        for (PieceCut cut : before.cuts()) {
            for (CutTree.Kept kept : cut.tree().kept()) {
                if (cut.past() && !used.contains(place(cut, kept))) {
                    freed.add(cut.piece().part(next + freed.size(), kept.at().size()));
                }
            }
        }
        return freed;
    }

    private static String place(PieceCut from, CutTree.Kept kept) {
        return CutTable.key(from.piece(), kept.at());
    }

    private CutTree asCut(PieceCut from, CutTree tree, Map<CutTree.Kept, CutTree.Kept> now) {
        if (tree instanceof CutTree.Parted cut && isMade(from, cut, made)) {
            return CutTree.parted(
                    cut.at(), cut.upright(), cut.line(), asCut(from, cut.first(), now), asCut(from, cut.second(), now));
        }
        CutTree.Kept kept = tree instanceof CutTree.Kept one ? now.get(one) : null;
        return kept == null ? new CutTree.Left(tree.at()) : kept;
    }
}
