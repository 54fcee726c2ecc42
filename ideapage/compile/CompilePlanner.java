import java.io.File;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.teavm.backend.javascript.JSModuleType;
import org.teavm.tooling.ConsoleTeaVMToolLog;
import org.teavm.tooling.TeaVMProblemRenderer;
import org.teavm.tooling.TeaVMTargetType;
import org.teavm.tooling.builder.BuildException;
import org.teavm.tooling.builder.BuildResult;
import org.teavm.tooling.builder.InProcessBuildStrategy;
import org.teavm.vm.TeaVMOptimizationLevel;

/**
 * Compiles the rooms to JavaScript, the same bytes each time. Arguments: the folder of classes, the folder to write to, and the
 * class path of the compiler, in that order.
 *
 * <p>The compiler goes through sets of objects in the order of their identity hashes. So this runs in a process of its own, with
 * one thread and with hashes that count up ({@code -XX:hashCode=3}): within the build, other threads would take hashes between.
 */
public final class CompilePlanner {

    private CompilePlanner() {}

    public static void main(String[] arguments) throws BuildException {
        var compiler = new InProcessBuildStrategy();
        compiler.init();
        compiler.setClassPathEntries(classPath(arguments[2], arguments[0]));
        compiler.setTargetType(TeaVMTargetType.JAVASCRIPT);
        compiler.setMainClass("hearthcloth.ideapage.PageDoor");
        compiler.setEntryPointName("main");
        compiler.setTargetDirectory(arguments[1]);
        compiler.setTargetFileName("planner.js");
        compiler.setJsModuleType(JSModuleType.NONE);
        compiler.setOptimizationLevel(TeaVMOptimizationLevel.ADVANCED);
        compiler.setObfuscated(true);
        var log = new ConsoleTeaVMToolLog(false);
        compiler.setLog(log);
        BuildResult result = compiler.build();
        TeaVMProblemRenderer.describeProblems(result.getCallGraph(), result.getProblems(), log);
        if (!result.getProblems().getSevereProblems().isEmpty()) {
            System.exit(1);
        }
    }

    private static List<String> classPath(String libraries, String classes) {
        return Stream.concat(Arrays.stream(libraries.split(File.pathSeparator)), Stream.of(classes)).toList();
    }
}
