package hearthcloth.store.json;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.databind.util.StdConverter;
import hearthcloth.colour.Colour;
import hearthcloth.colour.Figure;
import hearthcloth.stash.Fabric;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A fabric as it is kept.
 *
 * @param wrong the colour of its wrong side; left out where she says none, as in every document from before
 * @param figure how figured her picture of it shows it; left out where there is none or it shows plain cloth
 */
record KeptFabric(
        String name,
        Colour colour,
        Fabric.Faces faces,
        Fabric.Nap nap,
        @JsonInclude(JsonInclude.Include.NON_NULL) @Nullable Colour wrong,
        @JsonInclude(JsonInclude.Include.NON_NULL) @Nullable Figure figure) {

    /** On the way into a document. */
    static final class IntoDocument extends StdConverter<Fabric, KeptFabric> {
        @Override
        public KeptFabric convert(Fabric fabric) {
            return new KeptFabric(
                    fabric.name(),
                    fabric.colour(),
                    fabric.faces(),
                    fabric.nap(),
                    fabric.wrong().orElse(null),
                    fabric.pictured().orElse(null));
        }
    }

    /** On the way out of one. */
    static final class FromDocument extends StdConverter<KeptFabric, Fabric> {
        @Override
        public Fabric convert(KeptFabric kept) {
            return new Fabric(
                    kept.name,
                    kept.colour,
                    kept.faces,
                    kept.nap,
                    Optional.ofNullable(kept.wrong),
                    Optional.ofNullable(kept.figure));
        }
    }
}
