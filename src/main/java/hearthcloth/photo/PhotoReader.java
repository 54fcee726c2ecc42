package hearthcloth.photo;

import hearthcloth.photo.image.ImageDecoder;
import hearthcloth.photo.image.PhotoRefusedException;
import hearthcloth.photo.image.ReadingProgress;
import hearthcloth.photo.plane.ReferenceSheet;
import java.io.IOException;
import java.io.InputStream;

/** Reads photographs of scraps. {@link #read(byte[], Sheet, Progress)} is the entrance. */
public final class PhotoReader {

    private PhotoReader() {}

    /** Reads {@code in} to its end (at most 80 MB), then as {@link #read(byte[], Sheet, Progress)}. */
    public static Reading read(InputStream in, ReferenceSheet sheet, ReadingProgress progress) throws IOException {
        return read(in.readNBytes(ImageDecoder.MOST_BYTES + 1), sheet, progress);
    }

    /**
     * Reads a JPEG or PNG photograph of scraps beside {@code sheet}.
     *
     * <p>A picture that cannot be read gives a {@link Reading.Refused} and never throws. The same bytes always give the
     * same reading.
     */
    public static Reading read(byte[] photograph, ReferenceSheet sheet, ReadingProgress progress) {
        try {
            progress.at(0, "opening the picture");
            return new ReadingPipeline(ImageDecoder.decode(photograph), sheet, progress).read();
        } catch (PhotoRefusedException e) {
            return new Reading.Refused(String.valueOf(e.getMessage()));
        }
    }
}
