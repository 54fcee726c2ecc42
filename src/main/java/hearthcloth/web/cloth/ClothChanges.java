package hearthcloth.web.cloth;

import hearthcloth.cloth.layout.Order;
import hearthcloth.cloth.making.Face;
import hearthcloth.cloth.making.Hem;
import hearthcloth.cloth.making.Making;
import hearthcloth.cloth.making.SeamKind;
import hearthcloth.measure.Length;
import hearthcloth.measure.MeasureException;
import hearthcloth.measure.Measures;
import hearthcloth.measure.Size;
import hearthcloth.measure.Unit;
import hearthcloth.plan.model.Design;
import hearthcloth.plan.model.PiecingRules;
import hearthcloth.plan.rework.DesignEdits;
import hearthcloth.stash.Fabric;
import hearthcloth.stash.Stash;
import hearthcloth.words.designing.DesigningWords;
import hearthcloth.work.Purpose;
import java.util.List;
import java.util.function.Function;

/**
 * From a posted form to a changed design. Every field is read in her unit; what cannot be is refused with a sentence.
 *
 * @param field the form's field of that name, empty where it is missing
 */
record ClothChanges(ClothView view, Stash stash, Unit bare, Function<String, String> field) {

    /** Allowances beyond this are a slip of the unit. */
    private static final Length WIDEST = Length.cm(10);

    /** A change and what it is called, for "Undo …". */
    record Change(String label, Design design) {}

    /**
     * What the form asks for.
     *
     * @throws MeasureException naming the field and the mend
     */
    Change read() {
        try {
            return change(field.apply("what"));
        } catch (MeasureException e) {
            throw e;
        } catch (IllegalArgumentException e) {
            throw new MeasureException(words().wrongCloth());
        }
    }

    private DesigningWords words() {
        return DesigningWords.in(view.settings().pages());
    }

    private Change change(String what) {
        DesignEdits rework = new DesignEdits(view.saved().document().design());
        return switch (what) {
            case "hearth" -> new Change(words().deedHearth(), rework.hearth(hearth()));
            case "round" -> round(rework);
            case "bar" ->
                new Change(words().deedBar(view.at()), rework.bars(List.of(bar()), stepped(rework.barCut(bar()))));
            case "rounds" -> rounds(rework);
            case "order" -> new Change(words().deedOrder(), rework.order(order()));
            case "fabric" -> fabric(rework);
            case "swap" -> new Change(words().deedSwap(), rework.swapped(named("one"), named("other")));
            case "seam", "hem" ->
                new Change(
                        words().deedMaking(what),
                        rework.making(making(rework.design().making(), what)));
            case "fell" ->
                new Change(
                        words().deedFell(),
                        rework.making(rework.design()
                                .making()
                                .felledOn(field.apply("fell").equals("front") ? Face.FRONT : Face.BACK)));
            case "rules" ->
                new Change(
                        words().deedRules(), rework.rules(rules(rework.design().rules())));
            default -> throw new MeasureException(words().wrongForm());
        };
    }

    private Change round(DesignEdits rework) {
        int round = whole("round", 1, rework.rounds());
        return new Change(words().deedRound(String.valueOf(round)), rework.bars(rework.barsOf(round), width()));
    }

    private Change rounds(DesignEdits rework) {
        int rounds = whole("rounds", 1, DesignEdits.MOST_ROUNDS);
        return new Change(words().deedRounds(rounds), rework.rounds(rounds));
    }

    private Change fabric(DesignEdits rework) {
        List<Fabric> allowed = field.apply("fabric").isEmpty() ? stash.fabrics() : List.of(named("fabric"));
        String fabric = allowed.size() == 1 ? allowed.get(0).name() : words().deedAnyFabric();
        Design design = view.at().equals("hearth") ? rework.hearthFabrics(allowed) : rework.fabrics(bar(), allowed);
        return new Change(words().deedFabric(fabric, words().place(view.at(), view.at())), design);
    }

    private int bar() {
        int bar = view.number(view.at());
        if (bar < 0) {
            throw new MeasureException(words().wrongBar());
        }
        return bar;
    }

    private Fabric named(String name) {
        String given = field.apply(name);
        return stash.fabric(given).orElseThrow(() -> new MeasureException(words().wrongFabric(given)));
    }

    private Size hearth() {
        return new Size(Measures.length(field.apply("width"), bare), Measures.length(field.apply("height"), bare));
    }

    /** The width that is written, or a mark more or less than it is now. */
    private Length stepped(Length now) {
        String by = field.apply("by");
        if (by.isEmpty()) {
            return width();
        }
        Length step = view.settings().ruler().step();
        return by.equals("-1") ? now.minus(step).max(step) : now.plus(step);
    }

    private Length width() {
        Length width = Measures.length(field.apply("width"), bare);
        if (width.isMoreThan(Purpose.MOST)) {
            throw new MeasureException(words().wrongWide(field.apply("width")));
        }
        return width;
    }

    private int whole(String name, int least, int most) {
        String given = field.apply(name);
        if (!given.matches("\\d{1,4}") || Integer.parseInt(given) < least || Integer.parseInt(given) > most) {
            throw new MeasureException(words().wrongWhole(String.valueOf(least), String.valueOf(most), given));
        }
        return Integer.parseInt(given);
    }

    private Order order() {
        return Order.named(field.apply("order"))
                .orElseThrow(() -> new MeasureException(words().wrongOrder(field.apply("order"))));
    }

    private Making making(Making was, String what) {
        if (what.equals("hem")) {
            List<Length> folds = two("hem");
            Hem.Corner corner = field.apply("corner").equals("mitred") ? Hem.Corner.MITRED : Hem.Corner.SQUARE;
            return was.withHem(new Hem(folds.get(0), folds.get(1), corner));
        }
        String name = field.apply("seam");
        if (!name.isEmpty() && !name.equals(was.seam().name())) {
            return was.withSeam(SeamKind.named(name).orElseThrow(() -> new MeasureException(words().wrongSeam(name))));
        }
        List<Length> both = two("allowances");
        if (!both.get(1).isMoreThan(both.get(0))) {
            throw new MeasureException(words().wrongWrap());
        }
        return was.withSeam(SeamKind.felled(both.get(0), both.get(1)));
    }

    private List<Length> two(String name) {
        List<Length> lengths = Measures.lengths(field.apply(name).replace("+", " x "), bare);
        if (lengths.size() != 2) {
            throw new MeasureException(words().wrongTwo(name, field.apply(name)));
        }
        for (Length length : lengths) {
            if (!length.isPositive() || length.isMoreThan(WIDEST)) {
                throw new MeasureException(words().wrongPart());
            }
        }
        return lengths;
    }

    private PiecingRules rules(PiecingRules was) {
        Length least = Measures.length(field.apply("least"), bare);
        if (!least.isPositive() || least.isMoreThan(Length.cm(100))) {
            throw new MeasureException(words().wrongLeast());
        }
        return new PiecingRules(least, was.clearance(), whole("joins", 0, 40));
    }
}
