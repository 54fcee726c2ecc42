package hearthcloth.cli.option;

import hearthcloth.measure.Ruler;
import hearthcloth.wish.Rulers;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** Which ruler she has in hand. */
public final class UnitOption {

    @Option(names = "--unit", paramLabel = "in|cm")
    @Nullable
    private String unit;

    /** The ruler that was asked for. */
    public Optional<Ruler> ruler() {
        return Rulers.wished(unit);
    }
}
