package hearthcloth.store;

import java.util.Optional;
import org.jdbi.v3.core.Jdbi;

/** Pictures of her fabrics, by the fabric's name. Thread-safe. */
public final class SwatchBook {

    private final Jdbi jdbi;

    SwatchBook(Jdbi jdbi) {
        this.jdbi = jdbi;
    }

    /** A picture of a fabric: its media type and its bytes in base 64. */
    public record Swatch(String kind, String picture) {}

    public Optional<Swatch> find(String fabric) {
        return jdbi.withHandle(handle -> handle.createQuery("select kind, picture from swatch where fabric = :fabric")
                .bind("fabric", fabric)
                .map((row, context) -> new Swatch(row.getString("kind"), row.getString("picture")))
                .findOne());
    }

    public void keep(String fabric, Swatch swatch) {
        jdbi.useTransaction(handle -> handle.createUpdate(
                        "insert into swatch (fabric, kind, picture) values (:fabric, :kind, :picture) on conflict (fabric)"
                                + " do update set kind = excluded.kind, picture = excluded.picture")
                .bind("fabric", fabric)
                .bind("kind", swatch.kind())
                .bind("picture", swatch.picture())
                .execute());
    }
}
