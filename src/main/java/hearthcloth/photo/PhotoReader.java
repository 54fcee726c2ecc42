package hearthcloth.photo;

import java.io.IOException;
import java.io.InputStream;

/** Reads photographs of scraps. Start here: {@link #read(byte[], Sheet, Progress)}. */
public final class PhotoReader {

    private PhotoReader() {}

    /** Reads to the end of {@code in} (80 MB at most), then as {@link #read(byte[], Sheet, Progress)}. */
    public static Reading read(InputStream in, Sheet sheet, Progress progress) throws IOException {
        return read(in.readNBytes(Decoder.MOST_BYTES + 1), sheet, progress);
    }

    /**
     * Reads a JPEG or PNG photograph of scraps beside {@code sheet}.
     *
     * <p>Never throws for a bad picture: that is a {@link Reading.Refused}. Same bytes, same reading.
     */
    public static Reading read(byte[] photograph, Sheet sheet, Progress progress) {
        try {
            progress.at(0, "opening the picture");
            return new Survey(Decoder.decode(photograph), sheet, progress).read();
        } catch (RefusedException e) {
            return new Reading.Refused(String.valueOf(e.getMessage()));
        }
    }
}
