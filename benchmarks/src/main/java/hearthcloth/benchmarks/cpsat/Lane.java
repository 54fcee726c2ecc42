package hearthcloth.benchmarks.cpsat;

/**
 * A strip of fabric from which parts are cut one after another.
 *
 * @param turned whether it lies across its piece
 */
record Lane(long width, long length, boolean turned) {}
