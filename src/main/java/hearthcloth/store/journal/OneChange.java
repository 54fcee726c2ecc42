package hearthcloth.store.journal;

import java.util.Optional;
import java.util.function.Supplier;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.config.JdbiConfig;
import org.jspecify.annotations.Nullable;

/**
 * Whether what is done on a connection belongs to one change that touches several books. It lives as long as the
 * transaction that the change is.
 */
public final class OneChange implements JdbiConfig<OneChange> {

    private @Nullable String label;
    private @Nullable Long number;

    /** None under way; for Jdbi, which makes one for each connection. */
    public OneChange() {
        this(null, null);
    }

    private OneChange(@Nullable String label, @Nullable Long number) {
        this.label = label;
        this.number = number;
    }

    static OneChange of(Handle handle) {
        return handle.getConfig(OneChange.class);
    }

    /**
     * Runs {@code work}, whose edits of all books become one change of this name; within another such change they belong to
     * that one.
     */
    public static <T> T named(Handle handle, String label, Supplier<T> work) {
        OneChange here = of(handle);
        if (here.label != null) {
            return work.get();
        }
        here.label = label;
        here.number = null;
        try {
            return work.get();
        } finally {
            here.label = null;
            here.number = null;
        }
    }

    Optional<String> label() {
        return Optional.ofNullable(label);
    }

    Optional<Long> number() {
        return Optional.ofNullable(number);
    }

    /** The next edit joins the change of this number, where one is under way. */
    void goesOn(long begun) {
        if (label != null) {
            number = begun;
        }
    }

    @Override
    public OneChange createCopy() {
        return new OneChange(label, number);
    }
}
