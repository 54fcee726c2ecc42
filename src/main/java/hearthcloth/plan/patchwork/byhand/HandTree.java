package hearthcloth.plan.patchwork.byhand;

import hearthcloth.cutstock.piecing.tree.Joint;
import hearthcloth.cutstock.piecing.tree.Pieced;
import hearthcloth.cutstock.piecing.tree.ScrapPatch;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.UnaryOperator;

/** What is done with trees of patches, whatever the scraps are. */
final class HandTree {

    private HandTree() {}

    static Set<Integer> scraps(Pieced tree) {
        Set<Integer> scraps = new TreeSet<>();
        tree.patches().forEach(patch -> scraps.add(patch.scrap()));
        return scraps;
    }

    /** The tree with every patch replaced. */
    static Pieced replaced(Pieced tree, UnaryOperator<Pieced> other) {
        return tree instanceof Joint joint
                ? new Joint(joint.beside(), replaced(joint.first(), other), replaced(joint.second(), other))
                : other.apply(tree);
    }

    /** The tree with all patches larger by this each way; smaller where it is below nothing. */
    static Pieced grown(Pieced tree, long by) {
        return replaced(tree, leaf -> {
            ScrapPatch patch = (ScrapPatch) leaf;
            return new ScrapPatch(patch.scrap(), patch.turned(), patch.width() + by, patch.height() + by);
        });
    }

    /** The tree turned by a quarter with the clock, as a sewn part is. */
    static Pieced quarterTurned(Pieced tree) {
        if (tree instanceof Joint joint) {
            Pieced first = quarterTurned(joint.first());
            Pieced second = quarterTurned(joint.second());
            return joint.beside() ? new Joint(false, first, second) : new Joint(true, second, first);
        }
        return ((ScrapPatch) tree).quarterTurned();
    }

    /** Width of a tree in which all edges that meet are equal; −1 where they are not. */
    static long width(Pieced tree) {
        return side(tree, true);
    }

    /** Height of such a tree. */
    static long height(Pieced tree) {
        return side(tree, false);
    }

    private static long side(Pieced tree, boolean width) {
        if (tree instanceof ScrapPatch patch) {
            return width ? patch.width() : patch.height();
        }
        Joint joint = (Joint) tree;
        long first = side(joint.first(), width);
        long second = side(joint.second(), width);
        if (first < 0 || second < 0) {
            return -1;
        }
        if (joint.beside() == width) {
            return first + second;
        }
        return first == second ? first : -1;
    }

    /** The largest parts of a tree all of whose scraps are among some. */
    static List<Pieced> within(Pieced tree, Set<Integer> some) {
        if (some.containsAll(scraps(tree))) {
            return List.of(tree);
        }
        if (!(tree instanceof Joint joint)) {
            return List.of();
        }
        List<Pieced> both = new ArrayList<>(within(joint.first(), some));
        both.addAll(within(joint.second(), some));
        return both;
    }
}
