package hearthcloth.web;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;

/** A form with a file in it, as a browser sends it. */
public final class Multipart {

    private static final String LINE = "----cloth";
    public static final String TYPE = "multipart/form-data; boundary=" + LINE;

    private Multipart() {}

    /** The body; names and values in turn. */
    public static byte[] of(String token, String name, byte[] file, String... namesAndValues) {
        ByteArrayOutputStream body = new ByteArrayOutputStream(file.length + 4096);
        field(body, "token", token);
        for (int i = 0; i < namesAndValues.length; i += 2) {
            field(body, namesAndValues[i], namesAndValues[i + 1]);
        }
        text(
                body,
                "--" + LINE + "\r\nContent-Disposition: form-data; name=\"" + name
                        + "\"; filename=\"given\"\r\nContent-Type: application/octet-stream\r\n\r\n");
        body.writeBytes(file);
        text(body, "\r\n--" + LINE + "--\r\n");
        return body.toByteArray();
    }

    private static void field(ByteArrayOutputStream body, String name, String value) {
        text(body, "--" + LINE + "\r\nContent-Disposition: form-data; name=\"" + name + "\"\r\n\r\n" + value + "\r\n");
    }

    private static void text(ByteArrayOutputStream body, String text) {
        body.writeBytes(text.getBytes(StandardCharsets.UTF_8));
    }
}
