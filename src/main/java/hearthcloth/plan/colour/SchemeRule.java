package hearthcloth.plan.colour;

import hearthcloth.cloth.Cloth;
import hearthcloth.cloth.Patch;
import hearthcloth.cloth.Place;
import hearthcloth.cloth.Showing;
import hearthcloth.cloth.Side;
import hearthcloth.cloth.layout.Order;
import hearthcloth.colour.Colour;
import hearthcloth.colour.Lab;
import hearthcloth.plan.model.Scheme;
import hearthcloth.plan.parameter.ColourParameters;
import hearthcloth.stash.Fabric;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Predicate;

/**
 * Whether the name of a scheme is true of a finished cloth; otherwise it is not offered under that name. The thresholds
 * are ours: docs/sources.md#colour-figures.
 */
public final class SchemeRule {

    private static final ColourParameters.Names NAMES =
            ColourParameters.standard().names();

    /** The least points of L* between the darkest light and the lightest dark fabric. */
    public static final double LIGHT_AND_DARK = NAMES.lightAndDark();

    /** The least chroma of a bright fabric: C* of CIELAB. */
    public static final double BRIGHT = NAMES.bright();

    /** What the other face of a fabric is called here, beside its name; no name ends so. */
    private static final String OTHER_FACE = "\n";

    private final List<Patch> bars;
    private final Map<String, Fabric> fabrics = new LinkedHashMap<>();
    private final Cloth cloth;

    private SchemeRule(Cloth cloth, List<Fabric> fabrics) {
        this.cloth = cloth;
        for (Fabric fabric : fabrics) {
            this.fabrics.put(fabric.name(), fabric);
            Colour other = fabric.wrongSide();
            if (!other.equals(fabric.colour())) {
                String name = fabric.name() + OTHER_FACE;
                this.fabrics.put(name, new Fabric(name, other, fabric.faces(), fabric.nap()));
            }
        }
        this.bars = cloth.patches().stream()
                .filter(patch -> patch.place() instanceof Place.Bar)
                .map(this::shown)
                .toList();
    }

    /** A patch whose other face lies outside, where that has a colour of its own, as if of a fabric by itself. */
    private Patch shown(Patch patch) {
        Fabric fabric = fabrics.get(patch.fabric());
        boolean isTurned = patch.showing() == Showing.WRONG
                && fabric != null
                && !fabric.wrongSide().equals(fabric.colour());
        return isTurned ? new Patch(patch.place(), patch.fabric() + OTHER_FACE, patch.size(), patch.showing()) : patch;
    }

    public static boolean holds(Scheme.Kind kind, Cloth cloth, List<Fabric> fabrics) {
        SchemeRule rule = new SchemeRule(cloth, fabrics);
        ColourFigures figures = ColourFigures.of(cloth, fabrics);
        boolean isApart = figures.hearth().ownMm() == 0;
        return switch (kind) {
            case HALVES -> rule.isLightAndDark(SchemeRule::isLightSide);
            case TURNS -> rule.isLightAndDark(bar -> (bar.order() + bar.round()) % 2 == 0);
            case SPIRAL -> rule.isRound() && rule.isLightAndDark(SchemeRule::isLightArm) && isApart;
            case ROUNDS -> rule.rings().stream().allMatch(ring -> ring.size() == 1) && rule.ringsDiffer() && isApart;
            case FRAMES -> rule.rings().stream().allMatch(ring -> ring.size() == 1) && rule.ringsTakeTurns() && isApart;
            case GRADED -> rule.isGraded() && isApart;
            case FIELD -> rule.isField();
            case ACCENT -> rule.isAccent() && isApart;
            case SCATTERED -> rule.isScattered(figures);
            case ALL, FALLS, OUTWARDS, OWN -> true;
        };
    }

    public static boolean isLightSide(Place.Bar bar) {
        return bar.side() == Side.RIGHT || bar.side() == Side.BOTTOM;
    }

    /**
     * Whether a bar is of the light arm of a spiral: bars in sewing order take turns five at a time, so that each arm
     * begins one side farther round than the one inside it.
     */
    public static boolean isLightArm(Place.Bar bar) {
        int number = 4 * (bar.round() - 1) + bar.order();
        return number / NAMES.arm() % 2 == 0;
    }

    private static Place.Bar bar(Patch patch) {
        if (patch.place() instanceof Place.Bar bar) {
            return bar;
        }
        throw new IllegalArgumentException(patch.place().id() + " is no bar");
    }

    private double lightness(String fabric) {
        return lab(fabric).lightness();
    }

    private double chroma(String fabric) {
        return lab(fabric).chroma();
    }

    private Lab lab(String fabric) {
        Fabric found = fabrics.get(fabric);
        if (found == null) {
            throw new IllegalArgumentException("no fabric is called " + fabric);
        }
        return found.mean();
    }

    private boolean isLightAndDark(Predicate<Place.Bar> light) {
        double least = bars.stream()
                .filter(patch -> light.test(bar(patch)))
                .mapToDouble(patch -> lightness(patch.fabric()))
                .min()
                .orElse(0);
        double greatest = bars.stream()
                .filter(patch -> !light.test(bar(patch)))
                .mapToDouble(patch -> lightness(patch.fabric()))
                .max()
                .orElse(100);
        return least - greatest >= LIGHT_AND_DARK;
    }

    /** Whether the bars go round the hearth, each on the next side. */
    private boolean isRound() {
        return bars.stream().anyMatch(patch -> bar(patch).order() == 3)
                && bars.stream()
                        .map(SchemeRule::bar)
                        .allMatch(bar -> bar.order() < 4
                                && bar.side() == Order.ROUND.sides().get(bar.order()));
    }

    /** The fabrics of each round from the hearth outwards, each once. */
    private List<List<String>> rings() {
        Map<Integer, List<String>> rings = new TreeMap<>();
        for (Patch patch : bars) {
            List<String> ring = rings.computeIfAbsent(bar(patch).round(), round -> new ArrayList<>());
            if (!ring.contains(patch.fabric())) {
                ring.add(patch.fabric());
            }
        }
        return List.copyOf(rings.values());
    }

    private boolean ringsDiffer() {
        List<List<String>> rings = rings();
        for (int i = 1; i < rings.size(); i++) {
            if (rings.get(i).equals(rings.get(i - 1))) {
                return false;
            }
        }
        return rings.size() > 1;
    }

    private boolean ringsTakeTurns() {
        List<List<String>> rings = rings();
        for (int i = 2; i < rings.size(); i++) {
            if (!rings.get(i).equals(rings.get(i - 2))) {
                return false;
            }
        }
        return rings.size() > 1
                && Math.abs(lightness(rings.get(0).get(0))
                                - lightness(rings.get(1).get(0)))
                        >= LIGHT_AND_DARK;
    }

    private boolean isGraded() {
        List<List<String>> rings = rings();
        for (int i = 1; i < rings.size(); i++) {
            if (lightness(rings.get(i).get(0)) >= lightness(rings.get(i - 1).get(0))) {
                return false;
            }
        }
        return rings.size() > 1 && rings.stream().allMatch(ring -> ring.size() == 1);
    }

    private boolean isField() {
        List<String> all = bars.stream().map(Patch::fabric).distinct().toList();
        return all.size() == 1
                && cloth.patches().stream()
                        .filter(patch -> patch.place() instanceof Place.Hearth)
                        .map(this::shown)
                        .noneMatch(patch -> patch.fabric().equals(all.get(0)));
    }

    private boolean isScattered(ColourFigures figures) {
        return figures.mixedBars() == 0
                && figures.neighbours().same() <= NAMES.scattered()
                && figures.hearth().ownMm() == 0;
    }

    private boolean isAccent() {
        String brightest = bars.stream()
                .map(Patch::fabric)
                .max(Comparator.comparingDouble(this::chroma))
                .orElse("");
        if (brightest.isEmpty() || chroma(brightest) < BRIGHT) {
            return false;
        }
        List<Patch> accents =
                bars.stream().filter(patch -> patch.fabric().equals(brightest)).toList();
        double share =
                accents.stream().mapToDouble(patch -> patch.size().areaMm2()).reduce(0, Double::sum)
                        / cloth.finished().areaMm2();
        return accents.size() <= 3 && share >= NAMES.leastAccent() && share <= NAMES.mostAccent();
    }
}
