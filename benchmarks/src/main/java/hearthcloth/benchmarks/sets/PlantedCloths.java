package hearthcloth.benchmarks.sets;

import hearthcloth.cloth.making.Hem;
import hearthcloth.cloth.making.Making;
import hearthcloth.colour.Colour;
import hearthcloth.cutstock.piecing.PiecingJob;
import hearthcloth.cutstock.piecing.Scrap;
import hearthcloth.cutstock.piecing.WishedCloth;
import hearthcloth.measure.Length;
import hearthcloth.measure.Ruler;
import hearthcloth.measure.Size;
import hearthcloth.plan.model.Patchwork;
import hearthcloth.plan.model.PiecingRules;
import hearthcloth.plan.model.Wish;
import hearthcloth.plan.together.Asked;
import hearthcloth.stash.Fabric;
import hearthcloth.stash.Piece;
import hearthcloth.stash.Stash;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A problem of free piecing as a stash and wishes, its units eighths of an inch. */
public record PlantedCloths(Stash stash, List<Asked> asked) {

    /**
     * The problem in cloth.
     *
     * @throws BadFileException where it is sewn otherwise than with 1/4 + 1/2 in and a hem of 1/2 in
     */
    public static PlantedCloths of(PiecingJob job) {
        var allowances = job.allowances();
        if (allowances.narrow() != 2 || allowances.wide() != 4 || allowances.hem() != 4) {
            throw new BadFileException("kits are sewn with \"allow 2 4 4\"; " + allowances + " is not that.");
        }
        List<Piece> pieces = new ArrayList<>();
        for (Scrap scrap : job.scraps()) {
            int row = pieces.size() + 1;
            Size size = new Size(eighths(scrap.width()), eighths(scrap.height()));
            pieces.add(new Piece(String.valueOf(row), fabric(scrap), size, Piece.Washed.UNKNOWN, row));
        }
        List<Asked> asked = new ArrayList<>();
        for (WishedCloth cloth : job.cloths()) {
            asked.add(asked(asked.size() + 1, cloth, job.terms().least()));
        }
        return new PlantedCloths(new Stash(pieces), List.copyOf(asked));
    }

    private static Fabric fabric(Scrap scrap) {
        return new Fabric(
                "Fabric " + scrap.fabric() + (scrap.turnable() ? "" : " with a nap"),
                Colour.of(0x203040 * (1 + scrap.fabric())),
                Fabric.Faces.SAME,
                scrap.turnable() ? Fabric.Nap.ANY : Fabric.Nap.LENGTHWISE);
    }

    private static Asked asked(int number, WishedCloth cloth, long least) {
        Length quarter = Length.inches(1, 4);
        Wish wish = new Wish(
                new Wish.Target(Optional.of(new Size(eighths(cloth.width()), eighths(cloth.height()))), false),
                new Wish.Shape(Optional.empty(), List.of(), Optional.empty(), Optional.empty()),
                Making.inches().withHem(Hem.square(quarter, quarter)),
                new PiecingRules(eighths(least), Length.inches(1, 2), 4),
                new Wish.Preferences(List.of(), 1, 1, Ruler.EIGHTHS));
        Patchwork asTheyAre = new Patchwork(Optional.empty(), true, Patchwork.ScrapRule.AS_THEY_ARE);
        return new Asked("Cloth " + number, wish, Optional.of(asTheyAre));
    }

    private static Length eighths(long count) {
        return Length.inches(count, 8);
    }
}
