package hearthcloth.photo;

import hearthcloth.photo.image.ImageDecoder;
import hearthcloth.photo.image.PhotoRefusedException;
import hearthcloth.photo.image.ReadingProgress;
import hearthcloth.photo.image.SheetUnseenException;
import hearthcloth.photo.parameter.ReadingParameters;
import hearthcloth.photo.plane.ReferenceSheet;
import hearthcloth.photo.plane.ShownSheet;
import java.util.Optional;

/** Reads photographs of scraps. {@link #read(byte[], Sheet, Progress)} is the entrance. */
public final class PhotoReader {

    /** The least of the sizes at which a sheet is looked for is the picture's divided by this. */
    private static final int SMALLEST = 4;

    /** A picture whose longer side has fewer pixels is not looked at: the coarse picture of the search would be larger. */
    private static final int LEAST_SIDE = 800;

    private final ReadingParameters parameters;

    /** A reader that decides by other values than the standard ones. */
    public PhotoReader(ReadingParameters parameters) {
        this.parameters = parameters;
    }

    /**
     * Reads a JPEG or PNG photograph of scraps beside {@code sheet}.
     *
     * <p>A picture that cannot be read gives a {@link Reading.Refused} and never throws. The same bytes always give the
     * same reading.
     */
    public static Reading read(byte[] photograph, ReferenceSheet sheet, ReadingProgress progress) {
        return read(photograph, ShownSheet.hidden(sheet), progress);
    }

    /** The same for a sheet whose corners she may have tapped in the picture. */
    public static Reading read(byte[] photograph, ShownSheet sheet, ReadingProgress progress) {
        return new PhotoReader(ReadingParameters.standard()).reading(photograph, sheet, progress);
    }

    /** The same by this reader's own values. */
    public Reading reading(byte[] photograph, ShownSheet sheet, ReadingProgress progress) {
        try {
            progress.at(0, "opening");
            return read(ImageDecoder.decode(photograph), sheet, progress);
        } catch (PhotoRefusedException e) {
            return new Reading.Refused(e.sentence());
        }
    }

    /**
     * Looks for the sheet at the size of the picture and, where none is made out, at half and a quarter of it. What is said of
     * each length then holds what the smaller picture leaves unclear.
     *
     * @throws PhotoRefusedException with what was said at the full size, where no size shows a sheet
     */
    private Reading read(ImageDecoder.Decoded whole, ShownSheet sheet, ReadingProgress progress) {
        try {
            return new ReadingPipeline(whole, sheet, parameters, progress).read();
        } catch (SheetUnseenException unseen) {
            ImageDecoder.Decoded smaller = whole;
            for (int times = 2; times <= SMALLEST; times *= 2) {
                smaller = smaller.halved();
                if (Math.max(smaller.picture().width, smaller.picture().height) < LEAST_SIDE) {
                    break;
                }
                Optional<Reading> seen = seen(smaller, sheet, progress, times);
                if (seen.isPresent()) {
                    return seen.get();
                }
            }
            throw unseen;
        }
    }

    /** The reading at a smaller size, or empty where that does not show a sheet either. */
    private Optional<Reading> seen(
            ImageDecoder.Decoded smaller, ShownSheet sheet, ReadingProgress progress, int times) {
        try {
            Reading reading = new ReadingPipeline(smaller, sheet, parameters, progress).read();
            return Optional.of(reading instanceof Reading.Read read ? read.enlarged(times) : reading);
        } catch (SheetUnseenException unseen) {
            return Optional.empty();
        }
    }
}
