package hearthcloth.web.kit;

import hearthcloth.words.framing.FramingWords;
import io.javalin.http.Context;
import io.javalin.http.HttpResponseException;
import io.javalin.http.UploadedFile;
import java.io.IOException;
import java.io.InputStream;

/** Files that come with a form, bounded. */
public final class Uploads {

    private Uploads() {}

    /**
     * The bytes of a file that was sent along with a form.
     *
     * @throws HttpResponseException where there is none or it is over {@code most} bytes, in words
     */
    public static byte[] upload(PageContext room, Context context, String name, int most) {
        FramingWords words = FramingWords.in(room.language());
        UploadedFile file = context.uploadedFile(name);
        if (file == null || file.size() == 0) {
            throw refused(422, words.troubleNoFile());
        }
        try (InputStream in = file.content()) {
            byte[] bytes = in.readNBytes(most + 1);
            if (bytes.length > most) {
                throw refused(413, words.troubleLarge(String.valueOf(most >> 20)));
            }
            return bytes;
        } catch (IOException e) {
            throw refused(422, words.troubleNotWhole(), e);
        }
    }

    /** A refusal in words; what brought it about goes along. */
    public static HttpResponseException refused(int status, String words, Throwable... causes) {
        HttpResponseException refused = new HttpResponseException(status, words);
        for (Throwable cause : causes) {
            refused.addSuppressed(cause);
        }
        return refused;
    }
}
