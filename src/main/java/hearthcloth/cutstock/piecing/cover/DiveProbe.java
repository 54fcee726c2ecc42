package hearthcloth.cutstock.piecing.cover;
import hearthcloth.cutstock.piecing.blocks.*;
import java.util.*; import java.util.function.*;
public class DiveProbe {
  public static Optional<Covered> go(Heap heap, int W, int H, double cap, int b1,int s1,int b2,int s2,int end, BooleanSupplier spent, SplittableRandom r, double price, boolean first, long bound) {
    int[] all = java.util.stream.IntStream.range(0, heap.size()).toArray();
    double p = price < 0 ? -1 : price * W * H;
    return new Dive(heap, spent, r).cover(W, H, all, bound, new Dive.Style(new Effort(cap, b1, s1, p, 0), new Effort(cap, b2, s2, p, 0), end, first));
  }
}
