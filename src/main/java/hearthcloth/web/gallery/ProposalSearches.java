package hearthcloth.web.gallery;

import hearthcloth.store.Store;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/** The last search of each one's work; in a studio there are several. Thread-safe. */
final class ProposalSearches {

    private final Map<Store, ProposalSearch> searches = new ConcurrentHashMap<>();

    /** The last search for this work, going on or ended. */
    Optional<ProposalSearch> of(Store work) {
        return Optional.ofNullable(searches.get(work));
    }

    /** Ends every search that is going on. */
    void stop() {
        searches.values().forEach(ProposalSearch::stop);
    }

    /** Ends and forgets the search of this work: there is nothing that it would answer. */
    synchronized void forget(Store work) {
        Optional.ofNullable(searches.remove(work)).ifPresent(ProposalSearch::stop);
    }

    /** Begins a search for this wish unless one is going on or has answered it. */
    synchronized void begin(Store work, ProposalSearch.Question question) {
        Optional<ProposalSearch> last = of(work);
        if (last.isPresent() && last.get().isFor(question) && !last.get().isFailed()) {
            return;
        }
        last.ifPresent(ProposalSearch::stop);
        searches.put(work, ProposalSearch.begin(question));
    }
}
