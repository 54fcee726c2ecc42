package hearthcloth.web.cloth;

import hearthcloth.cloth.Cloth;
import hearthcloth.cloth.layout.Layout;
import hearthcloth.cloth.layout.Order;
import hearthcloth.cloth.making.Face;
import hearthcloth.colour.ColourVision;
import hearthcloth.measure.Length;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Ruler;
import hearthcloth.measure.Size;
import hearthcloth.plan.model.Design;
import hearthcloth.plan.model.Plan;
import hearthcloth.plan.model.PlanFigures;
import hearthcloth.plan.rework.DesignEdits;
import hearthcloth.plan.rework.DesignFit;
import hearthcloth.stash.Fabric;
import hearthcloth.stash.Stash;
import hearthcloth.store.SavedCloth;
import hearthcloth.web.drawn.BenchDrawing;
import hearthcloth.web.drawn.ClothDrawing;
import hearthcloth.web.gift.HeldGift;
import hearthcloth.web.kit.Settings;
import hearthcloth.web.kit.Swatches;
import hearthcloth.words.designing.DesigningWords;
import hearthcloth.words.speech.Voice;
import hearthcloth.work.Project;
import hearthcloth.work.Purpose;
import hearthcloth.wrap.Capacity;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * A cloth as its page shows it: everything is read off the design and its plan.
 *
 * @param pictures for each fabric of which she has a picture, how much cloth that shows
 * @param at the bar or hearth that is chosen; empty for none
 */
public record ClothView(
        SavedCloth saved, Stash stash, Map<String, Length> pictures, Settings settings, Purpose wished, String at) {

    /** One round's field: its number, the width its bars are cut, and whether they differ among themselves. */
    public record Round(int number, String width, boolean mixed) {}

    /** A fabric in the cloth, with the bars it is in and its picture. */
    public record Used(Fabric fabric, String where, String swatch) {}

    Project document() {
        return saved.document();
    }

    Design design() {
        return document().design();
    }

    DesignEdits rework() {
        return new DesignEdits(design());
    }

    private DesigningWords words() {
        return DesigningWords.in(settings.pages());
    }

    private Voice voice() {
        return settings.voice();
    }

    Ruler ruler() {
        return settings.ruler();
    }

    public boolean made() {
        return document().plan().isPresent();
    }

    /** What is short; empty where it can be made. */
    public List<String> lacking() {
        return document().lacking().stream()
                .map(one -> one.in(settings.voice()))
                .toList();
    }

    /** Whether it has a hearth and bars that can be changed one by one. */
    public boolean barred() {
        return !document().isFree();
    }

    public boolean editable() {
        return document().life().stage() == Project.Stage.DESIGNED;
    }

    /** True where something is still to cut that was asked for while sewing. */
    public boolean isRecut() {
        return document().life().stage() == Project.Stage.RECUT;
    }

    /** True once its last step is sewn. */
    public boolean isSewn() {
        return document().life().stage() == Project.Stage.SEWN;
    }

    Cloth cloth() {
        return document().plan().map(Plan::cloth).orElseGet(() -> DesignFit.unfitted(design()));
    }

    private Swatches swatches() {
        return new Swatches(fabrics(), pictures);
    }

    /** Every fabric the drawing may need. */
    List<Fabric> fabrics() {
        Map<String, Fabric> found = new LinkedHashMap<>();
        document().plan().ifPresent(plan -> plan.fabrics().forEach(fabric -> found.putIfAbsent(fabric.name(), fabric)));
        if (!made()) {
            design().scheme().hearth().forEach(fabric -> found.putIfAbsent(fabric.name(), fabric));
            design().scheme().bars().forEach(bar -> bar.forEach(fabric -> found.putIfAbsent(fabric.name(), fabric)));
        }
        return List.copyOf(found.values());
    }

    public String front() {
        if (!barred()) {
            return still(Face.FRONT);
        }
        return BenchDrawing.of(
                cloth(),
                swatches(),
                new BenchDrawing.Said(words().altFront(), voice().printing().labelHearth()),
                new BenchTargets(this)::of);
    }

    public String back() {
        return ClothDrawing.large(cloth(), Face.BACK, swatches(), words().altFace("BACK", saved.name(), size()));
    }

    /** How light and dark lie, in five numbered steps. */
    public String values() {
        return ClothDrawing.values(cloth(), swatches(), words().altValues(saved.name()));
    }

    /** The front as eyes see it that lack one kind of cone. */
    String seenBy(ColourVision eyes) {
        return ClothDrawing.seenBy(
                cloth(), swatches(), words().altEyes(words().eyes(eyes.name()), saved.name(), size()), eyes);
    }

    /** A small picture to choose the large one by; a file of its own but for her photographs of fabrics. */
    String small(ClothBench.Look look) {
        return look == ClothBench.Look.VALUES
                ? values()
                : ClothDrawing.small(cloth(), look == ClothBench.Look.BACK ? Face.BACK : Face.FRONT, swatches());
    }

    /** A face to look at. */
    String still(Face face) {
        String words = words().altFace(face.name(), saved.name(), size());
        return ClothDrawing.still(cloth(), face, swatches(), words);
    }

    /** The bar called so, by number in sewing order; −1 for the hearth or an unknown name. */
    int number(String name) {
        List<Layout.Slot> slots = design().layout().slots();
        for (int i = 0; i < slots.size(); i++) {
            if (slots.get(i).place().bar().equals(name)) {
                return i;
            }
        }
        return -1;
    }

    public String size() {
        return written(cloth().finished());
    }

    /** The size it is planned to have. */
    String planned() {
        return written(design().layout().finished());
    }

    private String written(Size size) {
        return size.isSquare()
                ? words().sizeSquare(voice().write(size.width(), Rounding.NEAREST))
                : voice().write(size, Rounding.NEAREST);
    }

    /** Whether it ties what she wants to wrap, in a sentence; empty where she said nothing. */
    public String fits() {
        return wished.fits(cloth().finished(), settings.voice());
    }

    /** The form for seam, hem and piecing. */
    public ClothSewing sewing() {
        return new ClothSewing(design(), settings.voice());
    }

    public List<ClothFigures.Line> figures() {
        return all().lines();
    }

    ClothFigures all() {
        return new ClothFigures(cloth(), document().plan(), settings.voice());
    }

    /** What it ties at most, one line a tie that suits. */
    public List<HeldGift> holds() {
        return Capacity.of(cloth().finished(), Purpose.tail(ruler()).usual()).stream()
                .map(capacity -> HeldGift.of(capacity, settings.voice()))
                .filter(HeldGift::fits)
                .toList();
    }

    public String hearthWidth() {
        return voice().number(rework().hearthCut().width(), Rounding.UP);
    }

    public String hearthHeight() {
        return voice().number(rework().hearthCut().height(), Rounding.UP);
    }

    public List<Round> rounds() {
        List<Round> rounds = new ArrayList<>();
        for (int round = 1; round <= rework().rounds(); round++) {
            List<String> widths = rework().barsOf(round).stream()
                    .map(i -> voice().number(rework().barCut(i), Rounding.UP))
                    .distinct()
                    .toList();
            rounds.add(new Round(round, widths.get(0), widths.size() > 1));
        }
        return rounds;
    }

    public Order order() {
        return design().order();
    }

    public List<Used> used() {
        Swatches swatches = swatches();
        Map<String, Set<String>> where = new LinkedHashMap<>();
        for (var patch : cloth().patches()) {
            where.computeIfAbsent(patch.fabric(), name -> new LinkedHashSet<>()).add(ClothDrawing.name(patch.place()));
        }
        return fabrics().stream()
                .filter(fabric -> where.containsKey(fabric.name()))
                .map(fabric -> new Used(
                        fabric, String.join(", ", where.getOrDefault(fabric.name(), Set.of())), swatches.laid(fabric)))
                .toList();
    }

    /** What all swatches on the bench are filled with; stands once on the page. */
    public String sheet() {
        Map<String, Fabric> all = new LinkedHashMap<>();
        stash.fabrics().forEach(fabric -> all.put(fabric.name(), fabric));
        fabrics().forEach(fabric -> all.put(fabric.name(), fabric));
        return new Swatches(List.copyOf(all.values()), pictures).sheet();
    }

    public Optional<ChosenBar.Chosen> chosen() {
        return new ChosenBar(this).chosen();
    }

    /** What has changed since {@code before}, in one line to be spoken. */
    String since(ClothView before) {
        List<String> said = new ArrayList<>();
        if (!before.size().equals(size())) {
            said.add(words().sinceSize(before.size(), size()));
        }
        if (!made()) {
            said.add(words().sinceLacking(String.join(" ", lacking())));
            return voice().sentences(said);
        }
        PlanFigures now = document().plan().orElseThrow().figures();
        if (before.made()) {
            PlanFigures was = before.document().plan().orElseThrow().figures();
            if (was.joins() != now.joins()) {
                said.add(words().sinceJoins(String.valueOf(was.joins()), String.valueOf(now.joins())));
            }
            if (was.areas().lostPercent() != now.areas().lostPercent()) {
                said.add(words().sinceLost(
                                percent(was.areas().lostPercent()),
                                percent(now.areas().lostPercent())));
            }
        } else {
            said.add(words().sinceEnough());
        }
        if (!fits().isEmpty() && !fits().equals(before.fits())) {
            said.add(fits());
        }
        return said.isEmpty() ? words().sinceSame() : voice().sentences(said);
    }

    private String percent(long number) {
        return voice().measuring().percent(String.valueOf(number));
    }
}
