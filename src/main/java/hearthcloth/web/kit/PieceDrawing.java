package hearthcloth.web.kit;

import hearthcloth.measure.Length;
import hearthcloth.measure.Size;
import hearthcloth.measure.Unit;
import hearthcloth.stash.Fabric;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Map;

/**
 * A piece of fabric drawn to scale, in pixels.
 *
 * @param fill a colour or the address of a pattern in the same drawing
 * @param picture address of her picture of the fabric, tiled; empty where there is none
 * @param tile how wide the picture is
 * @param behind how many more are shown behind it
 */
public record PieceDrawing(
        String width, String height, String fill, String picture, String tile, int behind, String id) {

    /** How far each one behind stands out, in pixels. */
    private static final int STEP = 3;

    private static final int MOST_BEHIND = 3;

    /**
     * Draws it.
     *
     * @param scale pixels for a millimetre
     * @param across for each fabric with a picture, how much cloth that shows
     * @param id unique on the page
     */
    public static PieceDrawing of(
            Size size, Fabric fabric, int count, double scale, Map<String, Length> across, String id) {
        Length shown = across.get(fabric.name());
        String picture = shown == null ? "" : address(fabric.name());
        return new PieceDrawing(
                number(size.width().in(Unit.MILLIMETRE) * scale),
                number(size.height().in(Unit.MILLIMETRE) * scale),
                shown == null ? fabric.colour().hex() : "url(#" + id + ")",
                picture,
                shown == null ? "0" : number(shown.in(Unit.MILLIMETRE) * scale),
                Math.min(MOST_BEHIND, count - 1),
                id);
    }

    /** The scale at which {@code longest} takes {@code pixels}, never larger than two pixels to a millimetre. */
    public static double scale(Length longest, double pixels) {
        return Math.min(2, pixels / Math.max(1, longest.in(Unit.MILLIMETRE)));
    }

    public static String address(String fabric) {
        return "/stash/swatch?fabric=" + URLEncoder.encode(fabric, StandardCharsets.UTF_8);
    }

    /** With room for those behind and for the outline. */
    public String wholeWidth() {
        return number(Double.parseDouble(width) + STEP * behind + 2);
    }

    public String wholeHeight() {
        return number(Double.parseDouble(height) + STEP * behind + 2);
    }

    /** Where the one {@code i} behind begins. */
    public int at(int i) {
        return STEP * i + 1;
    }

    private static String number(double pixels) {
        return String.format(Locale.ROOT, "%.1f", Math.max(1, pixels));
    }
}
