package hearthcloth.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.io.InputStream;
import java.util.Map;

/** The pages are set in the same letters as the printed guide, which lie beside its drawing. */
final class LetterFiles {

    /** Hangul and Japanese are asked for by a page only where it has such letters (own.css). */
    private static final Map<String, String> FILES = Map.of(
            "regular", "SourceSans3-Regular.ttf",
            "semibold", "SourceSans3-SemiBold.ttf",
            "bold", "SourceSans3-Bold.ttf",
            "korean", "NotoSansKR-Regular.ttf",
            "korean-bold", "NotoSansKR-Bold.ttf",
            "japanese", "NotoSansJP-Regular.ttf",
            "japanese-bold", "NotoSansJP-Bold.ttf");

    private LetterFiles() {}

    static void add(RoutesConfig routes) {
        routes.get("/letters/{weight}.ttf", LetterFiles::send);
    }

    private static void send(Context context) {
        String file = FILES.get(context.pathParam("weight"));
        InputStream in =
                file == null ? null : LetterFiles.class.getResourceAsStream("/hearthcloth/draw/letters/" + file);
        if (in == null) {
            throw new NotFoundResponse();
        }
        context.contentType("font/ttf").header("Cache-Control", "max-age=86400").result(in);
    }
}
