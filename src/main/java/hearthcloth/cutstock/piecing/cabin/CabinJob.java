package hearthcloth.cutstock.piecing.cabin;

import hearthcloth.cutstock.piecing.Scrap;
import java.util.List;

/**
 * Blocks to be made of one heap.
 *
 * @param scraps at cut sizes
 * @param tones of each scrap, light or dark
 * @param rules what sewing takes and what is kept
 */
public record CabinJob(List<Cabin> cabins, List<Scrap> scraps, List<Cabin.Tone> tones, Rules rules) {

    public CabinJob {
        cabins = List.copyOf(cabins);
        scraps = List.copyOf(scraps);
        tones = List.copyOf(tones);
        if (tones.size() != scraps.size()) {
            throw new IllegalArgumentException(tones.size() + " tones of " + scraps.size() + " scraps");
        }
    }

    /**
     * Lengths in the unit of the job.
     *
     * @param seam what a seam takes of both sides together
     * @param least the least net side of a patch
     * @param keep the least side of an offcut that goes back
     */
    public record Rules(long seam, long least, long keep) {}
}
