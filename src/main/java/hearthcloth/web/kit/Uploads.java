package hearthcloth.web.kit;

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
    public static byte[] upload(Context context, String name, int most) {
        UploadedFile file = context.uploadedFile(name);
        if (file == null || file.size() == 0) {
            throw refused(422, "No file was chosen, or it is empty.");
        }
        try (InputStream in = file.content()) {
            byte[] bytes = in.readNBytes(most + 1);
            if (bytes.length > most) {
                throw refused(413, "This file is over " + (most >> 20) + " MB; choose a smaller one.");
            }
            return bytes;
        } catch (IOException e) {
            throw refused(422, "The file did not arrive whole; send it again.", e);
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
