package hearthcloth.draw.cloth;

import hearthcloth.cloth.Rect;
import hearthcloth.draw.picture.Affine;
import hearthcloth.draw.picture.Bounds;
import hearthcloth.measure.Length;
import hearthcloth.measure.Size;
import hearthcloth.measure.Unit;
import hearthcloth.words.speech.Voice;
import java.util.Locale;

/** How many millimetres of cloth one millimetre of paper stands for. */
public record DrawingScale(double one) {

    /** The mantissas of round scales. */
    private static final double[] STEPS = {
        1, 1.1, 1.2, 1.3, 1.4, 1.5, 1.6, 1.8, 2, 2.2, 2.5, 2.8, 3, 3.5, 4, 4.5, 5, 5.5, 6, 7, 8, 9
    };

    /**
     * The largest round scale, not above real size, at which {@code size} fits into {@code width} by {@code height}
     * millimetres.
     */
    static DrawingScale fitting(Size size, double width, double height) {
        double needed =
                Math.max(size.width().in(Unit.MILLIMETRE) / width, size.height().in(Unit.MILLIMETRE) / height);
        for (double power = 1; ; power *= 10) {
            for (double step : STEPS) {
                if (step * power >= needed - 1e-9) {
                    return new DrawingScale(step * power);
                }
            }
        }
    }

    /** The next smaller round scale. */
    DrawingScale smaller() {
        for (double power = 1; ; power *= 10) {
            for (double step : STEPS) {
                if (step * power > one + 1e-9) {
                    return new DrawingScale(step * power);
                }
            }
        }
    }

    double mm(Length length) {
        return length.in(Unit.MILLIMETRE) / one;
    }

    /** The place of {@code rect} on paper when its origin lies at {@code x}, {@code y}. */
    Bounds bounds(Rect rect, double x, double y) {
        return new Bounds(x + mm(rect.x()), y + mm(rect.y()), mm(rect.width()), mm(rect.height()));
    }

    /** The cloth's millimetres on paper when its origin lies at {@code x}, {@code y}. */
    Affine laid(double x, double y) {
        return Affine.scaled(1 / one, x, y);
    }

    /** The scale as printed: {@code 1 : 5}. */
    public String word(Voice voice) {
        String number = String.format(Locale.ROOT, "%.2f", one).replaceAll("\\.?0+$", "");
        return "1 : " + voice.local(number);
    }
}
