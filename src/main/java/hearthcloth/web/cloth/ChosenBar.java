package hearthcloth.web.cloth;

import hearthcloth.cloth.Laid;
import hearthcloth.cloth.Place;
import hearthcloth.measure.Length;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Size;
import hearthcloth.stash.Fabric;
import hearthcloth.web.drawn.ClothDrawing;
import hearthcloth.web.kit.Swatches;
import hearthcloth.words.designing.DesigningWords;
import java.util.List;
import java.util.Optional;

/** The bar or hearth that is chosen on the bench, with what can be chosen for it. */
public record ChosenBar(ClothView view) {

    /**
     * A fabric to choose for the chosen bar.
     *
     * @param now true where it is the one
     * @param enough what there is of it, in a few words
     * @param swatch its picture
     */
    public record Choice(Fabric fabric, boolean now, FabricAtHand enough, String swatch) {}

    /** The chosen bar or hearth. */
    public record Chosen(String title, String where, String width, boolean locked, List<Choice> choices) {

        public boolean hearth() {
            return width.isEmpty();
        }
    }

    Optional<Chosen> chosen() {
        boolean hearth = view.at().equals("hearth");
        int bar = view.number(view.at());
        if (!hearth && bar < 0) {
            return Optional.empty();
        }
        List<Fabric> now = hearth
                ? view.design().scheme().hearth()
                : view.design().scheme().bars().get(bar);
        Size needed = needed();
        Swatches swatches = new Swatches(view.stash().fabrics(), view.pictures());
        List<Choice> choices = view.stash().fabrics().stream()
                .map(fabric -> new Choice(
                        fabric,
                        now.size() == 1 && now.contains(fabric),
                        FabricAtHand.of(
                                view.stash(), fabric, needed, view.settings().voice()),
                        swatches.laid(fabric)))
                .toList();
        String width =
                hearth ? "" : view.settings().voice().number(view.rework().barCut(bar), Rounding.UP);
        boolean locked = view.document().bench().locked().contains(view.at());
        return Optional.of(
                new Chosen(words().barName(hearth ? "hearth" : "bar", view.at()), where(), width, locked, choices));
    }

    private DesigningWords words() {
        return DesigningWords.in(view.settings().pages());
    }

    /** What the chosen place is cut from: its width and, with what joins take, its length. */
    private Size needed() {
        Length across = Length.ZERO;
        Length along = Length.ZERO;
        for (Laid laid : view.cloth().laid()) {
            if (ClothDrawing.name(laid.patch().place()).equals(view.at())) {
                boolean upright = !(laid.patch().place() instanceof Place.Bar bar)
                        || bar.side().isUpright();
                across = across.max(upright ? laid.cut().width() : laid.cut().height());
                along = along.plus(upright ? laid.cut().height() : laid.cut().width());
            }
        }
        return new Size(across, along);
    }

    private String where() {
        if (view.at().equals("hearth")) {
            return words().barMiddle();
        }
        Place.Bar place =
                view.design().layout().slots().get(view.number(view.at())).place();
        return words().barWhere(String.valueOf(place.round()), place.side().name());
    }
}
