package hearthcloth;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaCodeUnit;
import com.tngtech.archunit.core.domain.JavaConstructor;
import com.tngtech.archunit.core.domain.JavaMember;
import com.tngtech.archunit.core.domain.JavaMethod;
import com.tngtech.archunit.core.domain.JavaModifier;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * Nothing in the product is there for nothing: from its doors, the program's main method and the page templates, every method
 * and constructor that is not private can be reached by way of calls. A call reaches the method it names and every method that
 * overrides it; what overrides a method of a library is called by the library.
 */
class DeadCodeTest {

    /** Made by libraries, by way of reflection: picocli asks for the version, Jdbi makes one for each connection, Jackson turns fabrics into documents. */
    private static final List<String> MADE_BY_LIBRARIES = List.of(
            "cli.ProgramVersion.",
            "store.journal.OneChange.<init>()",
            "store.json.KeptFabric$IntoDocument.",
            "store.json.KeptFabric$FromDocument.");

    /** Their doors are still being built: that both ends of a side are measured at the machine, and slips of the pen asked about. */
    private static final List<String> ARRIVING = List.of("plan.rework.EndsMeasured.");

    /** What only tests ask: the commands themselves, against which completions and the manual page are held. */
    private static final List<String> ASKED_BY_TESTS = List.of("cli.Hearthcloth.line()");

    /** Compiled for the idea page, whose browser asks it; ideapage/ has its door. */
    private static final List<String> ASKED_BY_THE_PAGE =
            List.of("draw.PlanSheets.", "idea.answer.", "guideline.fit.GuidelinePlanner.first(");

    @Test
    void everything_can_be_reached_from_a_door() {
        JavaClasses classes = ImportedHouse.classes();
        Reach reach = new Reach();
        for (JavaClass each : classes) {
            if (each.getName().equals("hearthcloth.Main")
                    || each.getPackageName().startsWith("hearthcloth.web.pages")) {
                each.getCodeUnits().forEach(reach::at);
            }
        }
        reach.follow();
        Set<String> dead = new TreeSet<>();
        for (JavaClass each : classes) {
            each.getCodeUnits().stream()
                    .filter(unit -> !reach.has(unit) && isAsked(unit))
                    .map(JavaCodeUnit::getFullName)
                    .map(name -> name.replaceFirst("^hearthcloth\\.", ""))
                    .forEach(dead::add);
        }
        dead.removeIf(DeadCodeTest::isKnown);
        assertThat(dead).as("never reached").isEmpty();
    }

    private static boolean isKnown(String name) {
        return Stream.of(MADE_BY_LIBRARIES, ARRIVING, ASKED_BY_TESTS, ASKED_BY_THE_PAGE)
                .flatMap(List::stream)
                .anyMatch(name::startsWith);
    }

    private static boolean isAsked(JavaCodeUnit unit) {
        Set<JavaModifier> modifiers = unit.getModifiers();
        return !modifiers.contains(JavaModifier.PRIVATE)
                && !modifiers.contains(JavaModifier.SYNTHETIC)
                && !modifiers.contains(JavaModifier.BRIDGE)
                && !unit.getName().equals("<clinit>")
                && !isGiven(unit);
    }

    /** What the compiler writes: of an enum, a record, and the constructor that nobody wrote. */
    private static boolean isGiven(JavaCodeUnit unit) {
        JavaClass owner = unit.getOwner();
        if (owner.isEnum() && (unit.getName().equals("values") || unit.getName().equals("valueOf"))) {
            return true;
        }
        boolean isBare = unit.getRawParameterTypes().isEmpty();
        return owner.isRecord()
                && (unit instanceof JavaConstructor
                        || (isBare
                                && owner.getFields().stream()
                                        .anyMatch(f -> f.getName().equals(unit.getName()))));
    }

    /** What is reached so far, and what of it is still to be followed. */
    private static final class Reach {

        private final Set<JavaCodeUnit> reached = new HashSet<>();
        private final Set<JavaClass> alive = new HashSet<>();
        private final Deque<JavaCodeUnit> open = new ArrayDeque<>();

        boolean has(JavaCodeUnit unit) {
            return reached.contains(unit);
        }

        void at(JavaCodeUnit unit) {
            if (reached.add(unit)) {
                open.add(unit);
            }
        }

        void follow() {
            while (!open.isEmpty()) {
                JavaCodeUnit unit = open.remove();
                live(unit.getOwner());
                unit.getAccessesFromSelf().forEach(this::access);
                unit.getReferencedClassObjects().forEach(object -> live(object.getRawType()));
            }
        }

        private void access(JavaAccess<?> access) {
            live(access.getTargetOwner());
            access.getTarget().resolveMember().ifPresent(member -> {
                if (member instanceof JavaCodeUnit unit) {
                    at(unit);
                }
                if (member instanceof JavaMethod method) {
                    overriding(method).forEach(this::at);
                }
            });
        }

        private static Stream<JavaMethod> overriding(JavaMethod method) {
            return method.getOwner().getAllSubclasses().stream().flatMap(sub -> same(sub, method));
        }

        private static Stream<JavaMethod> same(JavaClass in, JavaMethod method) {
            return in.getMethods().stream()
                    .filter(one -> one.getName().equals(method.getName())
                            && one.getRawParameterTypes().size()
                                    == method.getRawParameterTypes().size());
        }

        /** A class that is used: its start, what it overrides of libraries, and the classes above it. */
        private void live(JavaClass used) {
            if (!used.getName().startsWith("hearthcloth") || !alive.add(used)) {
                return;
            }
            used.getStaticInitializer().ifPresent(this::at);
            used.getAllRawSuperclasses().forEach(this::live);
            used.getAllRawInterfaces().forEach(this::live);
            if (used.isRecord()) {
                used.getConstructors().forEach(this::at);
            }
            Set<String> outside = Stream.concat(
                            used.getAllRawSuperclasses().stream(), used.getAllRawInterfaces().stream())
                    .filter(above -> !above.getName().startsWith("hearthcloth"))
                    .flatMap(above -> above.getMethods().stream())
                    .map(JavaMember::getName)
                    .collect(Collectors.toSet());
            used.getMethods().stream()
                    .filter(method -> outside.contains(method.getName()) || isAnnotated(method))
                    .forEach(this::at);
            used.getConstructors().stream().filter(Reach::isAnnotated).forEach(this::at);
        }

        /** Annotated for a library, which then calls it. */
        private static boolean isAnnotated(JavaCodeUnit unit) {
            return unit.getAnnotations().stream()
                    .anyMatch(one -> one.getRawType().getName().startsWith("picocli.")
                            || one.getRawType().getName().startsWith("com.fasterxml."));
        }
    }

    @Test
    void every_template_is_shown() throws IOException {
        Path pages = Path.of("src", "main", "jte");
        List<Path> templates;
        try (Stream<Path> walk = Files.walk(pages)) {
            templates = walk.filter(file -> file.toString().endsWith(".jte")).toList();
        }
        StringBuilder all = new StringBuilder();
        try (Stream<Path> walk = Files.walk(Path.of("src", "main"))) {
            for (Path file : walk.filter(one -> one.toString().matches(".*\\.(java|jte)"))
                    .toList()) {
                all.append(Files.readString(file));
            }
        }
        Set<String> unseen = new TreeSet<>();
        for (Path template : templates) {
            String name = pages.relativize(template).toString().replace('\\', '/');
            String called = "@template." + name.replace(".jte", "").replace('/', '.') + "(";
            if (all.indexOf('"' + name + '"') < 0 && all.indexOf(called) < 0) {
                unseen.add(name);
            }
        }
        assertThat(unseen).isEmpty();
    }
}
