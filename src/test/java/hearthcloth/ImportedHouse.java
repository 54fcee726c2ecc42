package hearthcloth;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.lang.ref.SoftReference;
import java.net.URISyntaxException;
import java.nio.file.Path;

/** The compiled classes of the program, read once for the tests of one process that ask what knows what. */
final class ImportedHouse {

    private static SoftReference<JavaClasses> kept = new SoftReference<>(null);

    private ImportedHouse() {}

    /** All of the program, without its tests. */
    static synchronized JavaClasses classes() {
        JavaClasses classes = kept.get();
        if (classes == null) {
            classes = new ClassFileImporter().importPath(compiled());
            kept = new SoftReference<>(classes);
        }
        return classes;
    }

    private static Path compiled() {
        try {
            return Path.of(Main.class
                    .getProtectionDomain()
                    .getCodeSource()
                    .getLocation()
                    .toURI());
        } catch (URISyntaxException e) {
            throw new IllegalStateException(e);
        }
    }
}
