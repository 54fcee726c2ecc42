package hearthcloth.words.reading;

/** The room of reading in Spanish. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class SpanishReading implements ReadingWords {

    @Override
    public String lengthBelow(String text) {
        return "«" + text + "» es menor que cero; una longitud es cero o más";
    }

    @Override
    public String lengthByZero(String text) {
        return "«" + text + "» divide por cero; escriba una fracción como 1/2";
    }

    @Override
    public String lengthMissing() {
        return "falta una longitud; escriba por ejemplo «16,5 cm» o «6 1/2 in»";
    }

    @Override
    public String lengthNoUnit(String text) {
        return "«" + text + "» no tiene unidad; escriba cm, mm o in después del número";
    }

    @Override
    public String lengthNumbers(String n, String text) {
        return "«" + text + "» tiene " + n + " números; un tamaño tiene uno (un cuadrado) o dos, como «30 x 20 cm»";
    }

    @Override
    public String lengthTooLong(String text) {
        return "«" + text + "» pasa de un kilómetro; revise el número y la unidad";
    }

    @Override
    public String lengthTwoWays(String one, String other, String text) {
        return "«" + text + "» se puede leer de dos maneras; escriba " + one + " o " + other;
    }

    @Override
    public String lengthUnit(String text, String word) {
        return "«" + text + "»: «" + word + "» no es una unidad; escriba cm, mm, m, in, ft o yd";
    }

    @Override
    public String lengthUnread(String text) {
        return "«" + text + "» no es una longitud; escriba por ejemplo «16,5 cm» o «6 1/2 in»";
    }

    @Override
    public String lineColour(String text) {
        return "«" + text + "» no es un color; escriba uno como #8a9a5b o un nombre como teal";
    }

    @Override
    public String lineHowMany(String most) {
        return "¿cuántos? escriba un número de 1 a " + most;
    }

    @Override
    public String lineLong(String n) {
        return "esta línea tiene " + n + " letras; escriba una sola clase de trozo por línea";
    }

    @Override
    public String lineLongName(String most) {
        return "el nombre de la tela es demasiado largo para una etiqueta; caben " + most + " letras";
    }

    @Override
    public String lineNoName() {
        return "¿cómo se llama la tela? basta un color, como «estampado verde»";
    }

    @Override
    public String sizeMissing() {
        return "¿de qué tamaño es? escriba un tamaño como «10 x 20 cm»";
    }

    @Override
    public String sizeNothing() {
        return "un lado es cero; escriba un tamaño mayor que cero";
    }

    @Override
    public String sizeOneSide(String side) {
        return side + " es un lado; ¿y el otro? escriba «" + side + " x 20 cm»";
    }

    @Override
    public String sizeTooMuch() {
        return "es más de lo que tiene cualquier rollo; revise los números y su unidad";
    }
}
