package hearthcloth.draw.fabric;

import hearthcloth.colour.Colour;
import hearthcloth.colour.Lab;
import hearthcloth.draw.picture.Picture;
import hearthcloth.draw.picture.Sketch;
import hearthcloth.stash.Fabric;
import hearthcloth.stash.FabricPattern;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;

/**
 * One repeat of a fabric, drawn from its words and its colour, in millimetres of cloth, so that it is the same and to
 * scale wherever the fabric is drawn. The same name always gives the same picture. It stands for her own photograph
 * where there is none, and makes no claim to be the real print.
 */
public final class FabricTile {

    private static final double INCH = 25.4;
    private static final double MOST_CHROMA = 40;

    private FabricTile() {}

    /** The repeat; empty for plain cloth. Two colours without a motif ("green and brown linen") are striped. */
    public static Optional<Picture> of(Fabric fabric) {
        List<Colour> named = Colour.allNamed(fabric.name());
        boolean isTwo = named.size() > 1 && isAsNamed(fabric);
        Optional<Motif> motif = Motif.named(fabric.name());
        if (motif.isEmpty() && isTwo) {
            motif = Optional.of(Motif.STRIPE);
        }
        return motif.map(figure -> {
            SplittableRandom chance = new SplittableRandom(fabric.name().hashCode());
            double side = INCH * figure.repeatInches() * FabricPattern.size(fabric.name());
            Sketch sketch = new Sketch();
            figure.draw(sketch, side, isTwo ? both(named, figure) : inks(fabric.colour(), figure, chance), chance);
            return sketch.finished(fabric.name(), side, side);
        });
    }

    /** Whether the fabric's colour is what its name says, and not one she chose. */
    private static boolean isAsNamed(Fabric fabric) {
        return Colour.named(fabric.name())
                .filter(mean -> mean.lab().difference(fabric.colour().lab()) < 12)
                .isPresent();
    }

    /** Both named colours; where they cross in a check, their mean. */
    private static Motif.Inks both(List<Colour> named, Motif motif) {
        Colour one = named.get(0);
        Colour two = named.get(1);
        Colour mean = one.lab().mixed(two.lab(), 0.5).toColour();
        return motif == Motif.CHECK ? new Motif.Inks(mean, one, two) : new Motif.Inks(one, two, mean);
    }

    /**
     * Colours from one: a check a shade off to either side, so that from across the room it is still that colour; a
     * figure well lighter or darker than its ground, its hue turned a little by the name.
     */
    private static Motif.Inks inks(Colour ground, Motif motif, SplittableRandom chance) {
        Lab lab = ground.lab();
        if (motif == Motif.CHECK || motif == Motif.STRIPE) {
            return new Motif.Inks(
                    ground,
                    ground.shaded(-FabricPattern.STRIPE_LIGHTNESS),
                    ground.shaded(FabricPattern.STRIPE_LIGHTNESS));
        }
        double lightness = lab.lightness()
                + (lab.lightness() > 55 ? -FabricPattern.FIGURE_LIGHTNESS : FabricPattern.FIGURE_LIGHTNESS);
        double hue = Math.toRadians(lab.hue() + 60 * chance.nextDouble() - 30);
        double chroma = Math.min(MOST_CHROMA, Math.max(12, lab.chroma()));
        Colour figure = new Lab(lightness, chroma * Math.cos(hue), chroma * Math.sin(hue)).toColour();
        return new Motif.Inks(ground, figure, ground.shaded(12));
    }
}
