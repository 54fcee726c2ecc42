package hearthcloth;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.util.Set;

/**
 * What plans gives the same plan on every machine and in a browser. A class library may choose the last bit of a logarithm, how a
 * sum of doubles is made and in which order a hash table is gone through; and a plan chosen among equals turns on that.
 */
@AnalyzeClasses(packages = "hearthcloth", importOptions = ImportOption.DoNotIncludeTests.class)
class SameEverywhereTest {

    private static final String[] ROOMS = {
        "hearthcloth.measure..",
        "hearthcloth.colour..",
        "hearthcloth.geometry..",
        "hearthcloth.cloth..",
        "hearthcloth.stash..",
        "hearthcloth.wrap..",
        "hearthcloth.cutstock..",
        "hearthcloth.plan..",
        "hearthcloth.guideline.."
    };

    private static final Set<String> INEXACT = Set.of(
            "sin",
            "cos",
            "tan",
            "asin",
            "acos",
            "atan",
            "atan2",
            "exp",
            "expm1",
            "log",
            "log10",
            "log1p",
            "pow",
            "cbrt",
            "hypot",
            "sinh",
            "cosh",
            "tanh",
            "rint",
            "toRadians",
            "toDegrees",
            "IEEEremainder");

    private static final DescribedPredicate<JavaAccess<?>> LEFT_TO_THE_LIBRARY =
            DescribedPredicate.describe("that the class library may answer otherwise elsewhere", access -> {
                String owner = access.getTargetOwner().getName();
                String name = access.getTarget().getName();
                return switch (owner) {
                    case "java.lang.Math", "java.lang.StrictMath" -> INEXACT.contains(name);
                    case "java.util.stream.DoubleStream" ->
                        Set.of("sum", "average").contains(name);
                    case "java.util.DoubleSummaryStatistics" ->
                        Set.of("getSum", "getAverage").contains(name);
                    case "java.util.stream.Collectors" -> name.endsWith("Double");
                    default -> false;
                };
            });

    private static final DescribedPredicate<JavaClass> DRAPED =
            JavaClass.Predicates.resideInAPackage("hearthcloth.wrap.drape..");

    @ArchTest
    static final ArchRule functions = noClasses()
            .that()
            .resideInAnyPackage(ROOMS)
            .and(DescribedPredicate.not(DRAPED)) // pictures only
            .should()
            .accessTargetWhere(LEFT_TO_THE_LIBRARY)
            .because("hearthcloth.number.Elementary and plain sums are the same everywhere");

    @ArchTest
    static final ArchRule orders = noClasses()
            .that()
            .resideInAnyPackage("hearthcloth.cutstock..", "hearthcloth.plan..", "hearthcloth.guideline..")
            .and()
            .resideOutsideOfPackage("hearthcloth.plan.rework..") // asked in the workroom only
            .should()
            .accessTargetWhere(DescribedPredicate.describe(
                    "that makes a hash table without an order",
                    access -> access.getTarget().getName().equals("<init>")
                            && Set.of("java.util.HashMap", "java.util.HashSet")
                                    .contains(access.getTargetOwner().getName())))
            .because("it may be gone through in another order elsewhere");
}
