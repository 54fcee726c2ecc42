package hearthcloth.photo.segment;

import boofcv.struct.image.GrayU8;
import hearthcloth.photo.ground.GroundModel;
import hearthcloth.photo.image.BinaryMorphology;
import hearthcloth.photo.image.LabThumbnail;
import hearthcloth.photo.parameter.SegmentParameters;
import java.util.List;
import java.util.stream.IntStream;

/**
 * What is lighter than the ground and nearly without colour, as white paper is. A dark joint or a scrap that touches the paper
 * is none of it, though both stand out from the ground together.
 */
public final class PaleShapes {

    private PaleShapes() {}

    /** The pale shapes, the largest first. */
    public static List<Blob> in(LabThumbnail smooth, GroundModel ground, SegmentParameters parameters) {
        SegmentParameters.Pale pale = parameters.parting().pale();
        GrayU8 mask = new GrayU8(smooth.width, smooth.height);
        IntStream.range(0, smooth.height).parallel().forEach(y -> {
            float[] under = new float[3];
            for (int x = 0; x < smooth.width; x++) {
                int i = y * smooth.width + x;
                ground.at(x, y, under);
                double chroma = Math.hypot(smooth.lab[1].data[i], smooth.lab[2].data[i]);
                boolean white = smooth.lab[0].data[i] > under[0] + pale.lighter() && chroma < pale.mostChroma();
                mask.data[i] = (byte) (white ? 1 : 0);
            }
        });
        GrayU8 solid = ForegroundMask.opened(
                BinaryMorphology.filled(BinaryMorphology.closed(mask, pale.print())),
                parameters.foreground().opening());
        double least = pale.least() * smooth.width * smooth.height * smooth.step * smooth.step;
        return MaskContours.of(solid, smooth, 0, 0).stream()
                .filter(shape -> shape.area() > least && isPaleInside(shape, smooth, ground, pale))
                .sorted((one, other) -> Double.compare(other.area(), one.area()))
                .toList();
    }

    /** Whether the whole of it is; a blue cloth on brown has a rim without colour, where the one blends into the other. */
    private static boolean isPaleInside(
            Blob shape, LabThumbnail smooth, GroundModel ground, SegmentParameters.Pale pale) {
        InteriorColour inside = InteriorColour.of(shape.rim(), smooth, ground);
        return inside.colour().lightness() > inside.ground().lightness() + pale.lighter()
                && inside.colour().chroma() < pale.mostChroma();
    }
}
