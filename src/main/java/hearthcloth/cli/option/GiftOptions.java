package hearthcloth.cli.option;

import hearthcloth.measure.Unit;
import hearthcloth.wish.GiftWish;
import hearthcloth.wrap.Tie;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** What is wrapped and how. */
public final class GiftOptions {

    @Option(names = "--gift", paramLabel = "GIFT")
    @Nullable
    private String gift;

    @Option(names = "--tie", paramLabel = "TIE")
    @Nullable
    private String tie;

    /** The gift, as typed. */
    public @Nullable String gift() {
        return gift;
    }

    /** The tie, as typed. */
    public @Nullable String tie() {
        return tie;
    }

    /** The tie that was named. */
    public Optional<Tie> named() {
        return Optional.ofNullable(tie).map(GiftWish::tie);
    }

    /** The gift and its tie, the usual one where none was named; empty where there is no gift. */
    public Optional<GiftWish> read(@Nullable Unit bare) {
        return GiftWish.read(gift, tie, bare);
    }
}
