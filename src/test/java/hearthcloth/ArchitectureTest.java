package hearthcloth;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.library.dependencies.SliceAssignment;
import com.tngtech.archunit.library.dependencies.SliceIdentifier;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Holds the rooms of docs/architecture.md: arrows point down only, the domain touches nothing outside memory. */
@AnalyzeClasses(packages = "hearthcloth", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {

    private static final String[] DOMAIN = {
        "hearthcloth.words..",
        "hearthcloth.number..",
        "hearthcloth.measure..",
        "hearthcloth.colour..",
        "hearthcloth.geometry..",
        "hearthcloth.cloth..",
        "hearthcloth.stash..",
        "hearthcloth.wrap..",
        "hearthcloth.cutstock..",
        "hearthcloth.plan..",
        "hearthcloth.sew..",
        "hearthcloth.json..",
        "hearthcloth.guideline.."
    };

    /** Each room, and the rooms it may know. What is not named here does not exist. */
    private static final Map<String, List<String>> MAY_KNOW = Map.ofEntries(
            Map.entry("measure", List.of()),
            Map.entry("number", List.of()),
            Map.entry("words", List.of("measure")),
            Map.entry("colour", List.of("number")),
            Map.entry("geometry", List.of("number")),
            Map.entry("cloth", List.of("measure")),
            Map.entry("stash", List.of("words", "measure", "colour")),
            Map.entry("wrap", List.of("words", "number", "measure", "geometry", "cloth")),
            Map.entry("cutstock", List.of("number", "measure")),
            Map.entry("plan", List.of("words", "number", "measure", "colour", "cloth", "stash", "wrap", "cutstock")),
            Map.entry("sew", List.of("words", "measure", "colour", "cloth", "stash", "wrap", "plan")),
            Map.entry("json", List.of()),
            Map.entry(
                    "guideline",
                    List.of("words", "json", "measure", "colour", "cloth", "stash", "wrap", "cutstock", "plan")),
            Map.entry("photo", List.of("words", "measure", "colour", "geometry")),
            Map.entry(
                    "work",
                    List.of(
                            "words",
                            "measure",
                            "colour",
                            "geometry",
                            "cloth",
                            "stash",
                            "wrap",
                            "cutstock",
                            "plan",
                            "sew",
                            "photo")),
            Map.entry(
                    "draw",
                    List.of(
                            "words",
                            "number",
                            "json",
                            "measure",
                            "colour",
                            "geometry",
                            "cloth",
                            "stash",
                            "wrap",
                            "plan",
                            "sew",
                            "photo")),
            Map.entry(
                    "wish", List.of("words", "measure", "colour", "cloth", "stash", "wrap", "cutstock", "plan", "sew")),
            Map.entry(
                    "store",
                    List.of(
                            "words",
                            "measure",
                            "colour",
                            "geometry",
                            "cloth",
                            "stash",
                            "wrap",
                            "plan",
                            "sew",
                            "photo",
                            "work")),
            Map.entry(
                    "idea",
                    List.of(
                            "words",
                            "json",
                            "measure",
                            "colour",
                            "cloth",
                            "stash",
                            "wrap",
                            "cutstock",
                            "plan",
                            "guideline",
                            "sew",
                            "draw")),
            Map.entry(
                    "cli",
                    List.of(
                            "json",
                            "measure",
                            "colour",
                            "cloth",
                            "stash",
                            "wrap",
                            "cutstock",
                            "plan",
                            "guideline",
                            "idea",
                            "photo",
                            "work",
                            "wish",
                            "words",
                            "draw")),
            Map.entry(
                    "web",
                    List.of(
                            "measure",
                            "colour",
                            "geometry",
                            "cloth",
                            "stash",
                            "wrap",
                            "cutstock",
                            "plan",
                            "guideline",
                            "idea",
                            "sew",
                            "photo",
                            "work",
                            "wish",
                            "words",
                            "draw",
                            "store")));

    /** Rooms whose files may be more than twenty: none. */
    private static final int MOST_FILES = 20;

    private static final Pattern ROOM = Pattern.compile("^hearthcloth\\.(\\w+)");

    @ArchTest
    static void arrows_point_down_only(JavaClasses classes) {
        Set<String> wrong = new TreeSet<>();
        for (JavaClass from : classes) {
            for (Dependency arrow : from.getDirectDependenciesFromSelf()) {
                String room = room(from);
                String other = room(arrow.getTargetClass());
                if (!room.isEmpty()
                        && !other.isEmpty()
                        && !room.equals(other)
                        && !MAY_KNOW.getOrDefault(room, List.of()).contains(other)) {
                    wrong.add(
                            from.getName() + " knows " + arrow.getTargetClass().getName());
                }
            }
        }
        assertThat(wrong).isEmpty();
    }

    @ArchTest
    static void every_room_is_on_the_map(JavaClasses classes) {
        Set<String> rooms = new TreeSet<>();
        classes.forEach(each -> rooms.add(room(each)));
        rooms.remove("");
        assertThat(rooms).isEqualTo(new TreeSet<>(MAY_KNOW.keySet()));
    }

    /** The room of one of our classes: the first folder under {@code hearthcloth}; empty for Main and for others' classes. */
    private static String room(JavaClass each) {
        Matcher path = ROOM.matcher(each.getPackageName());
        return path.find() ? path.group(1) : "";
    }

    @ArchTest
    static final ArchRule rooms_form_no_knots =
            slices().matching("hearthcloth.(*)..").should().beFreeOfCycles();

    /** Sub-rooms too: no two import each other, by any way round. */
    @ArchTest
    static final ArchRule sub_rooms_form_no_knots =
            slices().assignedFrom(new EachPackage()).should().beFreeOfCycles();

    /** Every package a slice of its own; templates made by the build are left out. */
    private static final class EachPackage implements SliceAssignment {

        @Override
        public SliceIdentifier getIdentifierOf(JavaClass each) {
            String name = each.getPackageName();
            return name.startsWith("hearthcloth") && !name.startsWith("hearthcloth.web.pages")
                    ? SliceIdentifier.of(name)
                    : SliceIdentifier.ignore();
        }

        @Override
        public String getDescription() {
            return "each package";
        }
    }

    @ArchTest
    static void no_two_rooms_call_two_things_by_one_name(JavaClasses classes) {
        Map<String, Set<String>> places = new TreeMap<>();
        classes.stream()
                .filter(each -> each.isTopLevelClass() && !each.getSimpleName().equals("package-info"))
                .filter(each -> !each.getPackageName().startsWith("hearthcloth.web.pages"))
                .forEach(each -> places.computeIfAbsent(each.getSimpleName(), name -> new TreeSet<>())
                        .add(each.getPackageName()));
        places.values().removeIf(packages -> packages.size() < 2);
        assertThat(places).isEmpty();
    }

    @ArchTest
    static void no_room_is_crowded(JavaClasses classes) {
        Map<String, Long> files = classes.stream()
                .filter(each -> each.isTopLevelClass()
                        && !each.getPackageName().startsWith("hearthcloth.web.pages")
                        && !each.getSimpleName().equals("package-info"))
                .collect(Collectors.groupingBy(JavaClass::getPackageName, TreeMap::new, Collectors.counting()));
        files.values().removeIf(count -> count <= MOST_FILES);
        assertThat(files).isEmpty();
    }

    @ArchTest
    static final ArchRule the_domain_uses_only_the_language = classes()
            .that()
            .resideInAnyPackage(DOMAIN)
            .should()
            .onlyDependOnClassesThat()
            .resideInAnyPackage(
                    "hearthcloth..", "java.lang..", "java.util..", "java.math..", "org.jspecify.annotations..");

    @ArchTest
    static final ArchRule the_domain_reads_no_clock_and_no_console = noClasses()
            .that()
            .resideInAnyPackage(DOMAIN)
            .should()
            .accessTargetWhere(new DescribedPredicate<JavaAccess<?>>("a clock, the console or unseeded chance") {
                @Override
                public boolean test(JavaAccess<?> access) {
                    String owner = access.getTargetOwner().getFullName();
                    String name = access.getTarget().getName();
                    return (owner.equals("java.lang.System")
                                    && !name.equals("arraycopy")
                                    && !name.equals("identityHashCode"))
                            || (owner.equals("java.lang.Math") && name.equals("random"))
                            || (owner.equals("java.util.Random")
                                    && name.equals("<init>")
                                    && access.getTarget().getDescription().contains("<init>()"))
                            || owner.startsWith("java.util.concurrent.ThreadLocalRandom");
                }
            });

    @ArchTest
    static final ArchRule each_outside_library_lives_in_one_room = noClasses()
            .that()
            .resideOutsideOfPackages("hearthcloth.draw..", "hearthcloth.photo..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("org.apache.pdfbox..", "org.apache.fontbox..", "com.github.weisj..", "java.awt..");

    @ArchTest
    static final ArchRule the_database_lives_in_the_store = noClasses()
            .that()
            .resideOutsideOfPackage("hearthcloth.store..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage(
                    "java.sql..",
                    "org.jdbi..",
                    "org.flywaydb..",
                    "org.sqlite..",
                    "com.zaxxer..",
                    "org.postgresql..",
                    "org.bouncycastle..");

    @ArchTest
    static final ArchRule the_server_lives_in_the_workroom = noClasses()
            .that()
            .resideOutsideOfPackage("hearthcloth.web..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("io.javalin..", "gg.jte..", "jakarta.servlet..");

    /** Who a request comes from is a value that travels with it; nothing is kept by thread. */
    @ArchTest
    static final ArchRule who_asks_travels_as_a_value =
            noClasses().should().dependOnClassesThat().areAssignableTo(ThreadLocal.class);
}
