package hearthcloth.web.kit;

import gg.jte.CodeResolver;
import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import io.javalin.http.staticfiles.Location;
import io.javalin.http.staticfiles.StaticFileConfig;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Where the pages' templates, styles and scripts come from: out of the program as it was built, or, for a developer who
 * started it by {@code ./dev}, out of the sources as they are at each request, so that a reloaded page shows what was
 * just edited. Editing needs the compiler of templates on the class path, which the built program does not carry.
 */
public final class PageSources {

    /** The folder {@code src/main} of the sources that are edited; set by {@code ./dev} alone. */
    private static final String EDITED = "hearthcloth.edited";

    private final Optional<Path> edited =
            Optional.ofNullable(System.getProperty(EDITED)).map(Path::of);

    TemplateEngine templates() {
        return edited.map(PageSources::editedTemplates)
                .orElseGet(
                        () -> TemplateEngine.createPrecompiled(null, ContentType.Html, null, "hearthcloth.web.pages"));
    }

    /** Says where styles and scripts lie. */
    public void lay(StaticFileConfig files) {
        files.directory =
                edited.map(main -> main.resolve("resources/web").toString()).orElse("/web");
        files.location = edited.isPresent() ? Location.EXTERNAL : Location.CLASSPATH;
    }

    private static TemplateEngine editedTemplates(Path main) {
        try {
            Path compiled = Files.createTempDirectory("hearthcloth-templates");
            TemplateEngine engine = TemplateEngine.create(new Written(main.resolve("jte")), compiled, ContentType.Html);
            engine.setTrimControlStructures(true); // As the build does.
            return engine;
        } catch (IOException e) {
            throw new UncheckedIOException("No folder for compiled templates could be made.", e);
        }
    }

    /**
     * Templates as they are written at the moment.
     *
     * @param folder of the templates
     */
    private record Written(Path folder) implements CodeResolver {

        @Override
        public @Nullable String resolve(String name) {
            try {
                return exists(name) ? Files.readString(folder.resolve(name)) : null;
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }

        @Override
        public boolean exists(String name) {
            return Files.isRegularFile(folder.resolve(name));
        }

        @Override
        public long getLastModified(String name) {
            try {
                return Files.getLastModifiedTime(folder.resolve(name)).toMillis();
            } catch (IOException e) {
                return 0;
            }
        }
    }
}
