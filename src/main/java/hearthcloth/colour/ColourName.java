package hearthcloth.colour;

/**
 * Plain English names for people, such as "dark green", "pale yellow" or "grey".
 *
 * <p>A name is read off Lab: a hue word by hue, chroma and lightness, then a tone. The bands between names are ours,
 * since no standard draws them (docs/sources.md#cloth-words); they are set by the CSS colours whose name ends in a
 * basic colour word, most of which keep that word (the test lists those that do not). Spelling is British.
 */
public final class ColourName {

    /** Colours with a smaller chroma are called by a grey (ours). */
    private static final double GREY_CHROMA = 6;
    /** Colours with a smaller chroma are called greyish (ours). */
    private static final double GREYISH_CHROMA = 15;

    private ColourName() {}

    /** The name of a colour, one to three words in lower case. */
    public static String of(Colour colour) {
        Lab lab = colour.lab();
        if (lab.chroma() < GREY_CHROMA) {
            return neutral(lab.lightness());
        }
        String hue = hueWord(lab);
        String tone = tone(lab, hue);
        return tone.isEmpty() ? hue : tone + " " + hue;
    }

    private static String neutral(double lightness) {
        if (lightness >= 93) {
            return "white";
        }
        if (lightness >= 75) {
            return "light grey";
        }
        if (lightness >= 40) {
            return "grey";
        }
        return lightness >= 14 ? "dark grey" : "black";
    }

    private static String hueWord(Lab lab) {
        double hue = lab.hue();
        if (hue < 20 || hue >= 340) {
            return lab.lightness() >= 42 ? "pink" : "wine red";
        }
        if (hue < 52) {
            return redSide(lab);
        }
        if (hue < 112) {
            return isUndyed(lab) ? undyed(lab.lightness()) : yellowSide(lab);
        }
        if (hue < 126) {
            return lab.lightness() < 60 ? "olive green" : lab.chroma() < 30 ? "green" : "yellow green";
        }
        if (hue < 180) {
            return "green";
        }
        if (hue < 208) {
            return lab.lightness() < 60 ? "teal" : "turquoise";
        }
        return hue < purpleFrom(lab.lightness()) ? "blue" : "purple";
    }

    /**
     * The hue angle, in degrees, from which blue is called purple. Blue bends towards purple as it gets darker: full
     * blue is at 306 degrees, lavender at 291.
     */
    private static double purpleFrom(double lightness) {
        return 308 - 0.4 * Math.max(0, lightness - 40);
    }

    private static String redSide(Lab lab) {
        double lightness = lab.lightness();
        double chroma = lab.chroma();
        if (lightness >= 62) {
            return chroma >= 60 && lab.hue() < 42 ? "red" : chroma >= 45 && lab.hue() >= 42 ? "orange" : "pink";
        }
        if (lab.hue() >= 45 && lightness >= 45 && chroma >= 55 && chroma < 85) {
            return "orange";
        }
        boolean dull = chroma < (lab.hue() < 30 ? 0.45 : lab.hue() < 36 ? 0.8 : 1.4) * lightness;
        return dull ? "brown" : "red";
    }

    private static String yellowSide(Lab lab) {
        double lightness = lab.lightness();
        double chroma = lab.chroma();
        if (lab.hue() < 76) {
            return (lightness >= 45 && chroma >= 55) || lightness >= 82 ? "orange" : "brown";
        }
        if (lab.hue() < 92) {
            return lightness >= 82 || (lightness >= 56 && chroma >= 45) ? "yellow" : "brown";
        }
        return lightness >= 70 ? "yellow" : "olive green";
    }

    private static boolean isUndyed(Lab lab) {
        double most = lab.hue() < 105 ? 22 : 14;
        return lab.hue() >= 60 && lab.chroma() < most && lab.lightness() >= 62;
    }

    private static String undyed(double lightness) {
        return lightness >= 88 ? "cream" : "beige";
    }

    private static String tone(Lab lab, String hue) {
        double lightness = lab.lightness();
        return switch (hue) {
            case "cream", "beige" -> "";
            case "brown" -> lightness >= 58 ? "light" : lightness < 30 ? "dark" : "";
            case "olive green", "teal" -> lightness < 36 ? "dark" : "";
            case "yellow", "orange" -> glowing(lab, hue.equals("yellow") ? 75 : 60);
            case "pink" -> lightness < 58 && lab.chroma() >= 40 ? "dark" : common(lab, 0);
            case "wine red" -> lightness < 22 ? "dark" : "";
            case "blue", "purple" -> common(lab, 26);
            default -> common(lab, 40);
        };
    }

    /** Yellow and orange are light by nature: what is dark for them would be light for blue. */
    private static String glowing(Lab lab, double darkBelow) {
        if (lab.lightness() < darkBelow) {
            return "dark";
        }
        return lab.chroma() < 50 ? "pale" : lab.chroma() > 85 ? "bright" : "";
    }

    private static String common(Lab lab, double darkBelow) {
        double lightness = lab.lightness();
        if (lightness >= 80 && lab.chroma() < 40) {
            return "pale";
        }
        if (lightness < darkBelow) {
            return "dark";
        }
        if (lab.chroma() > 85) {
            return "bright";
        }
        if (lab.chroma() < GREYISH_CHROMA) {
            return "greyish";
        }
        return lightness >= 72 ? "light" : "";
    }
}
