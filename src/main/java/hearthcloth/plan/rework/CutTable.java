package hearthcloth.plan.rework;

import hearthcloth.cloth.Cloth;
import hearthcloth.cloth.Laid;
import hearthcloth.cloth.Rect;
import hearthcloth.cloth.layout.Layout;
import hearthcloth.measure.Size;
import hearthcloth.plan.model.CutTree;
import hearthcloth.plan.model.Design;
import hearthcloth.plan.model.PieceCut;
import hearthcloth.plan.model.Scheme;
import hearthcloth.stash.Fabric;
import hearthcloth.stash.Piece;
import hearthcloth.stash.Stash;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

/**
 * The cutting table after a cut went wrong, as the search sees it: each piece that is begun is replaced by its parts,
 * and the patches of a bar that are to stay are a fabric of their own, so that no other bar is given them.
 */
final class CutTable {

    private final Miscut miscut;
    private final Design design;
    private final Use use;
    private final Set<String> fixed;
    private final Map<String, Piece> parts = new LinkedHashMap<>();
    private final Map<String, List<Piece>> kept = new LinkedHashMap<>();
    private final Map<String, Fabric> own = new LinkedHashMap<>();
    private final List<Piece> pieces;

    /**
     * How the table is used.
     *
     * @param miscutPatch true where the patch that was cut too small is sewn in all the same
     * @param asPlanned true where whatever was planned and is still right is left as it is, cut or not
     */
    record Use(boolean miscutPatch, boolean asPlanned) {}

    CutTable(Miscut miscut, Design design, Stash stash, Use use) {
        this.miscut = miscut;
        this.design = design;
        this.use = use;
        this.pieces = new ArrayList<>(stash.pieces());
        this.fixed = new HashSet<>(miscut.made());
        Set<String> unchanged = use.asPlanned() ? unchanged() : Set.of();
        for (PieceCut cut : miscut.plan().cuts()) {
            List<CutTree.Parted> cuts = cut.tree().cuts();
            if (use.asPlanned()) {
                for (int i = 0; i < cuts.size(); i++) {
                    fixed.add(Miscut.name(cut, i));
                }
            }
            boolean whole = cuts.isEmpty() && (use.asPlanned() || cut.past());
            if (whole || cuts.stream().anyMatch(one -> isFixed(cut, one))) {
                pieces.removeIf(piece -> piece.id().equals(cut.piece().id()));
                part(cut, cut.tree(), unchanged);
            }
        }
    }

    private boolean isFixed(PieceCut from, CutTree.Parted cut) {
        return fixed.contains(Miscut.name(from, from.tree().cuts().indexOf(cut)));
    }

    /** The bars whose patches are needed just as they were planned. */
    private Set<String> unchanged() {
        Map<String, Size> before = bars(DesignEdits.settled(miscut.plan(), design.order()));
        Set<String> same = new HashSet<>();
        bars(design).forEach((bar, size) -> {
            if (size.equals(before.get(bar))) {
                same.add(bar);
            }
        });
        return same;
    }

    private static Map<String, Size> bars(Design design) {
        Map<String, Size> sizes = new LinkedHashMap<>();
        Cloth whole = design.whole();
        for (Laid laid : whole.laid()) {
            sizes.put(laid.patch().place().id(), laid.cut());
        }
        return sizes;
    }

    private void part(PieceCut from, CutTree tree, Set<String> unchanged) {
        if (tree instanceof CutTree.Parted cut && isFixed(from, cut)) {
            part(from, cut.first(), unchanged);
            part(from, cut.second(), unchanged);
            return;
        }
        if (!(tree instanceof CutTree.Kept one)) {
            if (from.past()) {
                // It went into the stash when it was cut.
                return;
            }
            lay(from, tree, from.piece().fabric(), tree.at().size());
            return;
        }
        boolean wrong = one.patch().equals(miscut.patch());
        if (wrong && !use.miscutPatch()) {
            return;
        }
        String bar = Miscut.bar(miscut.plan(), one.patch());
        boolean cut = from.past()
                || (!from.tree().cuts().isEmpty() && miscut.made().containsAll(Miscut.path(from, one.patch())));
        if (wrong || cut || unchanged.contains(bar)) {
            Size size = wrong ? miscut.measured() : one.at().size();
            kept.computeIfAbsent(bar, none -> new ArrayList<>())
                    .add(lay(from, tree, own(bar, from.piece().fabric()), size));
        } else {
            lay(from, tree, from.piece().fabric(), one.at().size());
        }
    }

    private Fabric own(String bar, Fabric real) {
        return own.computeIfAbsent(bar + " " + real.name(), name -> real.called("cut-of " + name));
    }

    private Piece lay(PieceCut from, CutTree part, Fabric fabric, Size size) {
        Piece piece = new Piece(
                "part " + parts.size(),
                fabric,
                size,
                from.piece().washed(),
                from.piece().row());
        parts.put(key(from.piece(), part.at()), piece);
        pieces.add(piece);
        return piece;
    }

    static String key(Piece from, Rect at) {
        return from.id() + " " + at;
    }

    Stash stash() {
        return new Stash(pieces);
    }

    /** What lies where a part of a begun piece was planned. */
    Optional<Piece> at(Piece from, CutTree part) {
        return Optional.ofNullable(parts.get(key(from, part.at())));
    }

    boolean isFixedCut(PieceCut from, CutTree.Parted cut) {
        return isFixed(from, cut);
    }

    Miscut miscut() {
        return miscut;
    }

    /** The design with what each bar may be cut from: a bar whose patches are all there is sewn from just those. */
    Design design() {
        Map<String, Size> before = bars(DesignEdits.settled(miscut.plan(), design.order()));
        Map<String, Size> after = bars(design);
        List<List<Fabric>> bars = new ArrayList<>();
        List<Layout.Slot> slots = design.layout().slots();
        for (int i = 0; i < slots.size(); i++) {
            String bar = slots.get(i).place().bar();
            bars.add(allowed(bar, design.scheme().bars().get(i), isHeld(bar, before, after)));
        }
        List<Fabric> hearth = allowed("hearth", design.scheme().hearth(), isHeld("hearth", before, after));
        return new Design(
                design.order(),
                design.layout(),
                new Scheme(design.scheme().kind(), hearth, bars),
                design.making(),
                design.rules());
    }

    private static boolean isHeld(String bar, Map<String, Size> before, Map<String, Size> after) {
        Size was = before.get(bar);
        return was != null && was.holds(Objects.requireNonNull(after.get(bar)));
    }

    private List<Fabric> allowed(String bar, List<Fabric> wished, boolean held) {
        List<Piece> there = kept.getOrDefault(bar, List.of());
        List<Fabric> allowed = new ArrayList<>();
        if (there.size() < planned(bar) || !held || isShort(bar)) {
            allowed.addAll(wished);
        }
        there.stream().map(Piece::fabric).distinct().forEach(allowed::add);
        return allowed;
    }

    /** Whether the bar needs more than the patch that was cut too small. */
    private boolean isShort(String bar) {
        return bar.equals(miscut.bar())
                && use.miscutPatch()
                && bars(design).equals(bars(DesignEdits.settled(miscut.plan(), design.order())));
    }

    private long planned(String bar) {
        return miscut.plan().laid().keySet().stream()
                .filter(patch -> Miscut.bar(miscut.plan(), patch).equals(bar))
                .count();
    }
}
