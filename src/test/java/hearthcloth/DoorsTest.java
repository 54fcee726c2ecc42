package hearthcloth;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaCodeUnit;
import com.tngtech.archunit.core.domain.JavaCodeUnitAccess;
import com.tngtech.archunit.core.domain.JavaConstructor;
import com.tngtech.archunit.core.domain.JavaMethod;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.domain.Source;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.core.importer.Location;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;

/**
 * A room's doors are few: what no other package uses is not public. A use is seen in the compiled classes, tests
 * included, and where the compiler leaves no trace (a constant, the type of a variable, a template, the benchmarks) in
 * the sources: a name that another package's sources mention counts as used.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class DoorsTest {

    private static final List<Path> SOURCES = Stream.of(
                    "src/main/java", "src/main/jte", "src/test/java", "benchmarks/src")
            .map(Path::of)
            .filter(Files::isDirectory)
            .toList();

    private static final Pattern WORD = Pattern.compile("\\b[A-Za-z_]\\w*\\b");

    private final JavaClasses classes = new ClassFileImporter().importPackages("hearthcloth");
    private final Set<String> main = new HashSet<>();
    private final Map<String, Set<String>> users = new HashMap<>();
    private final Map<String, Set<String>> mentions = mentions();

    DoorsTest() {
        classes.stream()
                .filter(each -> each.getSource().map(DoorsTest::isOfMain).orElse(false))
                .forEach(each -> main.add(each.getName()));
        classes.forEach(this::note);
    }

    private static boolean isOfMain(Source source) {
        return ImportOption.Predefined.DO_NOT_INCLUDE_TESTS.includes(Location.of(source.getUri()));
    }

    /** Words of the sources, each with the packages whose sources hold it; a template is of no package. */
    private static Map<String, Set<String>> mentions() {
        Map<String, Set<String>> words = new HashMap<>();
        for (Path root : SOURCES) {
            try (Stream<Path> files = Files.walk(root)) {
                for (Path file : files.filter(Files::isRegularFile).toList()) {
                    String room = room(root, file);
                    Matcher word = WORD.matcher(Files.readString(file));
                    while (word.find()) {
                        words.computeIfAbsent(word.group(), key -> new HashSet<>())
                                .add(room);
                    }
                }
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
        return words;
    }

    private static String room(Path root, Path file) {
        String path = root.relativize(file).toString().replace('\\', '/');
        int begin = path.indexOf("hearthcloth");
        return begin < 0 || !path.endsWith(".java")
                ? path
                : path.substring(begin, path.lastIndexOf('/')).replace('/', '.');
    }

    /** Who uses what, as the compiled class tells it. */
    private void note(JavaClass from) {
        for (Dependency one : from.getDirectDependenciesFromSelf()) {
            user(one.getTargetClass().getBaseComponentType().getName(), from);
        }
        for (JavaAccess<?> access : from.getAccessesFromSelf()) {
            user(access.getTargetOwner().getName(), from);
            if (access instanceof JavaCodeUnitAccess<?> call) {
                call.getTarget().resolveMember().ifPresent(member -> user(member.getFullName(), from));
            }
        }
        Stream.concat(from.getMethodReferencesFromSelf().stream(), from.getConstructorReferencesFromSelf().stream())
                .forEach(reference ->
                        reference.getTarget().resolveMember().ifPresent(member -> user(member.getFullName(), from)));
    }

    private void user(String used, JavaClass from) {
        users.computeIfAbsent(used, key -> new HashSet<>()).add(from.getPackageName());
    }

    private boolean isUsedOutside(String used, String name, JavaClass where) {
        Set<String> rooms = new HashSet<>(users.getOrDefault(used, Set.of()));
        rooms.addAll(mentions.getOrDefault(name, Set.of()));
        rooms.remove(where.getPackageName());
        return !rooms.isEmpty();
    }

    private Stream<JavaClass> ours() {
        return classes.stream()
                .filter(each -> main.contains(each.getName())
                        && !each.getPackageName().startsWith("hearthcloth.web.pages")
                        && !each.isAnonymousClass());
    }

    private static boolean isPublic(Set<JavaModifier> modifiers) {
        return modifiers.contains(JavaModifier.PUBLIC) && !modifiers.contains(JavaModifier.SYNTHETIC);
    }

    @Test
    void a_type_that_no_other_package_uses_is_not_public() {
        Set<String> wide = new TreeSet<>();
        ours().filter(each -> isPublic(each.getModifiers()))
                .filter(each ->
                        !each.getEnclosingClass().map(JavaClass::isInterface).orElse(false))
                .filter(each -> !isUsedOutside(each.getName(), each.getSimpleName(), each))
                .forEach(each -> wide.add(each.getName()));
        wide.remove("hearthcloth.Main");

        assertThat(wide).isEmpty();
    }

    @Test
    void a_method_that_no_other_package_uses_is_not_public() {
        Set<String> wide = new TreeSet<>();
        ours().filter(each -> !each.isInterface() && !each.isAnnotation())
                .flatMap(each -> each.getCodeUnits().stream())
                .filter(unit -> isPublic(unit.getModifiers()) && !isGivenFromOutside(unit))
                .filter(unit -> !isUsedOutside(unit.getFullName(), called(unit), unit.getOwner()))
                .forEach(unit -> wide.add(unit.getFullName()));

        assertThat(wide).isEmpty();
    }

    private static String called(JavaCodeUnit unit) {
        return unit instanceof JavaConstructor ? unit.getOwner().getSimpleName() : unit.getName();
    }

    /** What a supertype, the record or the enum it belongs to, or the machine that starts it asks to be public. */
    private static boolean isGivenFromOutside(JavaCodeUnit unit) {
        JavaClass owner = unit.getOwner();
        if (unit instanceof JavaConstructor) {
            return owner.isRecord() || !isPublic(owner.getModifiers());
        }
        JavaMethod method = (JavaMethod) unit;
        boolean accessor = owner.isRecord()
                && method.getRawParameterTypes().isEmpty()
                && owner.tryGetField(method.getName()).isPresent();
        boolean ofEnum = owner.isEnum() && Set.of("values", "valueOf").contains(method.getName());
        return accessor || ofEnum || method.getName().equals("main") || isOverriding(owner, method);
    }

    private static boolean isOverriding(JavaClass owner, JavaMethod method) {
        return Stream.concat(owner.getAllRawSuperclasses().stream(), owner.getAllRawInterfaces().stream())
                .flatMap(above -> above.getMethods().stream())
                .anyMatch(other -> other.getName().equals(method.getName())
                        && other.getRawParameterTypes().size()
                                == method.getRawParameterTypes().size());
    }
}
