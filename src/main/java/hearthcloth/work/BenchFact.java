package hearthcloth.work;

import hearthcloth.measure.Length;
import hearthcloth.work.Project.Done;
import hearthcloth.work.Project.Measure;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Something that happened to a cloth on the bench, told by what it was. */
public sealed interface BenchFact {

    /**
     * Cuts were made, or a tick was taken away from them.
     *
     * @param cuts piece id, colon, number of the cut in its piece
     */
    record Cut(List<String> cuts, boolean made) implements BenchFact {
        public Cut {
            cuts = List.copyOf(cuts);
        }
    }

    /**
     * A step at the machine was done, or its work was measured once more.
     *
     * @param step its number, from 0
     * @param at when it was done, as ISO 8601 writes it; missing where it was done before and is only measured now
     * @param measured missing where she did not measure
     * @param last whether the cloth is sewn with it
     */
    record Sewn(
            int step,
            Seam seam,
            @Nullable String at,
            @Nullable Measured measured,
            boolean last) implements BenchFact {

        public Optional<Measure> measure() {
            return Optional.ofNullable(measured).map(one -> new Measure(step, one.planned(), one.real()));
        }

        public Optional<Done> done() {
            return Optional.ofNullable(at).map(time -> new Done(seam.kind(), Instant.parse(time)));
        }
    }

    /**
     * What a step sews.
     *
     * @param kind of the step, as {@link Done} has it
     * @param bar that is sewn on; empty where none is
     * @param up which side of its fabric shows on the front: {@code SAME} where both look alike, empty without a bar
     */
    record Seam(String kind, String bar, String up) {}

    /**
     * What the work measures after a seam, raw.
     *
     * @param planned across the seam, given the real size of the work before it
     * @param real across the seam
     * @param width as she measured it, at one end or both; empty where she did not
     * @param height likewise
     */
    record Measured(Length planned, Length real, List<Length> width, List<Length> height) {
        public Measured {
            width = List.copyOf(width);
            height = List.copyOf(height);
        }
    }

    /**
     * Seams were opened again: all steps from one on are to do again.
     *
     * @param from the first step that is open, from 0
     * @param to how many steps were done
     * @param bars whose seams were opened, the last first
     * @param sewn whether the whole cloth was sewn
     */
    record Unpicked(int from, int to, List<String> bars, boolean sewn) implements BenchFact {
        public Unpicked {
            bars = List.copyOf(bars);
        }
    }
}
