package hearthcloth.store;

import hearthcloth.work.Project;

/**
 * A cloth in the store.
 *
 * @param version increases with each save; a save with an old one is refused
 * @param changed time of the last change, ISO 8601 in UTC
 */
public record SavedCloth(String id, String name, Project document, String changed, long version) {}
