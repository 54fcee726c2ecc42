package hearthcloth.guideline.fit;

import java.util.Optional;

/**
 * What a reader adds to a guideline.
 *
 * @param favourite the name of the fabric she likes best, where she says one
 * @param proposals how many cloths are offered
 * @param seed of every random choice
 */
public record Ask(Optional<String> favourite, int proposals, long seed) {}
