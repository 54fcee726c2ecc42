package hearthcloth.web.piecing;

import hearthcloth.cutstock.piecing.tree.Joint;
import hearthcloth.cutstock.piecing.tree.Pieced;
import hearthcloth.cutstock.piecing.tree.ScrapPatch;
import hearthcloth.plan.patchwork.MarkedHeap;
import hearthcloth.plan.patchwork.byhand.LaidOut;
import java.net.URLDecoder;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A table as text: a line for each part, {@code ((3~:38x63 | 12~t:50x47) / 4~:46x41)} in net marks by the pieces' numbers, and one
 * for what is locked. A part that has a piece which is not there any more is gone.
 */
final class TableText {

    private static final Pattern TOKEN = Pattern.compile("[()|/]|([^\\s()|/:]+?)(t?):(\\d{1,8})x(\\d{1,8})");

    private final MarkedHeap heap;

    TableText(MarkedHeap heap) {
        this.heap = heap;
    }

    String of(LaidOut laid) {
        StringBuilder text = new StringBuilder();
        laid.parts().forEach(part -> text.append(of(part)).append('\n'));
        text.append("locked");
        laid.locked().stream().sorted().forEach(scrap -> text.append(' ').append(id(scrap)));
        return text.toString();
    }

    private String of(Pieced tree) {
        if (tree instanceof Joint joint) {
            return "(" + of(joint.first()) + (joint.beside() ? " | " : " / ") + of(joint.second()) + ")";
        }
        ScrapPatch patch = (ScrapPatch) tree;
        return id(patch.scrap()) + "~" + (patch.turned() ? "t" : "") + ":" + patch.width() + "x" + patch.height();
    }

    /** A number without signs of this notation; the mark after it parts it from the letter for turned. */
    private String id(int scrap) {
        return URLEncoder.encode(heap.pieces().get(scrap).id(), StandardCharsets.UTF_8);
    }

    LaidOut read(String text) {
        List<Pieced> parts = new ArrayList<>();
        Set<Integer> locked = new TreeSet<>();
        Set<Integer> seen = new TreeSet<>();
        for (String line : text.split("\n", -1)) {
            if (line.startsWith("locked")) {
                for (String id : line.substring(6).strip().split(" ", -1)) {
                    locked.add(scrap(id));
                }
            } else if (!line.isBlank()) {
                new Line(line).tree().filter(tree -> isNew(tree, seen)).ifPresent(parts::add);
            }
        }
        LaidOut laid = new LaidOut(parts, Set.of());
        locked.retainAll(laid.scraps());
        return new LaidOut(parts, locked);
    }

    private static boolean isNew(Pieced tree, Set<Integer> seen) {
        LaidOut one = new LaidOut(List.of(tree), Set.of());
        return one.scraps().stream().noneMatch(seen::contains) && seen.addAll(one.scraps());
    }

    private int scrap(String written) {
        return heap.indexOf(URLDecoder.decode(written, StandardCharsets.UTF_8));
    }

    /** One line being read. */
    private final class Line {
        private final Matcher tokens;
        private boolean known = true;

        Line(String line) {
            this.tokens = TOKEN.matcher(line);
        }

        /** The tree; empty where the line is none, or a piece is gone. */
        Optional<Pieced> tree() {
            Optional<Pieced> tree = tokens.find() ? node() : Optional.empty();
            return tree.filter(read -> known);
        }

        private Optional<Pieced> node() {
            if (tokens.group(1) != null) {
                String id = tokens.group(1).replaceFirst("~$", "");
                int scrap = scrap(id);
                known &= scrap >= 0;
                long width = Long.parseLong(tokens.group(3));
                long height = Long.parseLong(tokens.group(4));
                return Optional.of(new ScrapPatch(scrap, tokens.group(2).equals("t"), width, height));
            }
            if (!tokens.group().equals("(") || !tokens.find()) {
                return Optional.empty();
            }
            Optional<Pieced> first = node();
            if (first.isEmpty() || !tokens.find() || !"|/".contains(tokens.group())) {
                return Optional.empty();
            }
            boolean beside = tokens.group().equals("|");
            Optional<Pieced> second = tokens.find() ? node() : Optional.empty();
            if (second.isEmpty() || !tokens.find()) {
                return Optional.empty();
            }
            return Optional.of(new Joint(beside, first.get(), second.get()));
        }
    }
}
