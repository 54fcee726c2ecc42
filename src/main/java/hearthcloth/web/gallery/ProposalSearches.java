package hearthcloth.web.gallery;

import hearthcloth.store.Store;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;

/** The last search of each one's work; in a studio there are several. Thread-safe. */
final class ProposalSearches {

    private final Map<Store, ProposalSearch> searches = new ConcurrentHashMap<>();

    /** What may be asked next: the first look at it, made before. */
    private final Map<Store, ProposalSearch> foreseen = new ConcurrentHashMap<>();

    /** The last search for this work, going on or ended. */
    Optional<ProposalSearch> of(Store work) {
        return Optional.ofNullable(searches.get(work));
    }

    /** Ends every search that is going on. */
    void stop() {
        searches.values().forEach(ProposalSearch::stop);
        foreseen.values().forEach(ProposalSearch::stop);
    }

    /** Ends and forgets the search of this work: there is nothing that it would answer. */
    synchronized void forget(Store work) {
        Optional.ofNullable(searches.remove(work)).ifPresent(ProposalSearch::stop);
    }

    /** Makes the first look at what will most likely be asked next, in place of the one that was foreseen before. */
    synchronized void foresee(Store work, ProposalSearch.Question question) {
        boolean isThere = Stream.of(searches, foreseen)
                .map(map -> Optional.ofNullable(map.get(work)))
                .anyMatch(search -> search.filter(one -> one.isFor(question)).isPresent());
        if (!isThere) {
            Optional.ofNullable(foreseen.put(work, ProposalSearch.foresee(question)))
                    .ifPresent(ProposalSearch::stop);
        }
    }

    /** Begins a search for this wish unless one is going on or has answered it. */
    synchronized void begin(Store work, ProposalSearch.Question question) {
        Optional<ProposalSearch> last = of(work);
        if (last.isPresent() && last.get().isFor(question) && !last.get().isFailed()) {
            return;
        }
        last.ifPresent(ProposalSearch::stop);
        Optional<ProposalSearch> made = Optional.ofNullable(foreseen.remove(work));
        Optional<ProposalSearch> fit = made.filter(one -> one.isFor(question) && !one.isFailed());
        if (fit.isEmpty()) {
            made.ifPresent(ProposalSearch::stop);
        }
        ProposalSearch now = fit.orElseGet(() -> ProposalSearch.foresee(question));
        now.want();
        searches.put(work, now);
    }
}
