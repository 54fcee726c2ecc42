package hearthcloth.photo.parameter;

/**
 * The values of all stages of the reader, in the order in which a picture passes them; another
 * value is tried by passing another record.
 *
 * @param ground what the pieces lie on
 * @param segment what stands out from it, and where one shape is two pieces
 * @param edge where the sides are
 * @param sheet which shape is the sheet
 * @param printed where the measuring sheet is
 * @param measuring what a shape measures, and when it is doubted
 */
public record ReadingParameters(
        GroundParameters ground,
        SegmentParameters segment,
        EdgeParameters edge,
        SheetParameters sheet,
        PrintedSheetParameters printed,
        MeasuringParameters measuring) {

    /** The values that the reader works with. */
    public static ReadingParameters standard() {
        return new ReadingParameters(
                GroundParameters.standard(),
                SegmentParameters.standard(),
                EdgeParameters.standard(),
                SheetParameters.standard(),
                PrintedSheetParameters.standard(),
                MeasuringParameters.standard());
    }
}
