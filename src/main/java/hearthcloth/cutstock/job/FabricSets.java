package hearthcloth.cutstock.job;

import java.util.BitSet;
import java.util.stream.IntStream;

/** An immutable set of fabric numbers. */
public final class FabricSets {

    private final BitSet members;

    private FabricSets(BitSet members) {
        this.members = members;
    }

    /** The set of these fabrics. */
    public static FabricSets of(int... fabrics) {
        return of(IntStream.of(fabrics));
    }

    /** The set of these fabrics. */
    public static FabricSets of(IntStream fabrics) {
        BitSet set = new BitSet();
        fabrics.forEach(set::set);
        return new FabricSets(set);
    }

    /** Whether the fabric is one of them. */
    public boolean has(int fabric) {
        return members.get(fabric);
    }

    /** The fabrics, ascending. */
    public IntStream stream() {
        return members.stream();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof FabricSets that && members.equals(that.members);
    }

    @Override
    public int hashCode() {
        return members.hashCode();
    }

    @Override
    public String toString() {
        return members.toString();
    }
}
