package hearthcloth.web.gift;

import hearthcloth.measure.Length;
import hearthcloth.measure.MeasureException;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Ruler;
import hearthcloth.measure.Size;
import hearthcloth.web.kit.PageContext;
import hearthcloth.web.kit.PageFrame;
import hearthcloth.web.kit.PageRoutes;
import hearthcloth.web.kit.PageView;
import hearthcloth.web.kit.Settings;
import hearthcloth.work.Purpose;
import hearthcloth.wrap.Capacity;
import hearthcloth.wrap.Gift;
import hearthcloth.wrap.PublishedRule;
import hearthcloth.wrap.Tail;
import hearthcloth.wrap.Tie;
import hearthcloth.wrap.TradeSize;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** "What will it wrap?": every tie that suits the gift with the cloth it takes, and what a cloth she owns ties. */
public final class GiftPage {

    /**
     * One tie as the page shows it.
     *
     * @param range with the least and the most that knot and tails take
     * @param near the trade size that does, empty where none is as large
     */
    public record Row(String tie, String trade, String size, String range, String near, boolean knotted) {}

    /** What she typed: the kind of gift and its measures as they stand in the fields, or the size of a cloth. */
    public record Asked(GiftShape shape, List<String> measures, String cloth) {}

    /**
     * What the page answers.
     *
     * @param gift as it is written; empty until every measure is there
     */
    public record Answer(String gift, List<Row> rows, String rule, String trouble) {
        static final Answer NONE = new Answer("", List.of(), "", "");
    }

    /** Each tie with the cloth it takes, to be chosen. */
    @PageView.Template("part/ties.jte")
    public record Ties(Answer answer, String token) implements PageView {}

    /** What a cloth of hers ties. */
    @PageView.Template("part/holds.jte")
    public record Held(List<HeldGift> holds, String trouble) implements PageView {}

    /**
     * The page.
     *
     * @param wished what is planned for now, in a sentence; empty where nothing is wished
     */
    @PageView.Template("gift.jte")
    public record View(PageFrame frame, Asked asked, Answer answer, Held held, String wished) implements PageView {

        public Ties ties() {
            return new Ties(answer, frame.token());
        }
    }

    private final PageContext room;

    private GiftPage(PageContext room) {
        this.room = room;
    }

    public static void add(PageRoutes routes) {
        routes.of(GiftPage::new)
                .get("/", (page, context) -> context.redirect("/gift"))
                .get("/gift", GiftPage::show)
                .post("/gift", GiftPage::choose);
    }

    private void show(Context context) {
        Settings settings = room.settings();
        Asked asked = new Asked(
                GiftShape.named(PageContext.text(context, "kind")),
                List.of(PageContext.text(context, "a"), PageContext.text(context, "b"), PageContext.text(context, "c")),
                PageContext.text(context, "cloth"));
        Answer answer = answer(asked, settings);
        Held held = held(asked, settings.ruler());
        String target = Optional.ofNullable(context.header("HX-Target")).orElse("");
        switch (PageContext.isPart(context) ? target : "") {
            case "ties" -> room.show(context, new Ties(answer, room.token()));
            case "holds" -> room.show(context, held);
            default ->
                room.show(
                        context,
                        new View(
                                room.frame(context, "What will it wrap?", "Gift"),
                                asked,
                                answer,
                                held,
                                Wished.of(room.store()).words(settings.ruler())));
        }
    }

    private void choose(Context context) {
        Settings settings = room.settings();
        String gift = PageContext.field(context, "gift");
        String size = PageContext.field(context, "size");
        if (!gift.isEmpty()) {
            Wished.keep(room.store(), Purpose.of(gift, PageContext.field(context, "tie"), settings.bare()));
        } else if (!size.isEmpty()) {
            Size read = Purpose.size(size, settings.bare());
            Wished.keep(room.store(), new Purpose("", "", settings.ruler().write(read, Rounding.NEAREST)));
        } else {
            Wished.keep(room.store(), Purpose.NOTHING);
        }
        boolean bare = room.store().stash().isEmpty();
        PageContext.go(context, bare ? "/stash" : "/cloth", "");
    }

    private static Answer answer(Asked asked, Settings settings) {
        Optional<String> text = asked.shape().text(asked.measures());
        if (text.isEmpty()) {
            return Answer.NONE;
        }
        try {
            Gift gift = Gift.parse(text.get(), settings.bare());
            return new Answer(text.get(), rows(gift, settings.ruler()), rule(gift, settings.ruler()), "");
        } catch (MeasureException e) {
            return new Answer("", List.of(), "", String.valueOf(e.getMessage()));
        }
    }

    private static List<Row> rows(Gift gift, Ruler ruler) {
        Tail tail = Purpose.tail(ruler);
        List<Row> rows = new ArrayList<>();
        for (Tie tie : Tie.suiting(gift)) {
            Length side = tie.smallestSquare(gift, tail.usual());
            String least = ruler.number(tie.smallestSquare(gift, tail.least()), Rounding.UP);
            String most = ruler.write(tie.smallestSquare(gift, tail.most()), Rounding.UP);
            String near = TradeSize.enoughFor(side)
                    .map(trade -> ruler.write(trade.least(), Rounding.NEAREST)
                            + (trade.trade().isEmpty() ? "" : " (" + trade.trade() + ")"))
                    .orElse("");
            rows.add(new Row(
                    tie.words(),
                    tie.trade(),
                    ruler.write(side, Rounding.UP),
                    least + "–" + most,
                    near,
                    tie.isKnotted()));
        }
        return rows;
    }

    private static String rule(Gift gift, Ruler ruler) {
        Tie first = Tie.suiting(gift).get(0);
        return PublishedRule.of(gift).sentence(gift, first, Purpose.tail(ruler).usual(), ruler);
    }

    private Held held(Asked asked, Ruler ruler) {
        if (asked.cloth().isEmpty()) {
            return new Held(List.of(), "");
        }
        try {
            Size cloth = Purpose.size(asked.cloth(), ruler.unit());
            return new Held(
                    Capacity.of(cloth, Purpose.tail(ruler).usual()).stream()
                            .map(capacity -> HeldGift.of(capacity, ruler))
                            .toList(),
                    "");
        } catch (MeasureException e) {
            return new Held(List.of(), String.valueOf(e.getMessage()));
        }
    }
}
