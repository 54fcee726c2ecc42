package hearthcloth.photo.segment;

import boofcv.struct.image.GrayU8;
import hearthcloth.geometry.Point;
import hearthcloth.photo.image.BinaryMorphology;
import hearthcloth.photo.image.LabThumbnail;
import hearthcloth.photo.parameter.SegmentParameters;
import java.util.List;

/** What is of one colour round a place. */
public final class ColourRegion {

    /** The colour is the mean of this many coarse pixels to each side of the place. */
    private static final int AROUND = 4;

    /** Half the width of lines of another colour that do not divide it, such as a figure's, in coarse pixels. */
    private static final int CLOSING = 2;

    private ColourRegion() {}

    /**
     * The rim of the shape round a place, in raw pixels; empty where it runs off the picture or is lint.
     *
     * @param at in raw pixels
     * @param like the most that its colour differs from that at the place, in CIELAB units
     */
    public static List<Point> rim(Point at, double like, LabThumbnail smooth, SegmentParameters parameters) {
        double[] own = mean(at, smooth);
        GrayU8 mask = new GrayU8(smooth.width, smooth.height);
        for (int i = 0; i < mask.data.length; i++) {
            double off = 0;
            for (int c = 0; c < 3; c++) {
                off += (smooth.lab[c].data[i] - own[c]) * (smooth.lab[c].data[i] - own[c]);
            }
            mask.data[i] = (byte) (off < like * like ? 1 : 0);
        }
        GrayU8 solid = ForegroundMask.opened(
                BinaryMorphology.filled(BinaryMorphology.closed(mask, CLOSING)),
                parameters.foreground().opening());
        return MaskContours.of(solid, smooth, 0, 0).stream()
                .filter(blob -> !blob.cutOff() && blob.holds(at))
                .map(Blob::rim)
                .findFirst()
                .orElse(List.of());
    }

    private static double[] mean(Point at, LabThumbnail smooth) {
        int x = (int) (at.x() / smooth.step);
        int y = (int) (at.y() / smooth.step);
        double[] sum = new double[3];
        int count = 0;
        for (int v = Math.max(0, y - AROUND); v <= Math.min(smooth.height - 1, y + AROUND); v++) {
            for (int u = Math.max(0, x - AROUND); u <= Math.min(smooth.width - 1, x + AROUND); u++) {
                for (int c = 0; c < 3; c++) {
                    sum[c] += smooth.lab[c].data[v * smooth.width + u];
                }
                count++;
            }
        }
        for (int c = 0; c < 3; c++) {
            sum[c] /= Math.max(1, count);
        }
        return sum;
    }
}
