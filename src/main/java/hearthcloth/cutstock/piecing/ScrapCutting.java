package hearthcloth.cutstock.piecing;

import hearthcloth.cutstock.piecing.tree.ScrapCut;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * How a few patches are cut out of one scrap by straight cuts in order, with the least lost: up to four in any order, more
 * in the order given. Each patch lies in the corner of what is left; all ways to divide the rest are tried.
 */
public final class ScrapCutting {

    /** The most patches that are tried in every order. */
    private static final int ANY_ORDER = 4;

    private final long keepShort;
    private final long keepLong;

    /**
     * Rules for offcuts.
     *
     * @param keepShort the least short side of an offcut that goes back; 0 where none goes back
     * @param keepLong the least long side of such an offcut
     */
    public ScrapCutting(long keepShort, long keepLong) {
        this.keepShort = keepShort;
        this.keepLong = keepLong;
    }

    /** A width and a height as they lie on the scrap. */
    public record Extent(long width, long height) {}

    /**
     * A way to cut a scrap.
     *
     * @param lost area that becomes neither a patch nor an offcut that goes back
     */
    public record Way(ScrapCut cut, long lost) {}

    /** The way that loses least; empty where the patches cannot all be cut so. */
    public Optional<Way> of(Extent scrap, List<Extent> patches) {
        List<Integer> all = new ArrayList<>();
        for (int i = 0; i < patches.size(); i++) {
            all.add(i);
        }
        return divided(scrap, patches, all);
    }

    private Optional<Way> divided(Extent part, List<Extent> patches, List<Integer> wanted) {
        if (wanted.isEmpty()) {
            return Optional.of(new Way(new ScrapCut.Spare(), goesBack(part) ? 0 : area(part)));
        }
        Optional<Way> best = Optional.empty();
        int firsts = patches.size() <= ANY_ORDER ? wanted.size() : 1;
        for (int i = 0; i < firsts; i++) {
            List<Integer> rest = new ArrayList<>(wanted);
            int patch = rest.remove(i);
            Extent size = patches.get(patch);
            if (size.width <= part.width && size.height <= part.height) {
                for (boolean upright : new boolean[] {true, false}) {
                    best = better(best, cornered(part, patches, patch, rest, upright));
                }
            }
        }
        return best;
    }

    /** One patch in the corner, the first cut upright or level; the others inside beside it or outside. */
    private Optional<Way> cornered(Extent part, List<Extent> patches, int patch, List<Integer> rest, boolean upright) {
        Extent size = patches.get(patch);
        Extent outside = upright
                ? new Extent(part.width - size.width, part.height)
                : new Extent(part.width, part.height - size.height);
        Extent inside = upright
                ? new Extent(size.width, part.height - size.height)
                : new Extent(part.width - size.width, size.height);
        Optional<Way> best = Optional.empty();
        for (int set = 0; set < 1 << rest.size(); set++) {
            Optional<Way> within = divided(inside, patches, chosen(rest, set, true));
            Optional<Way> without = within.isEmpty() ? within : divided(outside, patches, chosen(rest, set, false));
            if (without.isPresent()) {
                Way one = parted(
                        !upright,
                        upright ? size.height : size.width,
                        new Way(new ScrapCut.Whole(patch), 0),
                        within.orElseThrow(),
                        inside);
                best = better(
                        best,
                        Optional.of(parted(upright, upright ? size.width : size.height, one, without.get(), outside)));
            }
        }
        return best;
    }

    private static Way parted(boolean upright, long at, Way first, Way second, Extent rest) {
        return area(rest) == 0
                ? first
                : new Way(new ScrapCut.Cut(upright, at, first.cut, second.cut), first.lost + second.lost);
    }

    private static List<Integer> chosen(List<Integer> list, int set, boolean in) {
        List<Integer> chosen = new ArrayList<>();
        for (int i = 0; i < list.size(); i++) {
            if (((set >> i & 1) == 1) == in) {
                chosen.add(list.get(i));
            }
        }
        return chosen;
    }

    private static Optional<Way> better(Optional<Way> one, Optional<Way> other) {
        return one.isEmpty() || (other.isPresent() && other.get().lost < one.get().lost) ? other : one;
    }

    private boolean goesBack(Extent part) {
        return keepShort > 0
                && Math.min(part.width, part.height) >= keepShort
                && Math.max(part.width, part.height) >= keepLong;
    }

    private static long area(Extent part) {
        return part.width * part.height;
    }
}
