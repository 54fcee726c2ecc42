package hearthcloth.plan.rework;

import hearthcloth.cloth.Assembly;
import hearthcloth.cloth.Cloth;
import hearthcloth.cloth.Patch;
import hearthcloth.cloth.Place;
import hearthcloth.cloth.Seam;
import hearthcloth.cloth.layout.Layout;
import hearthcloth.cutstock.search.Budget;
import hearthcloth.measure.Size;
import hearthcloth.plan.model.CutTree;
import hearthcloth.plan.model.Design;
import hearthcloth.plan.model.PieceCut;
import hearthcloth.plan.model.Plan;
import hearthcloth.plan.model.Scheme;
import hearthcloth.stash.Fabric;
import hearthcloth.stash.Piece;
import hearthcloth.stash.Stash;
import hearthcloth.words.sentence.Sentence;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

/**
 * What lies on the table when a cut went wrong: the patches that are already cut, the offcuts and remainders of the
 * pieces begun, and what is left of the piece that went wrong. The rest of the stash is unchanged.
 *
 * @param gone pieces that are no longer there as they were
 * @param come pieces that are there instead, patches among them, with numbers of their own
 * @param patches the patches among them, by the bar (or hearth) they were cut for
 * @param story how each piece was cut so far
 */
public record MiscutRecovery(List<Piece> gone, List<Piece> come, Map<String, List<Piece>> patches, CutSoFar story) {

    public MiscutRecovery {
        gone = List.copyOf(gone);
        come = List.copyOf(come);
        patches = Map.copyOf(patches);
    }

    /**
     * The table after a slip.
     *
     * @param made the cuts that were made: piece id, colon, number of the cut as {@link CutTree#cuts} counts from 1
     * @param wrong id of the piece that went wrong; patches cut off it before are good
     * @param real the largest part left of what was still to be cut of that piece; empty where nothing is left
     * @param next the first number that is free for a new piece
     */
    public static MiscutRecovery of(Plan plan, Set<String> made, String wrong, Optional<Size> real, int next) {
        Table table = new Table(plan, next);
        for (PieceCut cut : plan.cuts()) {
            Piece piece = cut.piece();
            List<CutTree> parts = CutSoFar.parts(cut, made);
            boolean isWrong = piece.id().equals(wrong);
            if (cut.past()) {
                table.again(cut);
            } else if (isWrong || parts.size() > 1) {
                table.part(cut, parts, isWrong);
            }
            if (isWrong) {
                real.ifPresent(size -> table.lay(piece, size));
            }
        }
        return new MiscutRecovery(table.gone, table.come, table.patches, new CutSoFar(plan, made, table.lies));
    }

    private static final class Table {

        private final Plan plan;
        private final List<Piece> gone = new ArrayList<>();
        private final List<Piece> come = new ArrayList<>();
        private final Map<String, List<Piece>> patches = new LinkedHashMap<>();
        private final Map<Piece, CutTree.Kept> lies = new LinkedHashMap<>();
        private int next;

        Table(Plan plan, int next) {
            this.plan = plan;
            this.next = next;
        }

        /** The patches of a piece that was cut for an earlier plan; what was left of it went into the stash then. */
        void again(PieceCut cut) {
            cut.tree().kept().forEach(kept -> patch(cut.piece(), kept));
        }

        private void patch(Piece piece, CutTree.Kept kept) {
            Piece laid = lay(piece, kept.at().size());
            lies.put(laid, kept);
            patches.computeIfAbsent(bar(kept.patch()), none -> new ArrayList<>())
                    .add(laid);
        }

        void part(PieceCut cut, List<CutTree> parts, boolean isWrong) {
            Piece piece = cut.piece();
            gone.add(piece);
            for (CutTree part : parts) {
                if (part instanceof CutTree.Kept kept && parts.size() > 1) {
                    patch(piece, kept);
                } else if (part instanceof CutTree.Left) {
                    if (CutTree.isReusable(part.at().size(), plan.rules().leastPiece())) {
                        lay(piece, part.at().size());
                    }
                } else if (!isWrong) {
                    lay(piece, part.at().size());
                }
            }
        }

        Piece lay(Piece from, Size size) {
            Piece piece = from.part(next, size);
            next++;
            come.add(piece);
            return piece;
        }

        private String bar(String patch) {
            Place place = Objects.requireNonNull(plan.laid().get(patch)).patch().place();
            return place instanceof Place.Bar bar ? bar.bar() : place.id();
        }
    }

    /** The pieces that come into the stash where this plan is taken: a patch that it uses as it is does not. */
    public List<Piece> come(Plan found) {
        Set<Piece> used = story.used(found);
        return come.stream().filter(piece -> !used.contains(piece)).toList();
    }

    /** The stash as it is after the slip. */
    public Stash stash(Stash before) {
        List<Piece> pieces = new ArrayList<>(before.pieces());
        pieces.removeAll(gone);
        pieces.addAll(come);
        return new Stash(pieces);
    }

    /** How many of the patches that were already cut a plan uses unchanged. */
    public long usedAsTheyAre(Plan plan) {
        return plan.cuts().stream()
                .filter(cut -> cut.tree() instanceof CutTree.Kept)
                .filter(cut -> patches.values().stream().anyMatch(own -> own.contains(cut.piece())))
                .count();
    }

    /**
     * Plans the rest again. A bar that is wholly cut is sewn from exactly its patches, a bar that is partly cut from
     * its own patches and whatever else is there, and no patch goes into another bar.
     *
     * @param stash the stash as it is after the slip
     * @param title the title of the plan
     * @param budget ends the search early
     */
    public DesignFit.Answer fit(Plan before, Design design, Stash stash, String title, Budget budget) {
        StandIns standIns = new StandIns(stash);
        DesignFit.Answer answer =
                new DesignFit(standIns.stash()).fit(standIns.design(before, design), Sentence.itself(title), budget);
        return answer instanceof DesignFit.Answer.Made made
                ? new DesignFit.Answer.Made(standIns.undone(made.plan()).checked())
                : answer;
    }

    /**
     * Gives the search each bar's patches that are already cut as a fabric of their own. So no other bar can be given
     * them, and a bar for which nothing else is allowed gets them.
     */
    private final class StandIns {

        private final Stash stash;
        private final Map<String, Fabric> byBar = new LinkedHashMap<>();

        StandIns(Stash stash) {
            this.stash = stash;
            patches.keySet().stream().sorted().forEach(bar -> {
                Fabric real = patches.getOrDefault(bar, List.of()).get(0).fabric();
                String name = "cut-of " + bar;
                while (stash.fabric(name).isPresent()) {
                    name += " already";
                }
                byBar.put(bar, real.called(name));
            });
        }

        Stash stash() {
            List<Piece> pieces = new ArrayList<>(stash.pieces());
            patches.forEach((bar, own) -> {
                pieces.removeAll(own);
                own.forEach(piece -> pieces.add(new Piece(
                        piece.id(),
                        Objects.requireNonNull(byBar.get(bar)),
                        piece.size(),
                        piece.washed(),
                        piece.row())));
            });
            return new Stash(pieces);
        }

        Design design(Plan before, Design design) {
            List<List<Fabric>> bars = new ArrayList<>();
            for (int i = 0; i < design.scheme().bars().size(); i++) {
                Layout.Slot slot = design.layout().slots().get(i);
                bars.add(allowed(
                        before, slot.place().bar(), design.scheme().bars().get(i)));
            }
            List<Fabric> hearth = allowed(before, "hearth", design.scheme().hearth());
            return new Design(
                    design.order(),
                    design.layout(),
                    new Scheme(design.scheme().kind(), hearth, bars),
                    design.making(),
                    design.rules());
        }

        private List<Fabric> allowed(Plan before, String bar, List<Fabric> wished) {
            Fabric own = byBar.get(bar);
            if (own == null) {
                return wished;
            }
            long parts = before.cloth().patches().stream()
                    .map(Patch::place)
                    .filter(place -> place instanceof Place.Bar one
                            ? one.bar().equals(bar)
                            : place.id().equals(bar))
                    .count();
            boolean whole = patches.getOrDefault(bar, List.of()).size() == parts;
            List<Fabric> allowed = new ArrayList<>(whole ? List.of() : wished);
            allowed.add(own);
            return allowed;
        }

        /** The plan with every patch in its real fabric again. */
        Plan undone(Plan found) {
            Map<String, Piece> pieces = new LinkedHashMap<>();
            stash.pieces().forEach(piece -> pieces.put(piece.id(), piece));
            Map<String, String> real = new LinkedHashMap<>();
            found.sources()
                    .forEach((patch, source) -> real.put(
                            patch,
                            Objects.requireNonNull(
                                            pieces.get(source.from().piece().id()))
                                    .fabric()
                                    .name()));
            Assembly work = found.cloth().work().fold(new Refabriced(real));
            List<PieceCut> cuts = found.cuts().stream()
                    .map(cut -> new PieceCut(
                            Objects.requireNonNull(pieces.get(cut.piece().id())), cut.tree()))
                    .toList();
            return new Plan(found.story(), new Cloth(work, found.cloth().making()), found.rules(), cuts, found.bound());
        }
    }

    private record Refabriced(Map<String, String> fabrics) implements Assembly.Fold<Assembly> {

        @Override
        public Assembly patch(Patch patch) {
            String fabric = fabrics.getOrDefault(patch.place().id(), patch.fabric());
            return new Patch(patch.place(), fabric, patch.size(), patch.showing());
        }

        @Override
        public Assembly seam(Seam seam, Assembly first, Assembly second) {
            return Seam.of(seam.join(), seam.wraps(), first, second);
        }
    }
}
