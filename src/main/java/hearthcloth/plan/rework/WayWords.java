package hearthcloth.plan.rework;

import hearthcloth.cloth.Laid;
import hearthcloth.cloth.Rect;
import hearthcloth.measure.Length;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Size;
import hearthcloth.plan.model.Plan;
import hearthcloth.stash.Piece;
import hearthcloth.words.sentence.Argument;
import hearthcloth.words.sentence.MendingSentences;
import hearthcloth.words.sentence.Sentence;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeSet;

/** What a way on does, in sentences. */
final class WayWords {

    private WayWords() {}

    static Sentence shortBy(Miscut miscut) {
        Size by = miscut.shortBy();
        List<Sentence> sides = new ArrayList<>();
        if (by.width().isPositive()) {
            sides.add(MendingSentences.smallAcross(Argument.of(by.width(), Rounding.NEAREST)));
        }
        if (by.height().isPositive()) {
            sides.add(MendingSentences.smallAlong(Argument.of(by.height(), Rounding.NEAREST)));
        }
        return MendingSentences.small(
                Argument.row(Argument.Joined.AND, sides),
                Argument.of(miscut.measured(), Rounding.DOWN),
                Argument.capital(named(miscut.bar())));
    }

    /** Where the patch that was cut too small lies on its piece. */
    static Rect place(Miscut miscut, Piece piece) {
        Plan.Source source = Objects.requireNonNull(miscut.plan().sources().get(miscut.patch()));
        Rect at = source.kept().at();
        return source.from().piece().id().equals(piece.id())
                ? Rect.at(at.x(), at.y(), miscut.measured())
                : Rect.at(Length.ZERO, Length.ZERO, Size.square(Length.ZERO));
    }

    static List<Sentence> told(WayOn.Kind kind, Miscut miscut, Plan plan) {
        List<Sentence> told = new ArrayList<>();
        Sentence bar = named(miscut.bar());
        Argument size = Argument.of(plan.cloth().finished(), Rounding.NEAREST);
        told.add(
                switch (kind) {
                    case WIDER_NEIGHBOURS -> MendingSentences.wayWider(changed(miscut.plan(), plan), size, bar);
                    case ANOTHER_PIECE -> MendingSentences.wayAgain(from(miscut, plan), bar);
                    case JOINED_STRIP -> MendingSentences.wayStrip(from(miscut, plan), bar);
                    case SMALLER_CLOTH -> MendingSentences.waySmaller(size, bar);
                });
        told.addAll(otherFabrics(miscut.plan(), plan));
        return told;
    }

    /** Bars that are of another fabric than before, a sentence each. */
    static List<Sentence> otherFabrics(Plan before, Plan after) {
        Map<String, List<String>> fabrics = fabrics(before);
        List<Sentence> told = new ArrayList<>();
        fabrics(after).forEach((bar, now) -> {
            List<String> was = fabrics.get(bar);
            if (was != null && !was.equals(now)) {
                told.add(MendingSentences.wayFabric(fabrics(now), fabrics(was), Argument.capital(named(bar))));
            }
        });
        return told;
    }

    private static Sentence named(String bar) {
        return bar.equals("hearth") ? MendingSentences.hearth() : MendingSentences.bar(Argument.text(bar));
    }

    private static Argument fabrics(List<String> names) {
        return Argument.names(Argument.Joined.AND, names);
    }

    /** The pieces that the bar's other patches are cut from. */
    private static Argument from(Miscut miscut, Plan plan) {
        List<Sentence> pieces = plan.sources().entrySet().stream()
                .filter(one -> Miscut.bar(plan, one.getKey()).equals(miscut.bar()))
                .map(Map.Entry::getValue)
                .filter(one -> !one.kept().at().equals(place(miscut, one.from().piece())))
                .map(Plan.Source::from)
                .distinct()
                .map(cut -> piece(cut.piece()))
                .toList();
        return Argument.row(Argument.Joined.AND, pieces);
    }

    static Sentence piece(Piece piece) {
        return MendingSentences.piece(
                Argument.text(piece.fabric().name()),
                Argument.text(piece.id()),
                Argument.of(piece.size(), Rounding.DOWN));
    }

    /** {@code bars 1A and 1C 7¼ in wide}: every bar whose cut width differs. */
    private static Argument changed(Plan before, Plan after) {
        Map<String, Length> was = widths(before);
        Map<Length, List<String>> wider = new LinkedHashMap<>();
        widths(after).forEach((bar, width) -> {
            if (width.isMoreThan(was.getOrDefault(bar, width))) {
                wider.computeIfAbsent(width, none -> new ArrayList<>()).add(bar);
            }
        });
        List<Sentence> all = new ArrayList<>();
        wider.forEach((width, bars) -> all.add(MendingSentences.wayBars(
                Argument.names(Argument.Joined.COMMAS, bars), bars.size(), Argument.of(width, Rounding.UP))));
        return Argument.row(Argument.Joined.AND, all);
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

    private static Map<String, List<String>> fabrics(Plan plan) {
        Map<String, TreeSet<String>> fabrics = new LinkedHashMap<>();
        for (Laid laid : plan.cloth().laid()) {
            String bar = Miscut.bar(plan, laid.patch().place().id());
            fabrics.computeIfAbsent(bar, none -> new TreeSet<>())
                    .add(laid.patch().fabric());
        }
        Map<String, List<String>> written = new LinkedHashMap<>();
        fabrics.forEach((bar, names) -> written.put(bar, List.copyOf(names)));
        return written;
    }
}
