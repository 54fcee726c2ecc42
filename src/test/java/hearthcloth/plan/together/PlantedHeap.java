package hearthcloth.plan.together;

import hearthcloth.cloth.making.Hem;
import hearthcloth.cloth.making.Making;
import hearthcloth.cloth.making.SeamKind;
import hearthcloth.colour.Colour;
import hearthcloth.measure.Length;
import hearthcloth.measure.Ruler;
import hearthcloth.measure.Size;
import hearthcloth.plan.model.OpenShape;
import hearthcloth.plan.model.Patchwork;
import hearthcloth.plan.model.PiecingRules;
import hearthcloth.plan.model.Wish;
import hearthcloth.stash.Fabric;
import hearthcloth.stash.Piece;
import hearthcloth.stash.Stash;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/** A heap that was cut from cloths of known sizes, so that all of them can be made from it; lengths in eighths of an inch. */
record PlantedHeap(Stash stash, List<Asked> asked) {

    static PlantedHeap read(String name) throws IOException {
        List<Piece> pieces = new ArrayList<>();
        List<Size> sizes = new ArrayList<>();
        Length least = Length.ZERO;
        boolean scraps = false;
        for (String line :
                text(name).lines().filter(each -> !each.startsWith("#")).toList()) {
            String[] words = line.strip().split("\\s+");
            if (scraps) {
                pieces.add(piece(words, pieces.size() + 1));
            } else if (words[0].equals("target")) {
                sizes.add(new Size(eighths(words[1]), eighths(words[2])));
            } else if (words[0].equals("allow")) {
                // the making below has these allowances: ¼ and ½ in, a hem of ½ in
                if (!line.equals("allow 2 4 4")) {
                    throw new IllegalArgumentException(line);
                }
            } else if (words[0].equals("least")) {
                least = eighths(words[1]);
            } else {
                scraps = words[0].equals("scraps");
            }
        }
        Length shown = least;
        List<Asked> asked = new ArrayList<>();
        for (int i = 0; i < sizes.size(); i++) {
            asked.add(asked("Cloth " + (i + 1), sizes.get(i), shown));
        }
        return new PlantedHeap(new Stash(pieces), asked);
    }

    private static Asked asked(String name, Size size, Length least) {
        Length quarter = Length.inches(1, 4);
        Making making = Making.inches().withSeam(SeamKind.felledInches()).withHem(Hem.square(quarter, quarter));
        Wish wish = new Wish(
                new Wish.Target(Optional.of(size), false),
                OpenShape.shape(),
                making,
                new PiecingRules(least, Length.inches(1, 2), 4),
                new Wish.Preferences(List.of(), 1, 1, Ruler.EIGHTHS));
        Patchwork asTheyAre = new Patchwork(Optional.empty(), true, Patchwork.ScrapRule.AS_THEY_ARE);
        return new Asked(name, wish, Optional.of(asTheyAre));
    }

    private static Piece piece(String[] words, int row) {
        boolean turnable = words[3].equals("1");
        Fabric fabric = new Fabric(
                "Fabric " + words[2] + (turnable ? "" : " with a nap"),
                Colour.of(0x203040 * (1 + Integer.parseInt(words[2]))),
                Fabric.Faces.SAME,
                turnable ? Fabric.Nap.ANY : Fabric.Nap.LENGTHWISE);
        return new Piece(
                String.valueOf(row), fabric, new Size(eighths(words[0]), eighths(words[1])), Piece.Washed.UNKNOWN, row);
    }

    private static Length eighths(String count) {
        return Length.inches(Long.parseLong(count), 8);
    }

    private static String text(String name) throws IOException {
        try (InputStream in = Objects.requireNonNull(PlantedHeap.class.getResourceAsStream(name), name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
