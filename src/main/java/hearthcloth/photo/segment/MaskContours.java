package hearthcloth.photo.segment;

import boofcv.alg.filter.binary.BinaryImageOps;
import boofcv.alg.filter.binary.Contour;
import boofcv.struct.ConnectRule;
import boofcv.struct.image.GrayU8;
import hearthcloth.geometry.Point;
import hearthcloth.photo.image.LabThumbnail;
import java.util.ArrayList;
import java.util.List;

/** The shapes of a mask, each as its rim in raw pixels. */
final class MaskContours {

    /** A rim of fewer coarse pixels is lint. */
    private static final int LEAST_RIM = 30;

    private MaskContours() {}

    /**
     * The shapes of a mask that covers the picture or a part of it.
     *
     * @param left the column of the picture that the mask's first column is, and {@code top} the row
     */
    static List<Blob> of(GrayU8 shapes, LabThumbnail coarse, int left, int top) {
        List<Blob> blobs = new ArrayList<>();
        for (Contour contour : BinaryImageOps.contour(shapes, ConnectRule.FOUR, null)) {
            List<Point> rim = new ArrayList<>();
            boolean cutOff = false;
            for (var p : contour.external) {
                int x = left + p.x;
                int y = top + p.y;
                rim.add(new Point((x + 0.5) * coarse.step, (y + 0.5) * coarse.step));
                cutOff |= x <= 1 || y <= 1 || x >= coarse.width - 2 || y >= coarse.height - 2;
            }
            if (rim.size() >= LEAST_RIM) {
                blobs.add(new Blob(rim, cutOff));
            }
        }
        return blobs;
    }
}
