package hearthcloth;

import com.sun.management.OperatingSystemMXBean;
import java.lang.management.ManagementFactory;

/** What this process has cost so far; unlike the time that passed, it is the same beside other work. */
public final class Processor {

    private static final OperatingSystemMXBean SYSTEM =
            (OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();

    private Processor() {}

    /** Processor time of all threads, in seconds. */
    public static double seconds() {
        return SYSTEM.getProcessCpuTime() / 1e9;
    }
}
