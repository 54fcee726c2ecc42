package hearthcloth.colour;

import hearthcloth.colour.Matrix.Row;

/**
 * How colour looks to people who wholly lack one kind of cone. It is for checking labels and legends and is no
 * diagnosis. Applied to linear light. Source: docs/sources.md#colour-vision.
 */
public enum ColourVision {
    /** No long-wave cones: red looks dark, red and green alike. */
    PROTAN(
            "red-blind",
            new Row(0.152286, 1.052583, -0.204868),
            new Row(0.114503, 0.786281, 0.099216),
            new Row(-0.003882, -0.048116, 1.051998)),
    /** No middle-wave cones: red and green alike. */
    DEUTAN(
            "green-blind",
            new Row(0.367322, 0.860646, -0.227968),
            new Row(0.280085, 0.672501, 0.047413),
            new Row(-0.011820, 0.042940, 0.968881)),
    /** No short-wave cones: blue and green alike, yellow and violet alike; rare. */
    TRITAN(
            "blue-blind",
            new Row(1.255528, -0.076749, -0.178779),
            new Row(-0.078411, 0.930809, 0.147602),
            new Row(0.004733, 0.691367, 0.303900));

    @SuppressWarnings("ImmutableEnumChecker") // a record of records of numbers; only the annotation is missing
    private final Matrix matrix;

    private final String word;

    ColourVision(String word, Row red, Row green, Row blue) {
        this.word = word;
        this.matrix = new Matrix(red, green, blue);
    }

    /** A colour that looks to a typical eye as {@code colour} looks to this one. */
    public Colour seen(Colour colour) {
        return Light.toColour(matrix.times(Light.of(colour)));
    }

    /** The word for such eyes: {@code red-blind}. */
    public String word() {
        return word;
    }

    /** The change of linear light as the nine numbers of a matrix, row by row. */
    public double[] rows() {
        Row a = matrix.first();
        Row b = matrix.second();
        Row c = matrix.third();
        return new double[] {a.x(), a.y(), a.z(), b.x(), b.y(), b.z(), c.x(), c.y(), c.z()};
    }
}
