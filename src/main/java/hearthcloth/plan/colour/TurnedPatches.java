package hearthcloth.plan.colour;

import hearthcloth.cloth.Cloth;
import hearthcloth.cloth.Laid;
import hearthcloth.cloth.Place;
import hearthcloth.plan.fit.CutAnswer;
import hearthcloth.stash.Fabric;
import hearthcloth.stash.Piece;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Which face of each patch lies outside, where its fabric has two faces of different colours and no right side. Nothing is cut
 * otherwise for it. The same problem as which fabric a bar is of ({@link BarColours}), with two fabrics for each bar; then
 * single patches, bars and fabrics are turned until no turn helps, which counts bars of two faces too.
 */
public final class TurnedPatches {

    private static final long SEED = 1;

    private final CutAnswer answer;
    private final ColourGoal goal;
    private final List<Fabric> fabrics;
    private final List<Laid> laid;
    private final Set<String> turnable = new LinkedHashSet<>();

    private TurnedPatches(CutAnswer answer, List<Fabric> fabrics, ColourGoal goal) {
        this.answer = answer;
        this.goal = goal;
        this.fabrics = fabrics;
        this.laid = answer.cloth().laid();
        fabrics.stream().filter(Fabric::isTurnable).map(Fabric::name).forEach(turnable::add);
    }

    /** The answer with its patches turned so that its colours lie best, as far as that is found. */
    public static CutAnswer of(CutAnswer answer, ColourGoal goal) {
        List<Fabric> fabrics =
                answer.used().stream().map(Piece::fabric).distinct().toList();
        return fabrics.stream().anyMatch(Fabric::isTurnable) ? new TurnedPatches(answer, fabrics, goal).best() : answer;
    }

    private CutAnswer best() {
        List<Set<String>> ways = new ArrayList<>(List.of(answer.turned()));
        ways.add(solved(false));
        if (turnable.contains(laid.get(hearth()).patch().fabric())) {
            ways.add(solved(true));
        }
        Set<String> best = Set.of();
        double least = Double.POSITIVE_INFINITY;
        for (Set<String> way : ways) {
            double amiss = amissMm(way);
            if (amiss < least - 1e-9) {
                least = amiss;
                best = way;
            }
        }
        return answer.turned(descended(best, least));
    }

    private double amissMm(Set<String> turned) {
        Cloth cloth = answer.turned(turned).cloth();
        return goal.amissMm(cloth, fabrics);
    }

    private int hearth() {
        int at = 0;
        while (!(laid.get(at).patch().place() instanceof Place.Hearth)) {
            at++;
        }
        return at;
    }

    /**
     * The best way of turning all bars but the hearth; parts of one bar and fabric are turned together, and that a bar of several
     * fabrics is amiss is not counted.
     */
    private Set<String> solved(boolean isHearthTurned) {
        FabricDifferences differences = new FabricDifferences(fabrics);
        Laid hearth = laid.get(hearth());
        List<List<Laid>> bars = bars(hearth);
        int centre = differences.number(hearth.patch().fabric()) + (isHearthTurned ? fabrics.size() : 0);
        BarColouring problem = problem(differences, ColourFigures.tile(0, centre, hearth.at()), bars);
        BarColours.Found found =
                BarColours.of(problem, goal.parameters().search().turned(), SEED);
        Set<String> turned = new LinkedHashSet<>();
        for (int bar = 0; found.isFound() && bar < bars.size(); bar++) {
            if (found.chosen(bar) >= fabrics.size()) {
                bars.get(bar).forEach(part -> turned.add(id(part)));
            }
        }
        if (isHearthTurned) {
            turned.add(id(hearth));
        }
        return turned;
    }

    /** The parts of each bar and fabric. */
    private List<List<Laid>> bars(Laid hearth) {
        Map<String, List<Laid>> bars = new LinkedHashMap<>();
        for (Laid one : laid) {
            if (!one.equals(hearth)) {
                bars.computeIfAbsent(bar(one) + " " + one.patch().fabric(), name -> new ArrayList<>())
                        .add(one);
            }
        }
        return List.copyOf(bars.values());
    }

    /** Two numbers for each fabric, its faces; a bar may be of its own alone, of which there is always enough. */
    private BarColouring problem(FabricDifferences differences, Tile hearth, List<List<Laid>> bars) {
        int count = fabrics.size();
        List<Tile> tiles = new ArrayList<>();
        double[][] before = new double[bars.size()][2 * count];
        for (int bar = 0; bar < before.length; bar++) {
            int number = bar + 1;
            List<Laid> parts = bars.get(bar);
            tiles.add(parts.stream()
                    .map(part -> ColourFigures.tile(number, 0, part.at()))
                    .reduce(Tile::around)
                    .orElseThrow());
            String name = parts.get(0).patch().fabric();
            int fabric = differences.number(name);
            Arrays.fill(before[bar], Double.POSITIVE_INFINITY);
            before[bar][fabric] = 0;
            before[bar][count + fabric] = turnable.contains(name) ? 0 : Double.POSITIVE_INFINITY;
        }
        int[] numbers = new int[2 * count];
        Arrays.setAll(numbers, number -> number);
        double[] room = new double[2 * count];
        Arrays.fill(room, Double.MAX_VALUE);
        EdgeBill bill = goal.bill(differences, answer.cloth().finished());
        return new BarColouring(hearth, tiles, bill, numbers, before, room);
    }

    private static String id(Laid laid) {
        return laid.patch().place().id();
    }

    private static String bar(Laid laid) {
        return laid.patch().place() instanceof Place.Bar one ? one.bar() : id(laid);
    }

    /** Takes every turn that helps, again and again, until none does. */
    private Set<String> descended(Set<String> from, double amiss) {
        Set<String> best = from;
        double least = amiss;
        boolean isBetter = true;
        while (isBetter) {
            isBetter = false;
            for (Set<String> turn : turns()) {
                Set<String> other = new LinkedHashSet<>(best);
                turn.stream().filter(id -> !other.remove(id)).forEach(other::add);
                double then = amissMm(other);
                if (then < least - 1e-9) {
                    least = then;
                    best = other;
                    isBetter = true;
                }
            }
        }
        return best;
    }

    /** What is turned at once: all of a fabric, all parts of one bar, one patch. */
    private List<Set<String>> turns() {
        Map<String, Set<String>> turns = new LinkedHashMap<>();
        for (Laid one : laid) {
            String fabric = one.patch().fabric();
            if (turnable.contains(fabric)) {
                for (String name : List.of("fabric " + fabric, "bar " + bar(one), "patch " + id(one))) {
                    turns.computeIfAbsent(name, each -> new LinkedHashSet<>()).add(id(one));
                }
            }
        }
        return turns.values().stream().distinct().toList();
    }
}
