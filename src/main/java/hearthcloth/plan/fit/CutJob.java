package hearthcloth.plan.fit;

import hearthcloth.cloth.Cloth;
import hearthcloth.cloth.Laid;
import hearthcloth.cloth.layout.Layout;
import hearthcloth.cutstock.job.BarTurn;
import hearthcloth.cutstock.job.CutJoinJob;
import hearthcloth.cutstock.job.FabricSets;
import hearthcloth.cutstock.job.JobBar;
import hearthcloth.cutstock.job.JobBlock;
import hearthcloth.cutstock.job.NeighbourBars;
import hearthcloth.cutstock.job.Shortage;
import hearthcloth.cutstock.job.Span;
import hearthcloth.cutstock.job.StockPiece;
import hearthcloth.measure.Length;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Size;
import hearthcloth.plan.model.Design;
import hearthcloth.stash.Fabric;
import hearthcloth.stash.Piece;
import hearthcloth.words.sentence.Argument;
import hearthcloth.words.sentence.Argument.Joined;
import hearthcloth.words.sentence.PlanningSentences;
import hearthcloth.words.sentence.Sentence;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A design translated for the search, which counts in whole marks of the maker's ruler: pieces are rounded down to a
 * mark and cuts up, so that what fits in marks fits in fabric. {@link CutAnswer} is the way back.
 */
public final class CutJob {

    private final Design design;
    private final List<Piece> pieces;
    private final Map<String, Integer> fabrics = new LinkedHashMap<>();
    private final Length mark;
    private final Cloth whole;
    private final List<Laid> laidBars;
    private final Laid laidHearth;
    private final List<Layout.Slot> slots;

    public CutJob(Design design, List<Piece> pieces) {
        this.design = design;
        this.pieces = List.copyOf(pieces);
        this.mark = design.making().margins().mark();
        this.whole = design.whole();
        this.slots = design.layout().slots();
        Map<String, Laid> byId = new LinkedHashMap<>();
        whole.laid().forEach(laid -> byId.put(laid.patch().place().id(), laid));
        this.laidHearth = found(byId, "hearth");
        this.laidBars =
                slots.stream().map(slot -> found(byId, slot.place().id())).toList();
        for (Piece piece : pieces) {
            fabrics.putIfAbsent(piece.fabric().name(), fabrics.size());
        }
    }

    public Design design() {
        return design;
    }

    /** The piece of the stash that the search knows by this number. */
    public Piece piece(int stock) {
        return pieces.get(stock);
    }

    public List<Layout.Slot> slots() {
        return slots;
    }

    /** Bar {@code bar}, counted from 0, in one piece at its place. */
    public Laid laidBar(int bar) {
        return laidBars.get(bar);
    }

    public Laid laidHearth() {
        return laidHearth;
    }

    /** Every fabric of its pieces, each once. */
    public List<Fabric> fabrics() {
        return pieces.stream().map(Piece::fabric).distinct().toList();
    }

    public Length mark() {
        return mark;
    }

    public CutJoinJob job() {
        List<StockPiece> stock = new ArrayList<>();
        for (int i = 0; i < pieces.size(); i++) {
            Piece piece = pieces.get(i);
            long width = marks(piece.size().width(), Rounding.DOWN);
            long length = marks(piece.size().height(), Rounding.DOWN);
            if (width > 0 && length > 0) {
                boolean nap = piece.fabric().nap() == Fabric.Nap.LENGTHWISE;
                stock.add(new StockPiece(i, width, length, number(piece.fabric()), nap));
            }
        }
        Size hearth = laidHearth.cut();
        JobBlock block = new JobBlock(
                0,
                marks(hearth.width(), Rounding.UP),
                marks(hearth.height(), Rounding.UP),
                numbers(design.scheme().hearth()),
                true);
        return new CutJoinJob(
                stock,
                List.of(block),
                bars(),
                neighbours(),
                marks(design.making().seam().loss(), Rounding.UP),
                0,
                marks(design.rules().leastPiece(), Rounding.UP));
    }

    private List<JobBar> bars() {
        SeamCrossings joints = SeamCrossings.of(design.layout());
        List<JobBar> bars = new ArrayList<>();
        for (int i = 0; i < slots.size(); i++) {
            Layout.Slot slot = slots.get(i);
            Size cut = laidBars.get(i).cut();
            boolean upright = slot.place().side().isUpright();
            bars.add(new JobBar(
                    i + 1,
                    marks(upright ? cut.width() : cut.height(), Rounding.UP),
                    marks(upright ? cut.height() : cut.width(), Rounding.UP),
                    numbers(design.scheme().bars().get(i)),
                    design.scheme().kind().isOneFabricBar(),
                    design.rules().mostJoins(),
                    leastCut(i),
                    upright ? BarTurn.NAP : BarTurn.NAP_ACROSS,
                    forbidden(i, joints.crossed().get(i))));
        }
        return bars;
    }

    /** The shortest part as cut: one that finishes at the least piece wherever it lies in the bar. */
    private long leastCut(int bar) {
        Length n = design.making().seam().narrow();
        Length wide = design.making().seam().wide();
        Length first = Design.firstEnd(laidBars.get(bar), slots.get(bar)).plus(wide);
        Length last = Design.lastEnd(laidBars.get(bar), slots.get(bar))
                .plus(n)
                .plus(design.making().leeway());
        Length most = first.max(last).max(n.plus(wide));
        return marks(design.rules().leastPiece().plus(most), Rounding.UP) + 1;
    }

    private List<Span> forbidden(int bar, List<Length> crossed) {
        Length clearance = design.rules().clearance();
        List<Span> spans = new ArrayList<>();
        for (Length at : crossed) {
            Length place = at.plus(offset(bar));
            spans.add(
                    new Span(marks(place.minus(clearance), Rounding.DOWN), marks(place.plus(clearance), Rounding.UP)));
        }
        return spans;
    }

    /**
     * What is subtracted from the search's position of a join (the sum of cut lengths less the losses) to get its
     * finished place.
     */
    private Length offset(int bar) {
        return Design.firstEnd(laidBars.get(bar), slots.get(bar))
                .plus(design.making().seam().wide());
    }

    private List<NeighbourBars> neighbours() {
        List<NeighbourBars> neighbours = new ArrayList<>();
        for (SeamCrossings.Touch touch : SeamCrossings.of(design.layout()).touches()) {
            Length shift = touch.shift().minus(offset(touch.inner())).plus(offset(touch.outer()));
            neighbours.add(new NeighbourBars(
                    touch.inner() + 1,
                    touch.outer() + 1,
                    marks(shift, Rounding.NEAREST),
                    marks(design.rules().clearance(), Rounding.UP) + (isOnMark(shift) ? 0 : 1)));
        }
        return neighbours;
    }

    /** What the search found short, in sentences for the maker. */
    public List<Sentence> sentences(List<Shortage> shortages, boolean proven) {
        return shortages.stream().map(shortage -> sentence(shortage, proven)).toList();
    }

    private Sentence sentence(Shortage shortage, boolean proven) {
        Argument what = Argument.row(
                Joined.COMMAS, shortage.demands().stream().map(this::label).toList());
        List<String> names = shortage.fabrics().stream().mapToObj(this::fabric).toList();
        Argument length = Argument.of(mark.times(Math.max(1, shortage.missingLength())), Rounding.UP);
        Argument width = Argument.of(mark.times(shortage.width()), Rounding.UP);
        String sure = proven ? "proven" : "about";
        return names.size() <= 3
                ? PlanningSentences.shortOf(Argument.names(Joined.OR, names), length, sure, what, width)
                : PlanningSentences.shortAny(
                        Argument.text(names.get(0)), length, Argument.number(names.size()), sure, what, width);
    }

    /** Pieces of fabric that would make up for what is short, one for each shortage. */
    public List<Piece> pieces(List<Shortage> shortages) {
        List<Piece> filling = new ArrayList<>();
        for (Shortage shortage : shortages) {
            Size size = new Size(
                    mark.times(shortage.width()), mark.times(Math.max(shortage.width(), shortage.missingLength())));
            pieces.stream()
                    .map(Piece::fabric)
                    .filter(fabric -> shortage.fabrics().has(number(fabric)))
                    .findFirst()
                    .ifPresent(fabric -> filling.add(new Piece("added", fabric, size, Piece.Washed.UNKNOWN, 0)));
        }
        return filling;
    }

    private Argument label(int demand) {
        return demand == 0
                ? PlanningSentences.hearth()
                : Argument.text(slots.get(demand - 1).place().label());
    }

    private String fabric(int number) {
        return pieces.stream()
                .map(Piece::fabric)
                .filter(fabric -> number(fabric) == number)
                .findFirst()
                .map(Fabric::name)
                .orElse("?");
    }

    private long marks(Length length, Rounding rounding) {
        return rounding.quotient(length.nm(), mark.nm());
    }

    private boolean isOnMark(Length length) {
        return length.nm() % mark.nm() == 0;
    }

    private int number(Fabric fabric) {
        return fabrics.getOrDefault(fabric.name(), -1);
    }

    private FabricSets numbers(List<Fabric> wanted) {
        return FabricSets.of(wanted.stream().mapToInt(this::number).filter(number -> number >= 0));
    }

    private static Laid found(Map<String, Laid> byId, String id) {
        return java.util.Objects.requireNonNull(byId.get(id), id);
    }
}
