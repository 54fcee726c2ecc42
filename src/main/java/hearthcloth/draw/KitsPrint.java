package hearthcloth.draw;

import hearthcloth.draw.cloth.Paper;
import hearthcloth.draw.guide.Bag;
import hearthcloth.draw.guide.BagSlips;
import hearthcloth.draw.guide.Flow;
import hearthcloth.draw.guide.PatchSlips;
import hearthcloth.draw.guide.ShoppingPage;
import hearthcloth.draw.guide.TeacherSheet;
import hearthcloth.draw.picture.PdfWriter;
import hearthcloth.measure.Length;
import hearthcloth.measure.Rounding;
import hearthcloth.plan.model.PieceCut;
import hearthcloth.plan.model.Plan;
import hearthcloth.plan.together.Leftover;
import hearthcloth.plan.together.Purchase;
import hearthcloth.plan.together.Together;
import hearthcloth.words.printing.PrintingWords;
import hearthcloth.words.sentence.Sentence;
import hearthcloth.words.speech.Voice;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Everything of cloths planned together that is printed once for all: a sheet for the teacher with the shopping list, a slip
 * for every bag, a slip for every patch.
 *
 * @param asked for each cloth the gift it is for, in a few words; empty where it is for none
 */
public record KitsPrint(Together together, List<String> asked, Voice voice, Paper paper) {

    private static final int TENTHS = 10;

    private PrintingWords words() {
        return voice.printing();
    }

    /** The pages as a PDF. */
    public byte[] pdf() {
        List<Bag> bags = bags();
        Flow flow = new Flow(paper, words().kitsRunning(bags.size()), words());
        new TeacherSheet(voice, flow).flow(bags, before());
        new ShoppingPage(words(), flow).flow(lacks(), ways());
        flow.turn();
        new BagSlips(voice, flow).flow(bags);
        flow.turn();
        PatchSlips.flow(bags, voice, flow);
        return PdfWriter.write(words().kitsTitle(), voice.language().tag(), flow.pages());
    }

    /** The bags that have a plan, numbered one after another. */
    private List<Bag> bags() {
        List<Bag> bags = new ArrayList<>();
        for (int i = 0; i < together.parts().size(); i++) {
            Together.Part part = together.parts().get(i);
            if (part.plan().isPresent()) {
                Plan plan = part.plan().get();
                bags.add(new Bag(bags.size() + 1, part.asked().name(), asked.get(i), plan, notes(part, plan)));
            }
        }
        return bags;
    }

    private List<String> notes(Together.Part part, Plan plan) {
        List<String> notes = new ArrayList<>();
        if (!part.isAsWished()) {
            notes.add(words().kitsNearest());
        }
        for (PieceCut cut : plan.cuts()) {
            handed(cut)
                    .ifPresent(left -> notes.add(
                            words().kitsHanded(left.of().id(), left.part().id(), name(left.by()))));
        }
        return notes;
    }

    private Optional<Leftover> handed(PieceCut cut) {
        return together.leftovers().stream()
                .filter(left -> left.part().id().equals(cut.piece().id()))
                .findFirst();
    }

    private String name(int cloth) {
        return together.parts().get(cloth).asked().name();
    }

    private List<String> before() {
        List<String> lines = new ArrayList<>();
        lines.add(words().kitsEach(together.leftovers().isEmpty() ? "no" : "yes"));
        for (Leftover left : together.leftovers()) {
            lines.add(words().kitsFirst(
                            left.of().id(),
                            left.part().id(),
                            voice.write(left.part().size(), Rounding.DOWN),
                            name(left.by())));
        }
        lines.add(words().kitsWorst(together.measure().fairness().worst()));
        return lines;
    }

    private List<String> lacks() {
        List<String> lacks = new ArrayList<>();
        for (Together.Part part : together.parts()) {
            part.shortage()
                    .ifPresent(shortage -> lacks.add(words().kitsLacks(
                                    part.plan().isEmpty() ? "no" : "yes",
                                    part.asked().name(),
                                    Sentence.row(shortage.why()).in(voice))));
        }
        return lacks;
    }

    private List<ShoppingPage.Way> ways() {
        Map<Purchase.Goods, List<String>> lines = new EnumMap<>(Purchase.Goods.class);
        for (Purchase purchase : together.shopping()) {
            lines.computeIfAbsent(purchase.goods(), goods -> new ArrayList<>()).add(line(purchase));
        }
        List<ShoppingPage.Way> ways = new ArrayList<>();
        lines.forEach((goods, said) -> ways.add(new ShoppingPage.Way(title(goods), said)));
        return ways;
    }

    private String line(Purchase purchase) {
        String what = purchase.goods() == Purchase.Goods.FAT_QUARTERS
                ? words().kitsQuarters(purchase.count())
                : length(purchase.size().height());
        return words().kitsBuy(name(purchase.cloth()), what);
    }

    /** As it is sold: in quarters of a yard, or in metres. */
    private String length(Length length) {
        if (voice.ruler().isMetric()) {
            long tenths = Rounding.UP.quotient(length.nm(), Length.cm(TENTHS).nm());
            return voice.local(tenths / TENTHS + "." + tenths % TENTHS) + " "
                    + voice.measuring().unit("m");
        }
        long quarters = length.nm() / Length.inches(9).nm();
        String part = List.of("", "1/4", "1/2", "3/4").get((int) (quarters % 4));
        String whole = quarters < 4 ? "" : quarters / 4 + (part.isEmpty() ? "" : " ");
        return words().kitsYards(whole + part, quarters > 4 ? "many" : quarters == 4 ? "one" : "part");
    }

    private String title(Purchase.Goods goods) {
        return words().kitsWay(goods.name(), voice.ruler().isMetric() ? "cm" : "in");
    }
}
