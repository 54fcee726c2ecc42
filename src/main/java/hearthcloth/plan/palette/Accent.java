package hearthcloth.plan.palette;

import hearthcloth.cloth.Place;
import hearthcloth.cloth.layout.Layout;
import hearthcloth.plan.colour.SchemeRule;
import hearthcloth.plan.parameter.ColourParameters;
import hearthcloth.stash.Fabric;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.IntPredicate;

/**
 * Where one bright scrap goes: the brightest fabric in one to three bars that take 3 to 8 hundredths of the cloth, on as
 * many sides and as far out as may be, since the outer rounds are what a tied gift shows. The shares are ours:
 * docs/sources.md#colour-figures.
 */
public final class Accent {

    private static final ColourParameters.Accent WANTED =
            ColourParameters.standard().choosing().accent();

    private final List<Layout.Slot> slots;
    private final IntPredicate able;
    private final double cloth;
    private List<Integer> best = List.of();

    private Accent(Layout layout, IntPredicate able) {
        this.slots = layout.slots();
        this.able = able;
        this.cloth = layout.finished().areaMm2();
    }

    /**
     * For each bar the fabrics it may be of; empty where none of the fabrics is bright or no bars are of that size.
     *
     * @param fabrics of all bars
     */
    public static Optional<List<List<Fabric>>> of(Layout layout, List<Fabric> fabrics) {
        return within(layout, Collections.nCopies(layout.slots().size(), fabrics));
    }

    /**
     * The same among the fabrics that each bar may be of already.
     *
     * @param allowed for each bar
     */
    public static Optional<List<List<Fabric>>> within(Layout layout, List<List<Fabric>> allowed) {
        Optional<Fabric> bright = allowed.stream()
                .flatMap(List::stream)
                .max(Comparator.comparingDouble(Accent::chroma))
                .filter(fabric -> chroma(fabric) >= SchemeRule.BRIGHT);
        if (bright.isEmpty()) {
            return Optional.empty();
        }
        Accent accent = new Accent(layout, bar -> allowed.get(bar).contains(bright.get()));
        accent.choose(new ArrayList<>(), 0);
        List<List<Fabric>> bars = new ArrayList<>();
        for (int bar = 0; bar < accent.slots.size(); bar++) {
            List<Fabric> others = allowed.get(bar).stream()
                    .filter(fabric -> !fabric.equals(bright.get()))
                    .toList();
            bars.add(accent.best.contains(bar) ? List.of(bright.get()) : others);
        }
        return accent.best.isEmpty() || bars.stream().anyMatch(List::isEmpty) ? Optional.empty() : Optional.of(bars);
    }

    private static double chroma(Fabric fabric) {
        return fabric.colour().lab().chroma();
    }

    /** Tries every one to three bars. */
    private void choose(List<Integer> bars, int from) {
        double share = bars.stream()
                        .mapToDouble(bar -> slots.get(bar).size().areaMm2())
                        .reduce(0, Double::sum)
                / cloth;
        if (share > WANTED.most()) {
            return;
        }
        if (share >= WANTED.least() && worth(bars) > worth(best)) {
            best = List.copyOf(bars);
        }
        for (int bar = from; bar < slots.size() && bars.size() < WANTED.places(); bar++) {
            if (able.test(bar)) {
                bars.add(bar);
                choose(bars, bar + 1);
                bars.remove(bars.size() - 1);
            }
        }
    }

    /** The sides it lies on count for more than how far out. */
    private int worth(List<Integer> bars) {
        List<Place.Bar> places =
                bars.stream().map(bar -> slots.get(bar).place()).toList();
        int sides = (int) places.stream().map(Place.Bar::side).distinct().count();
        int rounds = places.stream().mapToInt(Place.Bar::round).sum();
        return WANTED.side() * sides + rounds - WANTED.place() * places.size();
    }
}
