package hearthcloth.judge;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * A second, plain look at a plan file. Shares no code with the program: it knows only the published form of plan.json and
 * what cloth and scissors allow. Says everything that is wrong, in words.
 */
public final class PlanJudge {

    private final JsonNode plan;
    private final long step;
    private final List<String> wrong = new ArrayList<>();
    private final Map<String, Patch> patches = new HashMap<>();
    private final Map<String, Box> stock = new HashMap<>();
    private final Map<String, String> stockFabric = new HashMap<>();
    private final Set<String> napped;

    record Box(long x, long y, long width, long height) {
        long right() {
            return x + width;
        }

        long bottom() {
            return y + height;
        }

        boolean overlaps(Box o) {
            return x < o.right() && o.x < right() && y < o.bottom() && o.y < bottom();
        }

        boolean holds(Box o) {
            return o.x >= x && o.y >= y && o.right() <= right() && o.bottom() <= bottom();
        }

        double area() {
            return (double) width * height;
        }

        BigInteger exactArea() {
            return BigInteger.valueOf(width).multiply(BigInteger.valueOf(height));
        }

        Box with(Box o) {
            long l = Math.min(x, o.x);
            long t = Math.min(y, o.y);
            return new Box(l, t, Math.max(right(), o.right()) - l, Math.max(bottom(), o.bottom()) - t);
        }
    }

    record Patch(String id, String bar, JsonNode node, Box finished, long left, long top, long right, long bottom) {}

    private record Line(boolean vertical, long at, long from, long to, Set<String> ids, boolean join) {}

    /**
     * Judges.
     *
     * @param json the text of a plan file
     * @param step the ruler's step in nanometres, by which a cut may exceed its reckoned size
     * @param napped fabrics that may not be turned
     * @return what is wrong; empty where the plan can be cut and sewn
     */
    public static List<String> faults(String json, long step, Set<String> napped) throws IOException {
        PlanJudge judge = new PlanJudge(new ObjectMapper().readTree(json), step, napped);
        judge.judge();
        return judge.wrong;
    }

    private PlanJudge(JsonNode plan, long step, Set<String> napped) {
        this.plan = plan;
        this.step = step;
        this.napped = napped;
    }

    private void judge() {
        check(plan.path("format").asText().equals("hearthcloth-plan"), "format");
        check(plan.path("version").asInt() == 1, "version");
        check(plan.path("units").asText().equals("nm"), "units");
        plan.path("stock").forEach(piece -> {
            String id = piece.path("id").asText();
            stockFabric.put(id, piece.path("fabric").asText());
            check(stock.put(id, new Box(0, 0, nm(piece, "width"), nm(piece, "length"))) == null, "stock twice " + id);
        });
        plan.path("patches").forEach(this::read);
        tile();
        cutSizes();
        cutting();
        seams();
        figures();
    }

    private void read(JsonNode node) {
        String id = node.path("id").asText();
        JsonNode f = node.path("finished");
        JsonNode a = node.path("allowances");
        Box finished = new Box(nm(f, "x"), nm(f, "y"), nm(f, "width"), nm(f, "height"));
        String bar = node.path("role").asText().equals("bar") ? node.path("bar").asText() : id;
        Patch patch = new Patch(id, bar, node, finished, nm(a, "left"), nm(a, "top"), nm(a, "right"), nm(a, "bottom"));
        check(patches.put(id, patch) == null, "patch twice " + id);
    }

    private void tile() {
        Box cloth = new Box(0, 0, nm(plan.path("finished"), "width"), nm(plan.path("finished"), "height"));
        List<Patch> all = new ArrayList<>(patches.values());
        BigInteger sum = BigInteger.ZERO;
        for (int i = 0; i < all.size(); i++) {
            Box box = all.get(i).finished;
            sum = sum.add(box.exactArea());
            check(cloth.holds(box), all.get(i).id + " lies outside the cloth");
            for (int j = i + 1; j < all.size(); j++) {
                check(!box.overlaps(all.get(j).finished), all.get(i).id + " overlaps " + all.get(j).id);
            }
        }
        check(sum.equals(cloth.exactArea()), "patches cover " + sum + " of " + cloth.exactArea());
    }

    private void cutSizes() {
        long leeway = nm(plan, "leeway");
        Map<String, Long> extra = new HashMap<>();
        for (Patch p : patches.values()) {
            long w = p.finished.width + p.left + p.right;
            long h = p.finished.height + p.top + p.bottom;
            check(nm(p.node.path("exact"), "width") == w && nm(p.node.path("exact"), "height") == h, p.id + " exact");
            long moreW = nm(p.node.path("cut"), "width") - w;
            long moreH = nm(p.node.path("cut"), "height") - h;
            check(moreW >= 0 && moreH >= 0, p.id + " is cut too small");
            boolean hearth = !p.node.path("role").asText().equals("bar");
            String side = p.node.path("side").asText();
            boolean upright = side.equals("left") || side.equals("right");
            long along = upright ? moreH : moreW;
            check(hearth ? moreW < step && moreH < step : (upright ? moreW : moreH) < step, p.id + " cut too wide");
            if (!hearth) {
                extra.merge(p.bar, along, Long::sum);
            }
        }
        extra.forEach((bar, more) ->
                check(more >= leeway && more < leeway + step * 40, bar + " has " + more + " to spare in length"));
    }

    private void cutting() {
        Map<String, List<Box>> cut = new HashMap<>();
        for (Patch p : patches.values()) {
            String from = p.node.path("from").asText();
            boolean turned = p.node.path("turned").asBoolean();
            long w = nm(p.node.path("cut"), turned ? "height" : "width");
            long h = nm(p.node.path("cut"), turned ? "width" : "height");
            Box box = new Box(nm(p.node.path("at"), "x"), nm(p.node.path("at"), "y"), w, h);
            Box piece = stock.get(from);
            check(piece != null, p.id + " comes from no piece");
            check(piece != null && piece.holds(box), p.id + " lies outside its piece");
            String fabric = p.node.path("fabric").asText();
            check(fabric.equals(stockFabric.get(from)), p.id + " is of another fabric than its piece");
            check(!turned || !napped.contains(fabric), p.id + " is turned against the nap");
            cut.computeIfAbsent(from, key -> new ArrayList<>()).add(box);
        }
        cut.forEach((from, boxes) -> {
            for (int i = 0; i < boxes.size(); i++) {
                for (int j = i + 1; j < boxes.size(); j++) {
                    check(!boxes.get(i).overlaps(boxes.get(j)), "cuts overlap on " + from);
                }
            }
            check(comesApart(stock.get(from), boxes), "piece " + from + " does not come apart by straight cuts");
        });
        plan.path("offcuts").forEach(node -> {
            Box box = new Box(nm(node, "x"), nm(node, "y"), nm(node, "width"), nm(node, "height"));
            String from = node.path("from").asText();
            check(stock.get(from).holds(box), "offcut outside " + from);
            cut.get(from).forEach(other -> check(!box.overlaps(other), "offcut overlaps a patch on " + from));
        });
        check(stock.keySet().equals(cut.keySet()), "stock lists pieces that are not cut");
    }

    /** Some straight line parts the boxes, and each side again comes apart. */
    private static boolean comesApart(Box area, List<Box> boxes) {
        if (boxes.size() <= 1) {
            return true;
        }
        for (boolean vertical : new boolean[] {true, false}) {
            Set<Long> lines = new HashSet<>();
            boxes.forEach(box -> {
                lines.add(vertical ? box.x : box.y);
                lines.add(vertical ? box.right() : box.bottom());
            });
            for (long line : lines) {
                List<Box> before = new ArrayList<>();
                List<Box> after = new ArrayList<>();
                boolean clean = true;
                for (Box box : boxes) {
                    long from = vertical ? box.x : box.y;
                    long to = vertical ? box.right() : box.bottom();
                    if (to <= line) {
                        before.add(box);
                    } else if (from >= line) {
                        after.add(box);
                    } else {
                        clean = false;
                    }
                }
                if (clean && !before.isEmpty() && !after.isEmpty()) {
                    return comesApart(area, before) && comesApart(area, after);
                }
            }
        }
        return false;
    }

    private void seams() {
        List<Set<String>> parts = new ArrayList<>();
        patches.keySet().forEach(id -> parts.add(new HashSet<>(Set.of(id))));
        List<Line> lines = new ArrayList<>();
        int step = 1;
        for (JsonNode seam : plan.path("seams")) {
            check(seam.path("step").asInt() == step, "seam number " + step);
            Set<String> first = ids(seam.path("first"));
            Set<String> second = ids(seam.path("second"));
            check(parts.remove(first), "seam " + step + " joins what is not there");
            check(parts.remove(second), "seam " + step + " joins what is not there");
            Set<String> both = new HashSet<>(first);
            both.addAll(second);
            parts.add(both);
            lines.add(joined(seam, step, first, second));
            step++;
        }
        check(parts.size() == 1, "the cloth stays in " + parts.size() + " parts");
        check(plan.path("seams").size() == patches.size() - 1, "seams = patches - 1");
        parts.forEach(all -> rim(all, nm(plan.path("hem"), "first") + nm(plan.path("hem"), "second")));
        lines.forEach(line -> clearance(line, lines));
    }

    private Line joined(JsonNode seam, int step, Set<String> first, Set<String> second) {
        boolean vertical = seam.path("axis").asText().equals("vertical");
        Box a = box(first);
        Box b = box(second);
        check(
                vertical
                        ? a.right() == b.x && a.y == b.y && a.height == b.height
                        : a.bottom() == b.y && a.x == b.x && a.width == b.width,
                "seam " + step + ": the edges do not meet");
        check(nm(seam, "length") == (vertical ? a.height : a.width), "seam " + step + ": length");
        boolean firstWraps = seam.path("wraps").asText().equals("first");
        long narrow = nm(plan.path("seam"), "narrow");
        long wide = nm(plan.path("seam"), "wide");
        for (String id : first) {
            Patch p = patches.get(id);
            if (vertical ? p.finished.right() == a.right() : p.finished.bottom() == a.bottom()) {
                check((vertical ? p.right : p.bottom) == (firstWraps ? wide : narrow), id + " at seam " + step);
            }
        }
        for (String id : second) {
            Patch p = patches.get(id);
            if (vertical ? p.finished.x == b.x : p.finished.y == b.y) {
                check((vertical ? p.left : p.top) == (firstWraps ? narrow : wide), id + " at seam " + step);
            }
        }
        Set<String> both = new HashSet<>(first);
        both.addAll(second);
        running(seam, step, both);
        Set<String> bars = new HashSet<>();
        both.forEach(id -> bars.add(patches.get(id).bar));
        boolean join = bars.size() == 1;
        if (join) {
            shortParts(both);
        }
        return vertical
                ? new Line(true, b.x, a.y, a.bottom(), both, join)
                : new Line(false, b.y, a.x, a.right(), both, join);
    }

    private void running(JsonNode seam, int step, Set<String> ids) {
        Box box = box(ids);
        long width = box.width;
        long height = box.height;
        for (String id : ids) {
            Patch p = patches.get(id);
            if (p.finished.x == box.x && p.finished.y == box.y) {
                width += p.left;
                height += p.top;
            }
            if (p.finished.right() == box.right() && p.finished.bottom() == box.bottom()) {
                width += p.right;
                height += p.bottom;
            }
        }
        JsonNode running = seam.path("running");
        check(nm(running, "width") == width && nm(running, "height") == height, "seam " + step + ": running size");
    }

    private void shortParts(Set<String> ids) {
        long least = nm(plan, "leastPiece");
        for (String id : ids) {
            Patch p = patches.get(id);
            String side = p.node.path("side").asText();
            long along = side.equals("left") || side.equals("right") ? p.finished.height : p.finished.width;
            check(along >= least, id + " is under the least piece");
        }
    }

    private void rim(Set<String> ids, long hem) {
        Box box = box(ids);
        for (String id : ids) {
            Patch p = patches.get(id);
            check(p.finished.x != box.x || p.left == hem, id + " left hem");
            check(p.finished.y != box.y || p.top == hem, id + " top hem");
            check(p.finished.right() != box.right() || p.right == hem, id + " right hem");
            check(p.finished.bottom() != box.bottom() || p.bottom == hem, id + " bottom hem");
        }
    }

    /** A join ends on a seam; no other seam may end on the far side of it within the clearance. */
    private void clearance(Line join, List<Line> lines) {
        if (!join.join) {
            return;
        }
        long least = nm(plan, "clearance");
        for (Line other : lines) {
            boolean meets = other.vertical == join.vertical
                    && !other.equals(join)
                    && (other.to == join.from || other.from == join.to);
            check(!meets || Math.abs(other.at - join.at) >= least, "a join in " + join.ids + " meets another seam");
        }
    }

    private void figures() {
        JsonNode figures = plan.path("figures");
        double used = 0;
        for (Patch p : patches.values()) {
            used += (double) nm(p.node.path("cut"), "width") * nm(p.node.path("cut"), "height");
        }
        double touched = stock.values().stream().mapToDouble(Box::area).sum();
        double offcuts = 0;
        for (JsonNode node : plan.path("offcuts")) {
            offcuts += (double) nm(node, "width") * nm(node, "height");
        }
        long joins = patches.size()
                - patches.values().stream().map(Patch::bar).distinct().count();
        check(figures.path("joins").asLong() == joins, "joins");
        near(figures, "usedArea", used);
        check(figures.path("offcutArea").asDouble() <= offcuts * 1.000001 + 1, "offcutArea");
        near(figures, "lostArea", touched - used - figures.path("offcutArea").asDouble());
        check(figures.path("boundJoins").asLong() <= joins, "the bound on joins is above what was reached");
        check(
                figures.path("boundLostArea").asDouble()
                        <= figures.path("lostArea").asDouble() * 1.000001 + 1,
                "the bound on lost fabric is above what was reached");
        check(figures.path("threadLength").asLong() > 0 || patches.size() == 1, "threadLength");
        long seams = 0;
        for (JsonNode seam : plan.path("seams")) {
            seams += nm(seam, "length");
        }
        check(nm(figures, "seamLength") == seams, "seamLength");
    }

    private void near(JsonNode figures, String name, double value) {
        double told = figures.path(name).asDouble();
        check(Math.abs(told - value) <= 1e-6 * Math.max(value, told) + 1e9, name + " is " + told + ", wanted " + value);
    }

    private Box box(Set<String> ids) {
        return ids.stream()
                .map(id -> patches.get(id).finished)
                .reduce(Box::with)
                .orElseThrow();
    }

    private static Set<String> ids(JsonNode list) {
        Set<String> ids = new HashSet<>();
        list.forEach(id -> ids.add(id.asText()));
        return ids;
    }

    private long nm(JsonNode node, String field) {
        check(node.path(field).isIntegralNumber(), field + " is no whole number");
        return node.path(field).asLong();
    }

    private void check(boolean holds, String otherwise) {
        if (!holds) {
            wrong.add(otherwise);
        }
    }
}
