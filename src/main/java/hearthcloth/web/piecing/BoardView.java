package hearthcloth.web.piecing;

import hearthcloth.cutstock.piecing.tree.ScrapPatch;
import hearthcloth.measure.Length;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Unit;
import hearthcloth.plan.model.Plan;
import hearthcloth.plan.patchwork.byhand.Fits;
import hearthcloth.plan.patchwork.byhand.LaidOut;
import hearthcloth.plan.patchwork.byhand.ScrapFit;
import hearthcloth.plan.patchwork.byhand.Swap;
import hearthcloth.plan.patchwork.byhand.Swaps;
import hearthcloth.stash.Piece;
import hearthcloth.web.drawn.BenchDrawing;
import hearthcloth.web.kit.Swatches;
import hearthcloth.words.designing.DesigningWords;
import hearthcloth.words.speech.Voice;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;

/**
 * The table as its page shows it.
 *
 * @param at the scrap that was tapped first, −1 for none
 * @param to the one that was tapped next, −1 for none
 */
record BoardView(HandTable table, Swatches swatches, int at, int to) {

    /** So many choices of one kind are offered; ours. */
    private static final int MOST = 8;

    private DesigningWords words() {
        return DesigningWords.in(table.settings().pages());
    }

    private Voice voice() {
        return table.settings().voice();
    }

    List<String> drawn() {
        LaidOut laid = table.laid();
        Optional<Plan> plan = table.plan();
        if (plan.isPresent()) {
            return List.of(whole(plan.get(), laid));
        }
        PartDrawing drawing = drawing();
        return laid.parts().stream()
                .map(part -> drawing.drawn(table.heap().trimmed(part).orElse(part)))
                .toList();
    }

    private PartDrawing drawing() {
        Length longest = table.heap().wished().width().max(table.heap().wished().height());
        return new PartDrawing(table.pieces(), swatches, longest, this::tap);
    }

    private PartDrawing.Tap tap(int scrap) {
        boolean locked = table.laid().locked().contains(scrap);
        return new PartDrawing.Tap(href(scrap), named(scrap, locked), scrap == at || scrap == to, locked);
    }

    /** A whole cloth by the names of its patches in sewing order. */
    private String whole(Plan plan, LaidOut laid) {
        List<ScrapPatch> patches = laid.parts().get(0).patches().toList();
        Map<String, Integer> scraps = new HashMap<>();
        for (int i = 0; i < patches.size(); i++) {
            scraps.put(
                    plan.cloth().laid().get(i).patch().place().id(),
                    patches.get(i).scrap());
        }
        return BenchDrawing.of(
                plan.cloth(),
                swatches,
                new BenchDrawing.Said(words().piecingTable(), ""),
                name -> target(name, scraps.getOrDefault(name, 0), laid));
    }

    private BenchDrawing.Target target(String name, int scrap, LaidOut laid) {
        boolean locked = laid.locked().contains(scrap);
        return new BenchDrawing.Target(
                name + ": " + named(scrap, locked), href(scrap), scrap == at || scrap == to, locked, Optional.empty());
    }

    private String named(int scrap, boolean locked) {
        String piece = piece(scrap);
        return locked ? words().piecingIsLocked(piece) : piece;
    }

    private String piece(int scrap) {
        Piece piece = table.all().get(scrap);
        return words().piecingPiece(piece.fabric().name(), piece.id(), voice().write(piece.size(), Rounding.NEAREST));
    }

    /** A first tap chooses a scrap, a second one says to what; a tap on what is chosen lets it go. */
    private String href(int scrap) {
        if (scrap == at || scrap == to) {
            return scrap == at ? "/piecing" : "/piecing?at=" + coded(at);
        }
        boolean together = at >= 0 && table.plan().isEmpty() && !isWithChosen(scrap);
        return "/piecing?at=" + (together ? coded(at) + "&to=" + coded(scrap) : coded(scrap));
    }

    private boolean isWithChosen(int scrap) {
        int part = table.laid().partOf(scrap);
        return part >= 0 && part == table.laid().partOf(at);
    }

    private String coded(int scrap) {
        return URLEncoder.encode(table.id(scrap), StandardCharsets.UTF_8);
    }

    List<HandBoard.Spare> spare() {
        LaidOut laid = table.laid();
        TreeSet<Integer> used = new TreeSet<>(laid.scraps());
        List<HandBoard.Spare> spare = new ArrayList<>();
        for (int scrap = 0; scrap < table.all().size(); scrap++) {
            if (!used.contains(scrap)) {
                spare.add(new HandBoard.Spare(
                        href(scrap), piece(scrap), swatch(table.all().get(scrap)), scrap == at || scrap == to));
            }
        }
        return spare;
    }

    /** A scrap in its proportions, small. */
    private String swatch(Piece piece) {
        double width = piece.size().width().in(Unit.MILLIMETRE);
        double height = piece.size().height().in(Unit.MILLIMETRE);
        double scale = 40 / Math.max(width, height);
        return String.format(
                java.util.Locale.ROOT,
                "<svg class=\"sw\" viewBox=\"0 0 40 40\" aria-hidden=\"true\"><rect x=\"%.1f\" y=\"%.1f\" width=\"%.1f\""
                        + " height=\"%.1f\" fill=\"%s\"/></svg>",
                20 - width * scale / 2,
                20 - height * scale / 2,
                width * scale,
                height * scale,
                swatches.fill(piece.fabric()));
    }

    Optional<HandBoard.Chosen> chosen() {
        if (at < 0) {
            return Optional.empty();
        }
        LaidOut laid = table.laid();
        int part = laid.partOf(at);
        boolean whole = table.plan().isPresent();
        HandBoard.State state = new HandBoard.State(
                part >= 0,
                laid.locked().contains(at),
                !whole && part >= 0 && table.hand().turned(laid, at).isPresent(),
                part >= 0 && laid.parts().get(part).patches().count() > 1);
        List<HandBoard.Group> groups = whole ? swaps(laid) : to >= 0 ? ways(laid) : next(laid);
        String none = groups.stream().allMatch(group -> group.choices().isEmpty())
                ? words().piecingNone(whole ? "swap" : to >= 0 ? "two" : "next")
                : "";
        return Optional.of(new HandBoard.Chosen(piece(at), table.id(at), state, groups, none));
    }

    private List<HandBoard.Group> next(LaidOut laid) {
        List<HandBoard.Choice> choices = new Fits(table.heap(), laid)
                .next(at, MOST).stream().map(fit -> choice(fit, true)).toList();
        return List.of(new HandBoard.Group(words().piecingNext(), "join", choices));
    }

    private List<HandBoard.Group> ways(LaidOut laid) {
        List<HandBoard.Choice> choices = new Fits(table.heap(), laid)
                .ways(at, to).stream().map(fit -> choice(fit, false)).toList();
        return List.of(new HandBoard.Group(words().piecingWays(piece(to)), "join", choices));
    }

    private List<HandBoard.Group> swaps(LaidOut laid) {
        List<HandBoard.Choice> choices = new Swaps(table.heap(), laid)
                .of(at, MOST).stream().map(this::choice).toList();
        return List.of(new HandBoard.Group(words().piecingSwap(), "swap", choices));
    }

    private HandBoard.Choice choice(ScrapFit fit, boolean naming) {
        String way = words().piecingWay(fit.turned() ? "yes" : "no", fit.beside() ? "BESIDE" : "BELOW");
        return new HandBoard.Choice(
                value(fit),
                swatches.fill(table.all().get(fit.second()).fabric()),
                naming ? words().piecingFit(piece(fit.second()), way) : way,
                trims(fit));
    }

    /** What a way trims, in words. */
    String trims(ScrapFit fit) {
        Length length = table.pieces().mark().times(fit.trim().marks());
        return words().piecingTrim(
                        voice().write(length, Rounding.UP),
                        fit.trim().marks() == 0 ? "NONE" : fit.trim().offSecond() ? "SECOND" : "FIRST",
                        table.id(fit.second()));
    }

    String value(ScrapFit fit) {
        return coded(fit.first()) + " " + coded(fit.second()) + (fit.beside() ? " beside" : " below")
                + (fit.turned() ? " turned" : " straight");
    }

    private HandBoard.Choice choice(Swap swap) {
        double mark = table.pieces().mark().in(Unit.MILLIMETRE);
        String area = voice().area(Math.abs(swap.trimmed()) * mark * mark, Rounding.NEAREST);
        String how = swap.trimmed() == 0 ? "SAME" : swap.trimmed() > 0 ? "MORE" : "LESS";
        return new HandBoard.Choice(
                coded(swap.scrap()) + " " + coded(swap.other()),
                swatches.fill(table.all().get(swap.other()).fabric()),
                piece(swap.other()),
                words().piecingMore(area, how));
    }

    /** What is told of the cloth; empty where it is not whole. */
    String about() {
        return table.plan()
                .map(plan -> words().piecingWhole(
                                        voice().number(plan.cloth().finished().width(), Rounding.NEAREST) + " × "
                                                + voice().write(
                                                                plan.cloth()
                                                                        .finished()
                                                                        .height(),
                                                                Rounding.NEAREST),
                                        plan.cloth().patches().size(),
                                        String.valueOf(plan.figures().areas().lostPercent()))
                        + " "
                        + plan.story().chosen().get(0).in(voice()))
                .orElse("");
    }
}
