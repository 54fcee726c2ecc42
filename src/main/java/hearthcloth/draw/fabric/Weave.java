package hearthcloth.draw.fabric;

import hearthcloth.colour.Colour;
import hearthcloth.colour.tongue.ClothWords;
import hearthcloth.draw.picture.Bounds;
import hearthcloth.draw.picture.Mark;
import hearthcloth.draw.picture.Picture;
import hearthcloth.draw.picture.Sketch;
import hearthcloth.geometry.Point;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * How a fabric is woven, read from its words: threads laid over its colour or its print, as light and dark that let
 * shine through. It is drawn to the eye and not to scale, since no screen shows threads: a tile of four or five dots,
 * of which {@link #DOT} make a millimetre.
 */
public enum Weave {
    PLAIN {
        @Override
        void draw(Sketch sketch) {
            tint(sketch, new Bounds(0, 0, 2, 1), LIGHT, 0.16);
            tint(sketch, new Bounds(2, 2, 2, 1), LIGHT, 0.16);
            tint(sketch, new Bounds(0, 2, 1, 2), DARK, 0.1);
            tint(sketch, new Bounds(2, 0, 1, 2), DARK, 0.1);
        }
    },
    LINEN("linen", "hemp", "ramie", "flax") {
        @Override
        void draw(Sketch sketch) {
            SplittableRandom chance = new SplittableRandom(SLUBS);
            for (int i = 0; i < SLUBS; i++) {
                boolean across = chance.nextInt(2) == 0;
                double x = chance.nextInt(SLUBBED);
                double y = chance.nextInt(SLUBBED);
                double thick = chance.nextInt(5) < 2 ? 2 : 1;
                double length = Math.min(8 + chance.nextInt(18), SLUBBED - (across ? x : y));
                Bounds slub = new Bounds(x, y, across ? length : thick, across ? thick : length);
                tint(sketch, slub, chance.nextInt(2) == 0 ? LIGHT : DARK, 0.05 + 0.06 * chance.nextDouble());
            }
        }
    },
    TWILL("twill", "denim", "drill", "gabardine", "chino") {
        @Override
        void draw(Sketch sketch) {
            for (int i = -1; i < 2; i++) {
                double x = 5.0 * i;
                sketch.add(new Mark.Tint(
                        List.of(new Point(x, 5), new Point(x + 5, 0), new Point(x + 7, 0), new Point(x + 2, 5)),
                        DARK,
                        0.13));
            }
        }
    },
    CORD("corduroy", "needlecord", "cord", "velvet", "velveteen") {
        @Override
        void draw(Sketch sketch) {
            tint(sketch, new Bounds(0, 0, 2, 5), DARK, 0.17);
            tint(sketch, new Bounds(3, 0, 1, 5), LIGHT, 0.16);
        }
    };

    /** Dots to a millimetre of paper, which is shown near four pixels wide. */
    public static final double DOT = 4;

    private static final Colour LIGHT = Colour.of(0xffffff);
    private static final Colour DARK = Colour.of(0x000000);

    /** The side of linen's repeat, in dots, and the thick places of its threads in it (ours). */
    private static final int SLUBBED = 92;

    private static final int SLUBS = 26;

    private final String words;

    Weave(String... words) {
        this.words = String.join(" ", words);
    }

    abstract void draw(Sketch sketch);

    /** The first that the words name, else plain. */
    public static Weave named(String name) {
        for (String word : ClothWords.english(name).toLowerCase(Locale.ROOT).split("[^\\p{L}]+", -1)) {
            for (Weave weave : values()) {
                if (!word.isEmpty() && (" " + weave.words + " ").contains(" " + word + " ")) {
                    return weave;
                }
            }
        }
        return PLAIN;
    }

    /** One repeat of each layer, in dots. Linen is plain cloth with thick places in its threads. */
    public List<Picture> tiles() {
        Picture own = Objects.requireNonNull(Tiles.ALL.get(this));
        return this == LINEN ? List.of(Objects.requireNonNull(Tiles.ALL.get(PLAIN)), own) : List.of(own);
    }

    private Picture drawn() {
        double side = this == PLAIN ? 4 : this == LINEN ? SLUBBED : 5;
        Sketch sketch = new Sketch();
        draw(sketch);
        return sketch.finished(name().toLowerCase(Locale.ROOT), side, side);
    }

    /** Drawn once. */
    private static final class Tiles {
        static final Map<Weave, Picture> ALL =
                Stream.of(values()).collect(Collectors.toMap(weave -> weave, Weave::drawn));
    }

    private static void tint(Sketch sketch, Bounds at, Colour colour, double share) {
        sketch.add(new Mark.Tint(at.outline(), colour, share));
    }
}
