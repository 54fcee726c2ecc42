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
import hearthcloth.measure.Ruler;
import hearthcloth.plan.model.PieceCut;
import hearthcloth.plan.model.Plan;
import hearthcloth.plan.together.Leftover;
import hearthcloth.plan.together.Purchase;
import hearthcloth.plan.together.Together;
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
public record KitsPrint(Together together, List<String> asked, Ruler ruler, Paper paper) {

    private static final int TENTHS = 10;

    /** The pages as a PDF. */
    public byte[] pdf() {
        List<Bag> bags = bags();
        Flow flow = new Flow(
                paper,
                "Kits for " + bags.size() + (bags.size() == 1 ? " cloth" : " cloths"),
                Voice.english(ruler).printing());
        new TeacherSheet(ruler, flow).flow(bags, before());
        new ShoppingPage(flow).flow(lacks(), ways());
        flow.turn();
        new BagSlips(ruler, flow).flow(bags);
        flow.turn();
        PatchSlips.flow(bags, Voice.english(ruler), flow);
        return PdfWriter.write("Kits", "en", flow.pages());
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
            notes.add("This is the nearest that could be made; see the shopping list.");
        }
        for (PieceCut cut : plan.cuts()) {
            handed(cut)
                    .ifPresent(left -> notes.add("Piece " + left.part().id() + " is what "
                            + name(left.by()) + " leaves of piece " + left.of().id() + ": cut it after "
                            + name(left.by()) + "."));
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
        lines.add("Each piece is in one bag only"
                + (together.leftovers().isEmpty()
                        ? "; nobody has to wait for another."
                        : ", but for those that two share: there the first cuts before the second."));
        for (Leftover left : together.leftovers()) {
            lines.add(name(left.by()) + " cuts piece " + left.of().id() + " first; what is left, "
                    + ruler.write(left.part().size(), Rounding.DOWN) + ", becomes piece "
                    + left.part().id() + ".");
        }
        int worst = together.measure().fairness().worst();
        lines.add(worst == 0 ? "No bar is joined in any of them." : "Nobody has more than " + joins(worst) + ".");
        return lines;
    }

    private static String joins(int count) {
        return count == 1 ? "1 join" : count + " joins";
    }

    private List<String> lacks() {
        List<String> lacks = new ArrayList<>();
        for (Together.Part part : together.parts()) {
            part.shortage()
                    .ifPresent(shortage -> lacks.add(part.asked().name() + ": "
                            + (part.plan().isEmpty() ? "nothing could be made. " : "not as it was asked for. ")
                            + Sentence.row(shortage.why()).in(Voice.english(ruler))));
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
                ? (purchase.count() == 1 ? "1 fat quarter" : purchase.count() + " fat quarters")
                : length(purchase.size().height());
        return name(purchase.cloth()) + ": " + what + ".";
    }

    /** As it is sold: in quarters of a yard, or in metres. */
    private String length(Length length) {
        if (ruler.isMetric()) {
            long tenths = Rounding.UP.quotient(length.nm(), Length.cm(TENTHS).nm());
            return tenths / TENTHS + "." + tenths % TENTHS + " m";
        }
        long quarters = length.nm() / Length.inches(9).nm();
        String part = List.of("", "1/4", "1/2", "3/4").get((int) (quarters % 4));
        String whole = quarters < 4 ? "" : quarters / 4 + (part.isEmpty() ? "" : " ");
        return whole + part + (quarters > 4 ? " yards" : quarters == 4 ? " yard" : " of a yard");
    }

    private String title(Purchase.Goods goods) {
        return switch (goods) {
            case FAT_QUARTERS ->
                ruler.isMetric() ? "In fat quarters (45 × 50 cm at least)" : "In fat quarters (18 × 20 in at least)";
            case NARROW_BOLT ->
                ruler.isMetric()
                        ? "Off a bolt 110 cm wide (102 cm between the selvages)"
                        : "Off a bolt 44 in wide (40 in between the selvages)";
            case WIDE_BOLT ->
                ruler.isMetric()
                        ? "Off a bolt 150 cm wide (145 cm between the selvages)"
                        : "Off a bolt 60 in wide (58 in between the selvages)";
        };
    }
}
