package hearthcloth.cutstock.piecing.cabin;

import hearthcloth.cutstock.piecing.cabin.Cabin.Edge;
import hearthcloth.cutstock.piecing.cabin.Cabin.Log;
import hearthcloth.cutstock.piecing.cabin.Cabin.Tone;
import hearthcloth.cutstock.piecing.parameter.CabinParameters;
import hearthcloth.cutstock.piecing.tree.Joint;
import hearthcloth.cutstock.piecing.tree.Pieced;
import hearthcloth.cutstock.piecing.tree.ScrapPatch;
import hearthcloth.number.Elementary;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.Collectors;

/**
 * One trial at all blocks: from the rim of each block inwards a bar is cut where least is lost, with some chance, as wide as
 * its scrap where that is not too wide; what is left in the middle is the hearth.
 */
final class CabinTrial {

    private final CabinParameters parameters = CabinParameters.standard();
    private final CabinJob job;
    private final CabinJob.Rules rules;
    private final Offcuts offcuts;
    private final SplittableRandom chance;
    private double cost;

    CabinTrial(CabinJob job, SplittableRandom chance) {
        this.job = job;
        this.rules = job.rules();
        this.offcuts = new Offcuts(job, parameters.patches());
        this.chance = chance;
    }

    /** The blocks in their order; empty where one could not be made. */
    Optional<List<Pieced>> blocks() {
        List<Integer> order = new ArrayList<>();
        for (int i = 0; i < job.cabins().size(); i++) {
            order.add(i);
        }
        Collections.shuffle(order, new java.util.Random(chance.nextLong()));
        Pieced[] made = new Pieced[order.size()];
        for (int i : order) {
            Optional<Pieced> block = block(job.cabins().get(i));
            if (block.isEmpty()) {
                return Optional.empty();
            }
            made[i] = block.get();
        }
        return Optional.of(List.of(made));
    }

    /** What the trial costs: area lost, joins and uneven bars. */
    double cost() {
        return cost + offcuts.lost();
    }

    private Optional<Pieced> block(Cabin cabin) {
        long width = cabin.width();
        long height = cabin.height();
        List<Pieced> bars = new ArrayList<>();
        for (int i = cabin.bars().size() - 1; i >= 0; i--) {
            Edge edge = cabin.bars().get(i).edge();
            Wanted wanted = wanted(cabin, i, width, height, fabrics(bars));
            Optional<Bar> bar = wanted.most < rules.least() ? Optional.empty() : bar(wanted);
            if (bar.isEmpty()) {
                return Optional.empty();
            }
            bars.add(bar.get().tree);
            width -= edge.upright() ? bar.get().breadth : 0;
            height -= edge.upright() ? 0 : bar.get().breadth;
        }
        return hearth(width, height, fabrics(bars)).map(hearth -> joined(cabin.bars(), hearth, bars));
    }

    /** The fabrics of the bars found last: what is found next lies against these. */
    private Set<Integer> fabrics(List<Pieced> bars) {
        return bars.subList(Math.max(0, bars.size() - Edge.values().length), bars.size()).stream()
                .flatMap(Pieced::patches)
                .map(patch -> fabric(patch.scrap()))
                .collect(Collectors.toSet());
    }

    private int fabric(int scrap) {
        return job.scraps().get(scrap).fabric();
    }

    /** The hearth and its bars, which were found from the outermost inwards. */
    private static Pieced joined(List<Log> logs, Pieced hearth, List<Pieced> bars) {
        Pieced work = hearth;
        for (int i = 0; i < logs.size(); i++) {
            Edge edge = logs.get(i).edge();
            Pieced bar = bars.get(logs.size() - 1 - i);
            boolean after = edge == Edge.RIGHT || edge == Edge.BOTTOM;
            work = after ? new Joint(edge.upright(), work, bar) : new Joint(edge.upright(), bar, work);
        }
        return work;
    }

    /**
     * A bar that is wanted, net.
     *
     * @param usual as broad as if all were alike
     * @param most as broad as it may be
     * @param beside the fabrics it lies against
     */
    private record Wanted(Log log, long length, long usual, long most, Set<Integer> beside) {}

    private Wanted wanted(Cabin cabin, int bar, long width, long height, Set<Integer> beside) {
        Log log = cabin.bars().get(bar);
        boolean upright = log.edge().upright();
        long across = upright ? width : height;
        long left = cabin.bars().subList(0, bar + 1).stream()
                .filter(other -> other.edge().upright() == upright)
                .count();
        long usual = Math.max(
                rules.least(), Math.round(across / (left + parameters.bars().hearth())));
        long most = Math.min(usual + usual / parameters.bars().broader(), across - left * rules.least());
        return new Wanted(log, upright ? height : width, Math.min(usual, most), most, beside);
    }

    private record Bar(Pieced tree, long breadth) {}

    /** One way to cut something from a part. */
    private record Way(Offcuts.Part part, boolean turned, long breadth, double cost) {}

    private Optional<Bar> bar(Wanted wanted) {
        List<Way> ways = ways(wanted, wanted.length, wanted.length);
        if (ways.isEmpty()) {
            return joinedBar(wanted);
        }
        Way way = oneOf(ways);
        cost += way.cost;
        return Optional.of(new Bar(cut(way, wanted.log, wanted.length), way.breadth));
    }

    private Way oneOf(List<Way> ways) {
        ways.sort(java.util.Comparator.comparingDouble(Way::cost));
        int first = (int) (-parameters.lot() * Elementary.log(1 - chance.nextDouble()));
        return ways.get(Math.min(first, ways.size() - 1));
    }

    /** Ways to cut a bar of at least {@code shortest} and at most {@code longest}. */
    private List<Way> ways(Wanted wanted, long shortest, long longest) {
        List<Way> ways = new ArrayList<>();
        for (Offcuts.Part part : offcuts.parts()) {
            if (!offcuts.open(part) || !suits(part, wanted.log.tone())) {
                continue;
            }
            for (boolean turned : offcuts.turnable(part) ? new boolean[] {false, true} : new boolean[] {false}) {
                boolean lengthwise = wanted.log.edge().upright() != turned;
                long along = (lengthwise ? part.height() : part.width()) - rules.seam();
                long across = (lengthwise ? part.width() : part.height()) - rules.seam();
                if (along >= shortest && across >= rules.least()) {
                    long breadth = breadth(wanted, across);
                    long length = Math.min(along, longest);
                    ways.add(new Way(part, turned, breadth, costOf(part, lengthwise, breadth, length, wanted)));
                }
            }
        }
        return ways;
    }

    private double costOf(Offcuts.Part part, boolean lengthwise, long breadth, long length, Wanted wanted) {
        long across = breadth + rules.seam();
        long along = length + rules.seam();
        long lost = lengthwise ? offcuts.lostBy(part, across, along) : offcuts.lostBy(part, along, across);
        return lost
                + parameters.costs().uneven() * Math.abs(breadth - wanted.usual) * wanted.length
                + alike(part, wanted.beside, (double) breadth * length);
    }

    /** What it costs that a patch of this area lies against its own fabric. */
    private double alike(Offcuts.Part part, Set<Integer> beside, double area) {
        return beside.contains(fabric(part.scrap())) ? parameters.costs().alike() * area : 0;
    }

    /** As broad as the scrap is, where that is not too broad and leaves nothing that could go back. */
    private long breadth(Wanted wanted, long across) {
        if (across <= wanted.most) {
            return across;
        }
        long rest = across - wanted.usual;
        return rest < rules.keep() && across - rest >= rules.least() ? Math.min(across, wanted.most) : wanted.usual;
    }

    private boolean suits(Offcuts.Part part, Tone tone) {
        return tone == Tone.ANY || job.tones().get(part.scrap()) == tone;
    }

    /** A bar of two or three parts end to end. */
    private Optional<Bar> joinedBar(Wanted wanted) {
        long left = wanted.length;
        long breadth = wanted.usual;
        List<Pieced> parts = new ArrayList<>();
        while (left > 0 && parts.size() < parameters.bars().parts()) {
            long rest = left;
            long wide = breadth;
            List<Way> ways = new ArrayList<>(ways(wanted, 2 * rules.least(), left).stream()
                    .filter(way -> parts.isEmpty() || across(way, wanted.log) >= wide)
                    .toList());
            ways.sort(java.util.Comparator.comparingDouble(
                    way -> way.cost - parameters.costs().join() * Math.min(rest, along(way, wanted.log))));
            if (ways.isEmpty()) {
                return Optional.empty();
            }
            Way way = ways.get(Math.min(chance.nextInt(3), ways.size() - 1));
            breadth = parts.isEmpty() ? way.breadth : breadth;
            long length = Math.min(along(way, wanted.log), left);
            length = left - length > 0 && left - length < rules.least() ? left - rules.least() : length;
            if (length < rules.least()) {
                return Optional.empty();
            }
            cost += parameters.costs().join() * rules.seam();
            parts.add(cut(new Way(way.part, way.turned, breadth, way.cost), wanted.log, length));
            left -= length;
        }
        long whole = breadth;
        return left > 0
                ? Optional.empty()
                : parts.stream()
                        .reduce((a, b) -> new Joint(!wanted.log.edge().upright(), a, b))
                        .map(tree -> new Bar(tree, whole));
    }

    private long along(Way way, Log log) {
        return (log.edge().upright() != way.turned ? way.part.height() : way.part.width()) - rules.seam();
    }

    private long across(Way way, Log log) {
        return (log.edge().upright() != way.turned ? way.part.width() : way.part.height()) - rules.seam();
    }

    private ScrapPatch cut(Way way, Log log, long length) {
        long across = way.breadth + rules.seam();
        long along = length + rules.seam();
        return cut(
                way.part,
                way.turned,
                log.edge().upright() ? across : along,
                log.edge().upright() ? along : across);
    }

    private ScrapPatch cut(Offcuts.Part part, boolean turned, long width, long height) {
        offcuts.cut(part, turned ? height : width, turned ? width : height);
        return new ScrapPatch(part.scrap(), turned, width, height);
    }

    private Optional<Pieced> hearth(long width, long height, Set<Integer> beside) {
        if (Math.min(width, height) < rules.least()) {
            return Optional.empty();
        }
        long cutWidth = width + rules.seam();
        long cutHeight = height + rules.seam();
        List<Way> ways = new ArrayList<>();
        for (Offcuts.Part part : offcuts.parts()) {
            for (boolean turned : offcuts.turnable(part) ? new boolean[] {false, true} : new boolean[] {false}) {
                long across = turned ? cutHeight : cutWidth;
                long down = turned ? cutWidth : cutHeight;
                if (offcuts.open(part) && across <= part.width() && down <= part.height()) {
                    double alike = alike(part, beside, (double) width * height);
                    ways.add(new Way(part, turned, 0, offcuts.lostBy(part, across, down) + alike));
                }
            }
        }
        if (ways.isEmpty()) {
            return Optional.empty();
        }
        Way way = oneOf(ways);
        cost += alike(way.part, beside, (double) width * height);
        return Optional.of(cut(way.part, way.turned, cutWidth, cutHeight));
    }
}
