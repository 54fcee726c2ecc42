package hearthcloth.words.reading;

/** The room of reading in German. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class GermanReading implements ReadingWords {

    @Override
    public String lengthBelow(String text) {
        return "„" + text + "“ ist kleiner als null; eine Länge ist null oder mehr";
    }

    @Override
    public String lengthByZero(String text) {
        return "„" + text + "“ teilt durch null; schreib einen Bruch wie 1/2";
    }

    @Override
    public String lengthMissing() {
        return "eine Länge fehlt; schreib zum Beispiel „16,5 cm“ oder „6 1/2 in“";
    }

    @Override
    public String lengthNoUnit(String text) {
        return "„" + text + "“ hat keine Einheit; schreib cm, mm oder in hinter die Zahl";
    }

    @Override
    public String lengthNumbers(String n, String text) {
        return "„" + text + "“ hat " + n + " Zahlen; eine Größe hat eine (ein Quadrat) oder zwei, wie „30 x 20 cm“";
    }

    @Override
    public String lengthTooLong(String text) {
        return "„" + text + "“ ist länger als ein Kilometer; prüf Zahl und Einheit";
    }

    @Override
    public String lengthTwoWays(String one, String other, String text) {
        return "„" + text + "“ lässt sich zweifach lesen; schreib " + one + " oder " + other;
    }

    @Override
    public String lengthUnit(String text, String word) {
        return "„" + text + "“: „" + word + "“ ist keine Einheit; schreib cm, mm, m, in, ft oder yd";
    }

    @Override
    public String lengthUnread(String text) {
        return "„" + text + "“ ist keine Länge; schreib zum Beispiel „16,5 cm“ oder „6 1/2 in“";
    }

    @Override
    public String lineColour(String text) {
        return "„" + text + "“ ist keine Farbe; schreib eine wie #8a9a5b oder einen Namen wie teal";
    }

    @Override
    public String lineHowMany(String most) {
        return "wie viele? schreib eine Zahl von 1 bis " + most;
    }

    @Override
    public String lineLong(String n) {
        return "diese Zeile ist " + n + " Zeichen lang; schreib in jede Zeile eine Art von Stück";
    }

    @Override
    public String lineLongName(String most) {
        return "der Name des Stoffs ist zu lang für einen Zettel; " + most + " Zeichen passen";
    }

    @Override
    public String lineNoName() {
        return "wie heißt der Stoff? eine Farbe genügt, wie „grüner Druck“";
    }

    @Override
    public String sizeMissing() {
        return "wie groß ist es? schreib eine Größe wie „10 x 20 cm“";
    }

    @Override
    public String sizeNothing() {
        return "eine Seite ist null; schreib eine Größe über null";
    }

    @Override
    public String sizeOneSide(String side) {
        return side + " ist eine Seite; und die andere? schreib „" + side + " x 20 cm“";
    }

    @Override
    public String sizeTooMuch() {
        return "so viel ist auf keinem Ballen; prüf die Zahlen und ihre Einheit";
    }
}
