package hearthcloth.store;

import java.time.Clock;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.jdbi.v3.core.Jdbi;

/** Her photographs of finished cloths, one of each, by the cloth's id. Thread-safe. */
public final class PortraitBook {

    private final Jdbi jdbi;
    private final Clock clock;

    PortraitBook(Jdbi jdbi, Clock clock) {
        this.jdbi = jdbi;
        this.clock = clock;
    }

    /** The JPEG of a cloth; empty where none was taken. */
    public Optional<byte[]> find(String cloth) {
        return jdbi.withHandle(handle -> handle.createQuery("select picture from portrait where cloth = :cloth")
                .bind("cloth", cloth)
                .map((row, context) -> row.getBytes("picture"))
                .findOne());
    }

    /** For each cloth that has a photograph, when that was kept: ISO 8601 in UTC. */
    public Map<String, String> kept() {
        Map<String, String> kept = new HashMap<>();
        jdbi.useHandle(handle -> handle.createQuery("select cloth, kept from portrait")
                .map((row, context) -> Map.entry(row.getString("cloth"), row.getString("kept")))
                .forEach(entry -> kept.put(entry.getKey(), entry.getValue())));
        return Map.copyOf(kept);
    }

    /**
     * Keeps the photograph of a cloth in place of the one before. Those of cloths that are removed and can no longer be
     * brought back go.
     */
    public void keep(String cloth, byte[] jpeg) {
        jdbi.useTransaction(handle -> {
            handle.createUpdate("insert into portrait (cloth, kept, picture) values (:cloth, :now, :picture)"
                            + " on conflict (cloth) do update set kept = excluded.kept, picture = excluded.picture")
                    .bind("cloth", cloth)
                    .bind("now", clock.instant().toString())
                    .bind("picture", jpeg)
                    .execute();
            handle.execute("delete from portrait where not exists (select 1 from cloth where id = portrait.cloth)"
                    + " and not exists (select 1 from fact where book = 'cloth:' || portrait.cloth)");
        });
    }

    public void remove(String cloth) {
        jdbi.useTransaction(handle -> handle.createUpdate("delete from portrait where cloth = :cloth")
                .bind("cloth", cloth)
                .execute());
    }
}
