package hearthcloth.store;

import hearthcloth.measure.Length;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.jdbi.v3.core.Jdbi;

/** Pictures of her fabrics, by the fabric's name. Thread-safe. */
public final class SwatchBook {

    private final Jdbi jdbi;

    SwatchBook(Jdbi jdbi) {
        this.jdbi = jdbi;
    }

    /**
     * A picture of a fabric.
     *
     * @param kind its media type
     * @param picture its bytes in base 64
     * @param across the width of cloth it shows
     */
    public record Swatch(String kind, String picture, Length across) {

        /** The width assumed where nobody measured it: a hand's breadth. */
        private static final Length USUAL = Length.cm(10);

        public Swatch(String kind, String picture) {
            this(kind, picture, USUAL);
        }
    }

    public Optional<Swatch> find(String fabric) {
        return jdbi.withHandle(handle -> handle.createQuery("select * from swatch where fabric = :fabric")
                .bind("fabric", fabric)
                .map((row, context) -> swatch(row))
                .findOne());
    }

    private static Swatch swatch(ResultSet row) throws SQLException {
        return new Swatch(row.getString("kind"), row.getString("picture"), new Length(row.getLong("across")));
    }

    /** For each fabric that has a picture, the width of cloth it shows. */
    public Map<String, Length> across() {
        Map<String, Length> across = new HashMap<>();
        jdbi.useHandle(handle -> handle.createQuery("select fabric, across from swatch")
                .map((row, context) -> Map.entry(row.getString("fabric"), new Length(row.getLong("across"))))
                .forEach(entry -> across.put(entry.getKey(), entry.getValue())));
        return Map.copyOf(across);
    }

    public void keep(String fabric, Swatch swatch) {
        jdbi.useTransaction(handle -> handle.createUpdate(
                        "insert into swatch (fabric, kind, picture, across) values (:fabric, :kind, :picture, :across)"
                                + " on conflict (fabric) do update set kind = excluded.kind, picture = excluded.picture,"
                                + " across = excluded.across")
                .bind("fabric", fabric)
                .bind("kind", swatch.kind())
                .bind("picture", swatch.picture())
                .bind("across", swatch.across().nm())
                .execute());
    }

    public void remove(String fabric) {
        jdbi.useTransaction(handle -> handle.createUpdate("delete from swatch where fabric = :fabric")
                .bind("fabric", fabric)
                .execute());
    }
}
