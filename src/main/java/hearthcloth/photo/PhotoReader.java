package hearthcloth.photo;

import hearthcloth.photo.image.ImageDecoder;
import hearthcloth.photo.image.PhotoRefusedException;
import hearthcloth.photo.image.ReadingProgress;
import hearthcloth.photo.plane.ReferenceSheet;
import java.io.IOException;
import java.io.InputStream;


/** Reads photographs of scraps. Start here: {@link #read(byte[], Sheet, Progress)}. */
public final class PhotoReader {

    private PhotoReader() {}

    /** Reads to the end of {@code in} (80 MB at most), then as {@link #read(byte[], Sheet, Progress)}. */
    public static Reading read(InputStream in, ReferenceSheet sheet, ReadingProgress progress) throws IOException {
        return read(in.readNBytes(ImageDecoder.MOST_BYTES + 1), sheet, progress);
    }

    /**
     * Reads a JPEG or PNG photograph of scraps beside {@code sheet}.
     *
     * <p>Never throws for a bad picture: that is a {@link Reading.Refused}. Same bytes, same reading.
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
