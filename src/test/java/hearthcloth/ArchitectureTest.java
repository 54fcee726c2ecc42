package hearthcloth;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.library.Architectures;

/** Holds the rooms of docs/architecture.md: arrows point down only, the domain touches nothing outside memory. */
@AnalyzeClasses(packages = "hearthcloth", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {

    private static final String[] DOMAIN = {
        "hearthcloth.measure..",
        "hearthcloth.colour..",
        "hearthcloth.cloth..",
        "hearthcloth.stash..",
        "hearthcloth.wrap..",
        "hearthcloth.plan..",
        "hearthcloth.sew..",
        "hearthcloth.work.."
    };

    @ArchTest
    static final ArchRule arrows_point_down_only = Architectures.layeredArchitecture()
            .consideringOnlyDependenciesInLayers()
            .withOptionalLayers(true)
            .layer("measure")
            .definedBy("hearthcloth.measure..")
            .layer("colour")
            .definedBy("hearthcloth.colour..")
            .layer("cloth")
            .definedBy("hearthcloth.cloth..")
            .layer("stash")
            .definedBy("hearthcloth.stash..")
            .layer("wrap")
            .definedBy("hearthcloth.wrap..")
            .layer("plan")
            .definedBy("hearthcloth.plan..")
            .layer("sew")
            .definedBy("hearthcloth.sew..")
            .layer("work")
            .definedBy("hearthcloth.work..")
            .layer("draw")
            .definedBy("hearthcloth.draw..")
            .layer("store")
            .definedBy("hearthcloth.store..")
            .layer("photo")
            .definedBy("hearthcloth.photo..")
            .layer("gather")
            .definedBy("hearthcloth.gather..")
            .layer("cli")
            .definedBy("hearthcloth.cli..")
            .layer("web")
            .definedBy("hearthcloth.web..")
            .whereLayer("measure")
            .mayNotAccessAnyLayer()
            .whereLayer("colour")
            .mayNotAccessAnyLayer()
            .whereLayer("cloth")
            .mayOnlyAccessLayers("measure", "colour")
            .whereLayer("stash")
            .mayOnlyAccessLayers("measure", "colour")
            .whereLayer("wrap")
            .mayOnlyAccessLayers("cloth", "measure")
            .whereLayer("plan")
            .mayOnlyAccessLayers("wrap", "cloth", "stash", "measure", "colour")
            .whereLayer("sew")
            .mayOnlyAccessLayers("plan", "wrap", "cloth", "stash", "measure", "colour")
            .whereLayer("work")
            .mayOnlyAccessLayers("photo", "sew", "plan", "wrap", "cloth", "stash", "measure", "colour")
            .whereLayer("photo")
            .mayOnlyAccessLayers("measure", "colour")
            .whereLayer("gather")
            .mayOnlyAccessLayers("photo", "stash", "measure", "colour")
            .whereLayer("store")
            .mayOnlyBeAccessedByLayers("web")
            .whereLayer("cli")
            .mayNotBeAccessedByAnyLayer()
            .whereLayer("web")
            .mayNotBeAccessedByAnyLayer();

    @ArchTest
    static final ArchRule rooms_form_no_knots =
            slices().matching("hearthcloth.(*)..").should().beFreeOfCycles();

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
}
