package hearthcloth.cutstock.piecing;

import java.util.List;

/**
 * What is to be pieced from what. All lengths are whole numbers of one unit, up to {@value #LONGEST}.
 *
 * @param cloths the finished sizes, at least one
 */
public record PiecingJob(List<WishedCloth> cloths, List<Scrap> scraps, Allowances allowances, Terms terms) {

    /** The longest length that is reckoned with. */
    public static final long LONGEST = 10_000_000;

    public PiecingJob {
        cloths = List.copyOf(cloths);
        scraps = List.copyOf(scraps);
        if (cloths.isEmpty()) {
            throw new IllegalArgumentException("no cloth is wished");
        }
        cloths.forEach(size -> requireShort(Math.max(size.width(), size.height())));
        scraps.forEach(scrap -> requireShort(Math.max(scrap.width(), scrap.height())));
        requireShort(allowances.wide() + allowances.hem() + terms.least());
        cloths.forEach(size -> requireNet(allowances, Math.min(size.width(), size.height())));
    }

    private static void requireShort(long length) {
        if (length > LONGEST) {
            throw new IllegalArgumentException("length " + length + " is too large");
        }
    }

    private static void requireNet(Allowances allowances, long side) {
        if (allowances.net(side) < 1) {
            throw new IllegalArgumentException("a cloth " + side + " across is all allowance");
        }
    }
}
