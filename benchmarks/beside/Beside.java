import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.ToLongBiFunction;

/**
 * Two versions of the planner side by side in one run: the same call in turn, the other first each time. Arguments: the
 * class folders of the earlier version and of this one, each with {@code PlanOnce}; how many calls; then pairs of stash
 * file and side in inches. A CSV row each: the first call, and the median of the warm second half of the calls.
 */
public final class Beside {

    private static final long MILLION = 1_000_000;

    private Beside() {}

    public static void main(String[] args) throws Exception {
        ToLongBiFunction<String, Integer> earlier = version(args[0]);
        ToLongBiFunction<String, Integer> now = version(args[1]);
        int calls = Integer.parseInt(args[2]);
        System.out.println("heap,side in,calls,first earlier ms,first now ms,first ratio,warm earlier ms,warm now ms,warm ratio,"
                + "joins earlier,joins now,cuts earlier,cuts now");
        for (int i = 3; i + 1 < args.length; i += 2) {
            row(earlier, now, calls, args[i], Integer.parseInt(args[i + 1]));
        }
    }

    @SuppressWarnings("unchecked")
    private static ToLongBiFunction<String, Integer> version(String folders) throws Exception {
        List<URL> urls = new ArrayList<>();
        for (String folder : folders.split(":", -1)) {
            urls.add(Path.of(folder).toUri().toURL());
        }
        ClassLoader loader = new URLClassLoader(urls.toArray(new URL[0]), ClassLoader.getPlatformClassLoader());
        return (ToLongBiFunction<String, Integer>)
                loader.loadClass("PlanOnce").getDeclaredConstructor().newInstance();
    }

    private static void row(
            ToLongBiFunction<String, Integer> earlier,
            ToLongBiFunction<String, Integer> now,
            int calls,
            String heap,
            int side) {
        double[] before = new double[calls];
        double[] after = new double[calls];
        long was = 0;
        long is = 0;
        for (int call = 0; call < calls; call++) {
            if (call % 2 == 0) {
                was = earlier.applyAsLong(heap, side);
                is = now.applyAsLong(heap, side);
            } else {
                is = now.applyAsLong(heap, side);
                was = earlier.applyAsLong(heap, side);
            }
            before[call] = was / MILLION / 1e3;
            after[call] = is / MILLION / 1e3;
        }
        System.out.printf(
                Locale.ROOT,
                "%s,%d,%d,%.0f,%.0f,%.2f,%.0f,%.0f,%.2f,%d,%d,%d,%d%n",
                Path.of(heap).getFileName(),
                side,
                calls,
                before[0],
                after[0],
                after[0] / before[0],
                warm(before),
                warm(after),
                warm(after) / warm(before),
                was % MILLION / 1000,
                is % MILLION / 1000,
                was % 1000,
                is % 1000);
    }

    private static double warm(double[] all) {
        double[] half = java.util.Arrays.copyOfRange(all, all.length / 2, all.length);
        java.util.Arrays.sort(half);
        return half[half.length / 2];
    }
}
