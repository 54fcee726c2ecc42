package hearthcloth.plan.rework;

import hearthcloth.cloth.Laid;
import hearthcloth.cloth.Rect;
import hearthcloth.measure.Length;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Ruler;
import hearthcloth.measure.Size;
import hearthcloth.plan.model.PieceCut;
import hearthcloth.plan.model.Plan;
import hearthcloth.stash.Piece;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeSet;

/** What a way on does, in sentences. */
final class WayWords {

    private WayWords() {}

    static String shortBy(Miscut miscut, Ruler ruler) {
        Size by = miscut.shortBy();
        List<String> sides = new ArrayList<>();
        if (by.width().isPositive()) {
            sides.add(ruler.write(by.width(), Rounding.NEAREST) + " across");
        }
        if (by.height().isPositive()) {
            sides.add(ruler.write(by.height(), Rounding.NEAREST) + " along");
        }
        return capital(named(miscut.bar())) + " is too small by " + String.join(" and ", sides) + ": it measures "
                + ruler.write(miscut.measured(), Rounding.DOWN) + ".";
    }

    /** Where the patch that was cut too small lies on its piece. */
    static Rect place(Miscut miscut, Piece piece) {
        Plan.Source source = Objects.requireNonNull(miscut.plan().sources().get(miscut.patch()));
        Rect at = source.kept().at();
        return source.from().piece().id().equals(piece.id())
                ? Rect.at(at.x(), at.y(), miscut.measured())
                : Rect.at(Length.ZERO, Length.ZERO, Size.square(Length.ZERO));
    }

    static List<String> told(WayOn.Kind kind, Miscut miscut, Plan plan, Ruler ruler) {
        List<String> told = new ArrayList<>();
        String size = ruler.write(plan.cloth().finished(), Rounding.NEAREST);
        told.add(
                switch (kind) {
                    case WIDER_NEIGHBOURS ->
                        "Use " + named(miscut.bar()) + " as it is, and cut " + changed(miscut.plan(), plan, ruler)
                                + "; the cloth stays " + size + ".";
                    case ANOTHER_PIECE ->
                        "Cut " + named(miscut.bar()) + " again, from " + from(miscut, plan, ruler) + ".";
                    case JOINED_STRIP ->
                        "Join a strip to " + named(miscut.bar()) + ", from " + from(miscut, plan, ruler) + ".";
                    case SMALLER_CLOTH -> "Use " + named(miscut.bar()) + " as it is; the cloth becomes " + size + ".";
                });
        told.addAll(otherFabrics(miscut.plan(), plan));
        return told;
    }

    /** Bars that are of another fabric than before, a sentence each. */
    static List<String> otherFabrics(Plan before, Plan after) {
        Map<String, String> fabrics = fabrics(before);
        List<String> told = new ArrayList<>();
        fabrics(after).forEach((bar, now) -> {
            String was = fabrics.get(bar);
            if (was != null && !was.equals(now)) {
                told.add(capital(named(bar)) + " is then of " + now + ", not of " + was + ".");
            }
        });
        return told;
    }

    private static String named(String bar) {
        return bar.equals("hearth") ? "the hearth" : "bar " + bar;
    }

    private static String capital(String words) {
        return words.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + words.substring(1);
    }

    /** The pieces that the bar's other patches are cut from. */
    private static String from(Miscut miscut, Plan plan, Ruler ruler) {
        List<String> pieces = plan.sources().entrySet().stream()
                .filter(one -> Miscut.bar(plan, one.getKey()).equals(miscut.bar()))
                .map(Map.Entry::getValue)
                .filter(one -> !one.kept().at().equals(place(miscut, one.from().piece())))
                .map(Plan.Source::from)
                .distinct()
                .map(cut -> piece(cut, ruler))
                .toList();
        return String.join(" and ", pieces);
    }

    private static String piece(PieceCut cut, Ruler ruler) {
        Piece piece = cut.piece();
        return "piece " + piece.id() + ", " + piece.fabric().name() + ", " + ruler.write(piece.size(), Rounding.DOWN);
    }

    /** {@code bars 1A and 1C 7¼ in wide}: every bar whose cut width differs. */
    private static String changed(Plan before, Plan after, Ruler ruler) {
        Map<String, Length> was = widths(before);
        Map<Length, List<String>> wider = new LinkedHashMap<>();
        widths(after).forEach((bar, width) -> {
            if (width.isMoreThan(was.getOrDefault(bar, width))) {
                wider.computeIfAbsent(width, none -> new ArrayList<>()).add(bar);
            }
        });
        List<String> all = new ArrayList<>();
        wider.forEach((width, bars) -> all.add((bars.size() == 1 ? "bar " : "bars ") + String.join(", ", bars) + " "
                + ruler.write(width, Rounding.UP) + " wide"));
        return String.join(" and ", all);
    }

    private static Map<String, Length> widths(Plan plan) {
        Map<String, Length> widths = new LinkedHashMap<>();
        for (Laid laid : plan.cloth().laid()) {
            if (laid.patch().place() instanceof hearthcloth.cloth.Place.Bar bar) {
                widths.put(
                        bar.bar(),
                        bar.side().isUpright() ? laid.cut().width() : laid.cut().height());
            }
        }
        return widths;
    }

    private static Map<String, String> fabrics(Plan plan) {
        Map<String, TreeSet<String>> fabrics = new LinkedHashMap<>();
        for (Laid laid : plan.cloth().laid()) {
            String bar = Miscut.bar(plan, laid.patch().place().id());
            fabrics.computeIfAbsent(bar, none -> new TreeSet<>())
                    .add(laid.patch().fabric());
        }
        Map<String, String> written = new LinkedHashMap<>();
        fabrics.forEach((bar, names) -> written.put(bar, String.join(" and ", names)));
        return written;
    }
}
