package hearthcloth.photo.segment;

import boofcv.struct.image.GrayU8;
import hearthcloth.photo.ground.GroundModel;
import hearthcloth.photo.image.BinaryMorphology;
import hearthcloth.photo.image.LabThumbnail;
import java.util.List;
import java.util.stream.IntStream;

/**
 * What is lighter than the ground and nearly without colour, as white paper is. A dark joint or a scrap that touches the paper
 * is none of it, though both stand out from the ground together.
 */
public final class PaleShapes {

    /** Paper is lighter than what it lies on by more than this, in L*; less is what folds and grain do. */
    private static final double LIGHTER = 10;

    /** Paper in a warm room has no more colour than this, as CIELAB chroma. */
    private static final double MOST_CHROMA = 18;

    /** Print and pencil lines this thin do not divide paper: half their width in coarse pixels. */
    private static final int PRINT = 2;

    /** Smaller shapes are no sheet, as a share of the picture. */
    private static final double LEAST_SHARE = 0.004;

    private PaleShapes() {}

    /** The pale shapes, the largest first. */
    public static List<Blob> in(LabThumbnail smooth, GroundModel ground) {
        GrayU8 mask = new GrayU8(smooth.width, smooth.height);
        IntStream.range(0, smooth.height).parallel().forEach(y -> {
            float[] under = new float[3];
            for (int x = 0; x < smooth.width; x++) {
                int i = y * smooth.width + x;
                ground.at(x, y, under);
                double chroma = Math.hypot(smooth.lab[1].data[i], smooth.lab[2].data[i]);
                boolean pale = smooth.lab[0].data[i] > under[0] + LIGHTER && chroma < MOST_CHROMA;
                mask.data[i] = (byte) (pale ? 1 : 0);
            }
        });
        GrayU8 solid = ForegroundMask.opened(BinaryMorphology.filled(BinaryMorphology.closed(mask, PRINT)));
        double least = LEAST_SHARE * smooth.width * smooth.height * smooth.step * smooth.step;
        return MaskContours.of(solid, smooth, 0, 0).stream()
                .filter(shape -> shape.area() > least)
                .sorted((one, other) -> Double.compare(other.area(), one.area()))
                .toList();
    }
}
