package hearthcloth.plan.patchwork;

import hearthcloth.cloth.making.Making;
import hearthcloth.cutstock.piecing.Allowances;
import hearthcloth.cutstock.piecing.PiecingJob;
import hearthcloth.cutstock.piecing.Scrap;
import hearthcloth.cutstock.piecing.Terms;
import hearthcloth.cutstock.piecing.WishedCloth;
import hearthcloth.measure.Length;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Size;
import hearthcloth.plan.model.Patchwork;
import hearthcloth.plan.model.Wish;
import hearthcloth.plan.parameter.PatchworkParameters;
import hearthcloth.stash.Fabric;
import hearthcloth.stash.Piece;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A heap of pieces as the search knows it: whole marks of the ruler. Pieces are rounded down to a mark, what sewing takes is
 * rounded up, so that whatever the search finds can be cut.
 *
 * @param pieces those that are large enough for a patch
 * @param scraps the same in marks, in the same order
 */
public record MarkedHeap(List<Piece> pieces, List<Scrap> scraps, Wish wish) {

    /** The most patches out of one piece. */
    private static final int MOST_PARTS =
            PatchworkParameters.standard().choice().parts();

    public MarkedHeap {
        pieces = List.copyOf(pieces);
        scraps = List.copyOf(scraps);
    }

    /** The pieces from which a patch can be cut that shows its least. */
    public static MarkedHeap of(List<Piece> pieces, List<Fabric> fabrics, Wish wish) {
        MarkedHeap none = new MarkedHeap(List.of(), List.of(), wish);
        long least = none.allowances().cutToShow(none.least());
        List<Piece> fit = new ArrayList<>();
        List<Scrap> scraps = new ArrayList<>();
        for (Piece piece : pieces) {
            long width = none.marks(piece.size().width(), Rounding.DOWN);
            long height = none.marks(piece.size().height(), Rounding.DOWN);
            if (Math.min(width, height) >= least) {
                fit.add(piece);
                Fabric fabric = piece.fabric();
                int number = names(fabrics).indexOf(fabric.name());
                scraps.add(new Scrap(width, height, number, fabric.nap() == Fabric.Nap.ANY));
            }
        }
        return new MarkedHeap(fit, scraps, wish);
    }

    private static List<String> names(List<Fabric> fabrics) {
        return fabrics.stream().map(Fabric::name).toList();
    }

    /** The heap with what is wished of its pieces: which have to be in, how much may be trimmed. */
    MarkedHeap asked(Patchwork.ScrapWishes wishes) {
        long most = wishes.mostTrim()
                .map(length -> marks(length, Rounding.DOWN))
                .map(marks -> Math.min(marks, PiecingJob.LONGEST))
                .orElse(PiecingJob.LONGEST);
        List<Scrap> asked = new ArrayList<>();
        for (int i = 0; i < scraps.size(); i++) {
            Scrap.Handling handling = scraps.get(i).handling().trimmedBy(most);
            boolean must = wishes.with().contains(pieces.get(i).id());
            asked.add(scraps.get(i).handled(must ? handling.required() : handling));
        }
        return new MarkedHeap(pieces, asked, wish);
    }

    /** Where a piece stands in the heap; −1 where it is not there. */
    public int indexOf(String piece) {
        return pieces.stream().map(Piece::id).toList().indexOf(piece);
    }

    /** The heap with only some of its pieces. */
    MarkedHeap only(List<Integer> some) {
        return new MarkedHeap(
                some.stream().map(pieces::get).toList(),
                some.stream().map(scraps::get).toList(),
                wish);
    }

    /**
     * The heap with large pieces taken as two or three parts of about equal breadth, each for a patch of its own. A piece that
     * is parted stands here several times.
     *
     * @param most pieces of more net area than twice this are parted, in square marks
     */
    MarkedHeap parted(double most) {
        List<Piece> more = new ArrayList<>();
        List<Scrap> parts = new ArrayList<>();
        for (int i = 0; i < pieces.size(); i++) {
            for (Scrap part : parts(scraps.get(i), most)) {
                more.add(pieces.get(i));
                parts.add(part);
            }
        }
        return new MarkedHeap(more, parts, wish);
    }

    private List<Scrap> parts(Scrap scrap, double most) {
        long seam = allowances().seam();
        double area = (double) (scrap.width() - seam) * (scrap.height() - seam);
        boolean across = scrap.width() >= scrap.height();
        long side = across ? scrap.width() : scrap.height();
        long fit = side / allowances().cutToShow(least());
        int count = (int) Math.max(1, Math.min(Math.min(MOST_PARTS, fit), (long) (area / most)));
        List<Scrap> parts = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            long part = side * (i + 1) / count - side * i / count;
            Scrap one = across
                    ? new Scrap(part, scrap.height(), scrap.fabric(), scrap.turnable())
                    : new Scrap(scrap.width(), part, scrap.fabric(), scrap.turnable());
            parts.add(one.handled(i == 0 ? scrap.handling() : scrap.handling().optional()));
        }
        return parts;
    }

    /** The area in the middle of all net areas, in square marks. */
    double middleArea() {
        return IntStream.range(0, scraps.size())
                .mapToDouble(this::netArea)
                .sorted()
                .skip(scraps.size() / 2)
                .findFirst()
                .orElse(1);
    }

    /** The net area of one piece, in square marks. */
    double netArea(int scrap) {
        long seam = allowances().seam();
        return (double) (scraps.get(scrap).width() - seam) * (scraps.get(scrap).height() - seam);
    }

    Making making() {
        return wish.making();
    }

    public Length mark() {
        return making().margins().mark();
    }

    public long marks(Length length, Rounding rounding) {
        return rounding.quotient(length.nm(), mark().nm());
    }

    public Allowances allowances() {
        long seam = marks(making().seam().loss(), Rounding.UP);
        long wide = marks(making().seam().wide().max(making().seam().narrow()), Rounding.UP);
        return new Allowances(seam - wide, wide, marks(making().hem().allowance(), Rounding.UP));
    }

    /** The least net side of a patch, whoever wraps. */
    public long leastNet() {
        return allowances().cutToShow(least()) - allowances().seam();
    }

    private long least() {
        return marks(wish.rules().leastPiece(), Rounding.UP);
    }

    /** What is asked of patches and offcuts. */
    public Terms terms(boolean offcuts) {
        return new Terms(
                least(),
                offcuts ? least() : 0,
                offcuts ? least() : 0,
                1,
                marks(wish.rules().clearance(), Rounding.UP));
    }

    /** The exact net length of a finished one: what its cut length is more than one seam. */
    Length net(Length finished) {
        return finished.plus(making().hem().allowance().times(2))
                .minus(making().seam().loss());
    }

    /** The net length in marks, rounded up. */
    public long netMarks(Length finished) {
        return marks(net(finished), Rounding.UP);
    }

    /** The cloth whose net, in marks, is that of this size. */
    public WishedCloth wished(Size finished) {
        return ofNet(netMarks(finished.width()), netMarks(finished.height()));
    }

    /** A rectangle of so much net, as a cloth for the search. */
    WishedCloth ofNet(long width, long height) {
        Allowances sewn = allowances();
        return new WishedCloth(width + sewn.seam() - 2 * sewn.hem(), height + sewn.seam() - 2 * sewn.hem());
    }

    /** The finished length of a net one. */
    public Length finished(long netMarks) {
        return mark().times(netMarks)
                .plus(making().seam().loss())
                .minus(making().hem().allowance().times(2));
    }

    /** The net area of all pieces, in square marks. */
    public long netArea() {
        long seam = allowances().seam();
        return scraps.stream()
                .mapToLong(scrap -> (scrap.width() - seam) * (scrap.height() - seam))
                .sum();
    }
}
