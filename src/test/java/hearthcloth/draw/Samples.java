package hearthcloth.draw;

import hearthcloth.cloth.Cloth;
import hearthcloth.cloth.Laid;
import hearthcloth.cloth.RandomCloths;
import hearthcloth.cloth.Rect;
import hearthcloth.cloth.Showing;
import hearthcloth.cloth.layout.Layout;
import hearthcloth.cloth.layout.Order;
import hearthcloth.cloth.making.Face;
import hearthcloth.cloth.making.Hem;
import hearthcloth.cloth.making.Making;
import hearthcloth.colour.Colour;
import hearthcloth.measure.Length;
import hearthcloth.measure.Size;
import hearthcloth.plan.model.Bound;
import hearthcloth.plan.model.CutTree;
import hearthcloth.plan.model.PieceCut;
import hearthcloth.plan.model.PiecingRules;
import hearthcloth.plan.model.Plan;
import hearthcloth.stash.Fabric;
import hearthcloth.stash.Piece;
import hearthcloth.words.sentence.Told;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;

/** Plans made by hand: any cloth, its patches cut in lanes from one piece a fabric. */
final class Samples {

    static final String HOSTILE = "<script>alert('x')</script> & \"Ω\" \u202egnol \ud83d\udc55 כחול \u0007\ud800 name";

    private Samples() {}

    /** A hearth and one round, one bar of it joined of two parts; fells on the back. */
    static Plan small() {
        Making making = Making.inches();
        Layout layout = new Layout(
                Size.square(Length.inches(6)),
                Layout.finishedOfCut(Layout.courses(Order.ROUND, 1, List.of(Length.inches(4))), making));
        List<List<Layout.Part>> bars = new ArrayList<>();
        for (Layout.Slot slot : layout.slots()) {
            if (slot.place().bar().equals("1D")) {
                Length first = Length.inches(5);
                bars.add(List.of(
                        new Layout.Part("Kelp", Showing.RIGHT, first),
                        new Layout.Part("Kelp", Showing.WRONG, slot.length().minus(first))));
            } else {
                bars.add(List.of(new Layout.Part("Kelp", Showing.RIGHT, slot.length())));
            }
        }
        Cloth cloth = new Cloth(layout.sewn("Oat", Showing.SAME, bars), making);
        return of(
                cloth,
                Map.of(
                        "Oat", Colour.of(0xd9c7a0),
                        "Kelp", Colour.of(0x3f5d52)),
                "Small");
    }

    /** {@code rounds} rounds, every bar of many parts, in metric, names that mean harm, mitred, fells on the front. */
    static Plan large(int rounds, int parts) {
        Making making = Making.metric()
                .withHem(new Hem(Length.mm(5), Length.mm(10), Hem.Corner.MITRED))
                .felledOn(Face.FRONT);
        Layout layout =
                new Layout(Size.square(Length.cm(12)), Layout.courses(Order.ROUND, rounds, List.of(Length.cm(5))));
        List<List<Layout.Part>> bars = new ArrayList<>();
        String[] fabrics = {HOSTILE, "Leintuch", "Rot", "Blau"};
        for (Layout.Slot slot : layout.slots()) {
            List<Layout.Part> bar = new ArrayList<>();
            Length each = new Length(slot.length().nm() / parts / 1_000_000 * 1_000_000);
            for (int i = 0; i < parts; i++) {
                Length length = i < parts - 1 ? each : slot.length().minus(each.times(parts - 1L));
                bar.add(new Layout.Part(
                        fabrics[(bars.size() + i) % fabrics.length],
                        i % 2 == 0 ? Showing.RIGHT : Showing.SAME,
                        length));
            }
            bars.add(bar);
        }
        Cloth cloth = new Cloth(layout.sewn(HOSTILE, Showing.RIGHT, bars), making);
        return of(cloth, colours(cloth, 5), HOSTILE);
    }

    /** A cloth by chance, fabrics of colours by chance. */
    static Plan random(long seed) {
        Cloth cloth = RandomCloths.of(seed);
        return of(cloth, colours(cloth, seed), "Cloth " + seed);
    }

    private static Map<String, Colour> colours(Cloth cloth, long seed) {
        Random random = new Random(seed);
        Map<String, Colour> colours = new LinkedHashMap<>();
        cloth.patches()
                .forEach(patch -> colours.computeIfAbsent(patch.fabric(), name -> Colour.of(random.nextInt(1 << 24))));
        return colours;
    }

    private static Plan of(Cloth cloth, Map<String, Colour> colours, String title) {
        Map<String, List<Laid>> byFabric = new LinkedHashMap<>();
        cloth.laid()
                .forEach(laid -> byFabric.computeIfAbsent(laid.patch().fabric(), key -> new ArrayList<>())
                        .add(laid));
        List<PieceCut> cuts = new ArrayList<>();
        byFabric.forEach((name, patches) -> {
            Colour colour = colours.getOrDefault(name, Colour.of(0x808080));
            Fabric fabric = new Fabric(name, colour, Fabric.Faces.RIGHT, Fabric.Nap.ANY);
            cuts.add(cut(fabric, patches, cuts.size() + 2));
        });
        Plan.Story story = Told.story(title, "Cut in lanes.", Told.all("The order."), Told.all("Nothing."));
        return new Plan(story, cloth, PiecingRules.inches(), cuts, new Bound(0, 0));
    }

    private static PieceCut cut(Fabric fabric, List<Laid> patches, int row) {
        Length widest = patches.stream().map(laid -> laid.cut().width()).reduce(Length.ZERO, Length::max);
        Length width = widest.max(Length.inches(20)).plus(Length.inches(1, 2));
        List<List<Laid>> lanes = new ArrayList<>(List.of(new ArrayList<>()));
        Length left = width;
        for (Laid laid : patches) {
            if (laid.cut().width().isMoreThan(left)) {
                lanes.add(new ArrayList<>());
                left = width;
            }
            lanes.get(lanes.size() - 1).add(laid);
            left = left.minus(laid.cut().width());
        }
        Length height = lanes.stream().map(Samples::tallest).reduce(Length.inches(3), Length::plus);
        Size size = new Size(width, height);
        Piece piece = new Piece(String.valueOf(row), fabric, size, Piece.Washed.UNKNOWN, row);
        return new PieceCut(piece, lanes(lanes, Rect.at(Length.ZERO, Length.ZERO, size)));
    }

    private static Length tallest(List<Laid> lane) {
        return lane.stream().map(laid -> laid.cut().height()).reduce(Length.ZERO, Length::max);
    }

    private static CutTree lanes(List<List<Laid>> lanes, Rect at) {
        if (lanes.isEmpty()) {
            return new CutTree.Left(at);
        }
        Length tall = tallest(lanes.get(0));
        Rect lane = Rect.at(at.x(), at.y(), new Size(at.width(), tall));
        Rect rest =
                Rect.at(at.x(), lane.bottom(), new Size(at.width(), at.height().minus(tall)));
        return CutTree.parted(
                at, false, lane.bottom(), lane(lanes.get(0), lane), lanes(lanes.subList(1, lanes.size()), rest));
    }

    private static CutTree lane(List<Laid> patches, Rect at) {
        if (patches.isEmpty()) {
            return new CutTree.Left(at);
        }
        Size cut = patches.get(0).cut();
        Rect first = Rect.at(at.x(), at.y(), new Size(cut.width(), at.height()));
        Rect rest = Rect.at(first.right(), at.y(), new Size(at.width().minus(cut.width()), at.height()));
        CutTree patch = new CutTree.Kept(
                Rect.at(at.x(), at.y(), cut), patches.get(0).patch().place().id(), false);
        if (cut.height().isLessThan(at.height())) {
            Rect below = Rect.at(
                    at.x(),
                    at.y().plus(cut.height()),
                    new Size(cut.width(), at.height().minus(cut.height())));
            patch = CutTree.parted(first, false, below.y(), patch, new CutTree.Left(below));
        }
        if (!rest.width().isPositive()) {
            return patch;
        }
        return CutTree.parted(at, true, first.right(), patch, lane(patches.subList(1, patches.size()), rest));
    }
}
