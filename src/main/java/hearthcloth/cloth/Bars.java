package hearthcloth.cloth;

import java.util.Optional;

/** The name of the one bar that an assembly is a part of; empty where it is more than one bar. */
public record Bars() implements Assembly.Fold<Optional<String>> {

    public static Optional<String> name(Assembly assembly) {
        return assembly.fold(new Bars());
    }

    @Override
    public Optional<String> patch(Patch patch) {
        return patch.place() instanceof Place.Bar bar ? Optional.of(bar.bar()) : Optional.empty();
    }

    @Override
    public Optional<String> seam(Seam seam, Optional<String> first, Optional<String> second) {
        return first.equals(second) ? first : Optional.empty();
    }
}
