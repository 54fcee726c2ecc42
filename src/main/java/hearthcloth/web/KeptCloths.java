package hearthcloth.web;

import hearthcloth.guideline.SentCloth;
import hearthcloth.store.SavedCloth;
import hearthcloth.store.Store;
import hearthcloth.store.studio.StudioAddress;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Optional;

/** The cloths in a maker's file, read from the shell without opening the workroom. */
public final class KeptCloths {

    private KeptCloths() {}

    /**
     * Those with a hearth and bars that can be made, the last changed first; of the file that HEARTHCLOTH_DATA names, or of the
     * usual one. None where there is no such file, or where it is a studio's, in which each has her own.
     */
    public static List<SentCloth> all() {
        Optional<String> place = Optional.ofNullable(System.getenv("HEARTHCLOTH_DATA"));
        Path file =
                place.filter(text -> !StudioAddress.isOne(text)).map(Path::of).orElseGet(Opening::usual);
        if (place.filter(StudioAddress::isOne).isPresent() || !Files.isRegularFile(file)) {
            return List.of();
        }
        try (Store store = Store.open(file, Clock.systemUTC())) {
            return store.cloths().all().stream()
                    .flatMap(cloth -> sent(cloth).stream())
                    .toList();
        }
    }

    private static Optional<SentCloth> sent(SavedCloth cloth) {
        return cloth.document()
                .plan()
                .filter(plan -> !cloth.document().isFree())
                .map(plan -> new SentCloth(cloth.name(), plan.cloth(), plan.fabrics(), plan.rules()));
    }
}
