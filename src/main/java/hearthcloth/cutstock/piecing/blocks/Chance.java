package hearthcloth.cutstock.piecing.blocks;

/** Chance that a set of scraps has once and for all, from 0 to 1. */
final class Chance {

    private Chance() {}

    static double of(long seed, long set) {
        long mixed = (set ^ seed * 0x9E3779B97F4A7C15L) * 0xBF58476D1CE4E5B9L;
        mixed = (mixed ^ (mixed >>> 31)) * 0x94D049BB133111EBL;
        return ((mixed ^ (mixed >>> 29)) >>> 11) * 0x1.0p-53;
    }
}
