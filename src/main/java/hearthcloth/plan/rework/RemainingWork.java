package hearthcloth.plan.rework;

import hearthcloth.cloth.Cloth;
import hearthcloth.cloth.Laid;
import hearthcloth.cloth.Patch;
import hearthcloth.cloth.Place;
import hearthcloth.cloth.Showing;
import hearthcloth.cloth.layout.Layout;
import hearthcloth.measure.Length;
import hearthcloth.plan.model.Bound;
import hearthcloth.plan.model.CutTree;
import hearthcloth.plan.model.Design;
import hearthcloth.plan.model.PieceCut;
import hearthcloth.plan.model.Plan;
import hearthcloth.plan.model.Scheme;
import hearthcloth.stash.Fabric;
import hearthcloth.stash.Piece;
import hearthcloth.stash.Stash;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

/**
 * The part of a cloth that is not sewn yet, given to the search as a cloth of its own: the sewn work is its hearth, and
 * a bar that is used unchanged lies ready in one piece.
 */
final class RemainingWork {

    private final RemainingPlan resewing;
    private final Design after;
    private final Map<String, List<Length>> asTheyAre;
    private final List<Layout.Slot> slots;
    private final Map<String, Piece> freed = new LinkedHashMap<>();
    private final Map<String, Fabric> standIns = new LinkedHashMap<>();
    private final Set<String> aside;
    private final Optional<Strip> strip;
    private Design design;
    private int next;

    /**
     * A strip that is joined to the end of a bar.
     *
     * @param from the piece it is cut from, with its cuts
     * @param length finished
     */
    record Strip(String bar, PieceCut from, Length length) {}

    /**
     * Takes the bars apart.
     *
     * @param asTheyAre for each bar that is used as it was cut, the finished lengths of its parts
     * @param next the first number that is free for a new piece
     */
    RemainingWork(RemainingPlan resewing, Design after, Map<String, List<Length>> asTheyAre, int next) {
        this(resewing, after, asTheyAre, next, Set.of(), Optional.empty());
    }

    /** The same work with what is cut for the bars of {@code aside} left out of the search. */
    RemainingWork aside(Set<String> bars) {
        return new RemainingWork(resewing, after, asTheyAre, next, bars, strip);
    }

    /** The same work with a strip joined to a bar, whose own parts then show {@code shown}. */
    RemainingWork joined(Strip more, List<Length> shown) {
        Map<String, List<Length>> ready = new LinkedHashMap<>(asTheyAre);
        ready.put(more.bar(), shown);
        return new RemainingWork(resewing, after, ready, next, aside, Optional.of(more));
    }

    private RemainingWork(
            RemainingPlan resewing,
            Design after,
            Map<String, List<Length>> asTheyAre,
            int next,
            Set<String> aside,
            Optional<Strip> strip) {
        this.aside = aside;
        this.strip = strip;
        this.resewing = resewing;
        this.after = after;
        this.asTheyAre = asTheyAre;
        this.slots = after.layout().slots();
        this.next = next;
        this.design = after;
    }

    private int bars() {
        return resewing.bars();
    }

    Design design() {
        return design;
    }

    /** What the search may cut: the stash, patches of bars that are not used unchanged, and the ready bars. */
    Stash stash(Stash stash) {
        List<Piece> pieces = new ArrayList<>(stash.pieces());
        Map<String, Plan.Source> sources = resewing.before().sources();
        for (Layout.Slot slot : slots.subList(bars(), slots.size())) {
            if (asTheyAre.containsKey(slot.place().bar())) {
                continue;
            }
            for (Patch patch : resewing.parts(slot.place().bar())) {
                Plan.Source source =
                        Objects.requireNonNull(sources.get(patch.place().id()));
                Piece piece = source.from().piece().part(next, resewing.realSize(patch, source.kept()));
                next++;
                freed.put(patch.place().id(), piece);
                if (!aside.contains(slot.place().bar())) {
                    pieces.add(piece);
                }
            }
        }
        design = designed(new Stash(pieces));
        Cloth whole = design.whole();
        for (Laid laid : whole.laid()) {
            Fabric fabric = standIns.get(laid.patch().fabric());
            if (fabric != null) {
                pieces.add(new Piece(fabric.name(), fabric, laid.cut(), Piece.Washed.UNKNOWN, 0));
            }
        }
        return new Stash(pieces);
    }

    private Design designed(Stash stash) {
        Fabric work = standIn(RemainingPlan.WORK, stash);
        List<List<Fabric>> fabrics = new ArrayList<>();
        for (int i = bars(); i < slots.size(); i++) {
            String bar = slots.get(i).place().bar();
            fabrics.add(
                    asTheyAre.containsKey(bar)
                            ? List.of(standIn("as-cut " + bar, stash))
                            : after.scheme().bars().get(i));
        }
        Layout sewn =
                new Layout(after.layout().hearth(), after.layout().courses().subList(0, bars()));
        return new Design(
                after.order(),
                new Layout(sewn.finished(), after.layout().courses().subList(bars(), slots.size())),
                new Scheme(Scheme.Kind.OWN, List.of(work), fabrics),
                after.making(),
                after.rules());
    }

    private Fabric standIn(String name, Stash stash) {
        Fabric fabric = RemainingPlan.standIn(name, stash);
        standIns.put(fabric.name(), fabric);
        return fabric;
    }

    /** The whole cloth again, with the bars that {@code found} cuts anew. */
    RemainingPlan.Resewn composed(Plan found) {
        Map<String, String> names = new LinkedHashMap<>();
        List<List<Layout.Part>> parts = parts(found, names);
        Patch hearth = resewing.parts("hearth").get(0);
        Cloth cloth = new Cloth(after.layout().sewn(hearth.fabric(), hearth.showing(), parts), after.making());
        List<PieceCut> cuts = new ArrayList<>();
        strip.ifPresent(one -> cuts.add(one.from()));
        found.cuts().stream()
                .filter(cut -> !standIns.containsKey(cut.piece().fabric().name()))
                .map(cut -> new PieceCut(cut.piece(), renamed(cut.tree(), names)))
                .forEach(cuts::add);
        List<Layout.Slot> left = slots.subList(bars(), slots.size());
        PastCuts past = new PastCuts(resewing, left, asTheyAre.keySet(), strip.map(Strip::bar));
        List<PieceCut> all = new ArrayList<>(past.stillIn(cloth, cuts));
        all.addAll(cuts);
        Bound bound = new Bound(found.bound().joins() + joinsMore(cloth, found), 0);
        Plan before = resewing.before();
        Plan plan = new Plan(before.story(), cloth, before.rules(), all, bound).checked();
        return new RemainingPlan.Resewn(plan, cuts, List.copyOf(freed.values()));
    }

    /** The parts of every bar: sewn, as they are, or as they were found anew. */
    private List<List<Layout.Part>> parts(Plan found, Map<String, String> names) {
        List<List<Layout.Part>> parts = new ArrayList<>();
        List<Layout.Slot> foundSlots = design.layout().slots();
        for (int i = 0; i < slots.size(); i++) {
            Place.Bar place = slots.get(i).place();
            List<Length> kept = asTheyAre.get(place.bar());
            if (i < bars()) {
                parts.add(resewing.sewn(slots.get(i)));
            } else if (kept != null) {
                parts.add(withStrip(place, resewing.kept(place.bar(), kept)));
            } else {
                parts.add(anew(found, foundSlots.get(i - bars()).place(), place, names));
            }
        }
        return parts;
    }

    /** How many joins the whole has that were not looked for; the strip is her choice, not what the fabric asks for. */
    private int joinsMore(Cloth cloth, Plan found) {
        long joined = cloth.steps().stream()
                .filter(step -> step.joinedBar().isPresent())
                .count();
        return (int) joined - found.figures().joins() - (strip.isPresent() ? 1 : 0);
    }

    /** The parts that {@code found} has for a bar, and the names of its patches in the whole cloth. */
    private static List<Layout.Part> anew(Plan found, Place.Bar there, Place.Bar here, Map<String, String> names) {
        List<Layout.Part> parts = new ArrayList<>();
        for (Patch patch : found.cloth().patches()) {
            if (patch.place() instanceof Place.Bar bar && bar.bar().equals(there.bar())) {
                Length along = here.side().isUpright()
                        ? patch.size().height()
                        : patch.size().width();
                parts.add(new Layout.Part(patch.fabric(), patch.showing(), along));
                names.put(patch.place().id(), here.part(bar.part()).id());
            }
        }
        return parts;
    }

    private List<Layout.Part> withStrip(Place.Bar place, List<Layout.Part> parts) {
        if (strip.filter(one -> one.bar().equals(place.bar())).isEmpty()) {
            return parts;
        }
        Fabric fabric = strip.get().from().piece().fabric();
        List<Layout.Part> more = new ArrayList<>(parts);
        more.add(new Layout.Part(
                fabric.name(), showing(fabric, parts), strip.get().length()));
        return more;
    }

    /** A fabric of which either face may lie outside lies as in the rest of its bar. */
    private static Showing showing(Fabric fabric, List<Layout.Part> parts) {
        return parts.stream()
                .filter(part -> fabric.isTurnable() && part.fabric().equals(fabric.name()))
                .map(Layout.Part::showing)
                .findFirst()
                .orElse(Design.showing(fabric));
    }

    private static CutTree renamed(CutTree tree, Map<String, String> names) {
        if (tree instanceof CutTree.Parted cut) {
            return CutTree.parted(
                    cut.at(), cut.upright(), cut.line(), renamed(cut.first(), names), renamed(cut.second(), names));
        }
        return tree instanceof CutTree.Kept kept
                ? new CutTree.Kept(kept.at(), Objects.requireNonNull(names.get(kept.patch())), kept.turned())
                : tree;
    }
}
