package hearthcloth.cutstock.piecing.parameter;

/**
 * The values of all stages of the search for cloths of scraps. "Tuned" means set by trial on planted and wild heaps of 6 to 120
 * scraps, as docs/piecing.md tells them; what each earns {@code ./check ablate piecing} tells. No value changes what a cloth may
 * be, only how soon a good one is found. Shares are of an area: 0.01 is one per cent.
 *
 * @param cutPrice what cutting a scrap in two counts as, as a share of the cloth's net area: below what anyone would notice as
 *     loss, yet enough that an offcut is not made for nothing; tuned
 * @param shortHeap what is offered where the heap does not suffice
 * @param cover how one cloth is covered
 * @param several how several cloths are covered
 * @param blocks how blocks are searched
 */
public record PiecingParameters(
        double cutPrice,
        ShortHeapParameters shortHeap,
        CoverParameters cover,
        SeveralParameters several,
        BlockParameters blocks) {

    /** The values that the search works with. */
    public static PiecingParameters standard() {
        return new PiecingParameters(
                1.0 / 3000,
                ShortHeapParameters.standard(),
                CoverParameters.standard(),
                SeveralParameters.standard(),
                BlockParameters.standard());
    }
}
