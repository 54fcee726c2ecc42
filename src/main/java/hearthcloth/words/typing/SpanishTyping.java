package hearthcloth.words.typing;

/** The room of typing in Spanish. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class SpanishTyping implements TypingWords {

    @Override
    public String commandUnknown(String command, String commands) {
        return "No hay ninguna orden " + command + "; hay " + commands + ".";
    }

    @Override
    public String guidelineFavourite(String fabrics, String name) {
        return "--favourite: ninguna de las telas se llama \"" + name + "\"; hay " + fabrics + ".";
    }

    @Override
    public String guidelineTwice(String option) {
        return option + ": lo dice la pauta; quite " + option + " o escríbalo en la pauta.";
    }

    @Override
    public String guidelineWrote(String file, String name) {
        return file + " está escrito: " + name + ".";
    }

    @Override
    public String ideaLarge(String most, String size) {
        return "La página tendría " + size + " kB, más de " + most + " kB; quite la imagen o redúzcala.";
    }

    @Override
    public String ideaNoPieces() {
        return "Faltan los trozos del ejemplo; dé algunos con --from STASH.csv.";
    }

    @Override
    public String ideaWrote(String file, String size) {
        return file + " está escrito, " + size + " kB: un solo archivo, que se abre sin red. Envíelo o póngalo en su sitio web.";
    }

    @Override
    public String inside(String what) {
        return "Algo salió mal dentro de Hearthcloth (" + what + ").";
    }

    @Override
    public String kitsBoth() {
        return "--students: la lista dice cuántos paños hay; quite --students o --wishes.";
    }

    @Override
    public String kitsEmpty() {
        return "No hay telas; añada al menos un trozo.";
    }

    @Override
    public String kitsWhich() {
        return "¿Qué paños? Dé --wishes LIST.csv, o --students 12 --size \"16 in\".";
    }

    @Override
    public String language(String tags, String text) {
        return "\"" + text + "\" no es un idioma que se hable aquí; escriba uno de " + tags + ", o su nombre";
    }

    @Override
    public String memory() {
        return "A Hearthcloth no le bastó la memoria para estas telas. Quite algunos trozos y pruebe otra vez.";
    }

    @Override
    public String missing(String what) {
        return "Falta algo: " + what + ".";
    }

    @Override
    public String notFile(String text) {
        return "\"" + text + "\" no es un nombre de archivo; elija otro";
    }

    @Override
    public String note(String what) {
        return "Nota: " + what;
    }

    @Override
    public String optionNoValue(String option, String text) {
        return option + " no lleva valor; quite \"" + text + "\".";
    }

    @Override
    public String optionTwice(String option) {
        return option + " está escrito dos veces; quite uno de los dos.";
    }

    @Override
    public String optionUnknown(String option) {
        return "No hay ninguna opción " + option + ".";
    }

    @Override
    public String pictureColours(String what) {
        return "Los colores de la imagen y sus telas más cercanas: " + what + ".";
    }

    @Override
    public String pictureNear(String colour, String fabric, String percent) {
        return colour + " " + percent + ", " + fabric;
    }

    @Override
    public String pictureNothing(String colour, String percent) {
        return colour + " " + percent + ", nada cercano";
    }

    @Override
    public String progress(String percent, String what) {
        return (what.equals("drawing") ? "dibujando" : "leyendo: " + percent);
    }

    @Override
    public String readCannot(String file) {
        return file + " no se puede leer:";
    }

    @Override
    public String readCannotInput() {
        return "La imagen no se puede leer:";
    }

    @Override
    public String readDrawn(String file) {
        return "Dibujado en la foto: " + file + ".";
    }

    @Override
    public String readMemory() {
        return "La memoria no bastó para esta imagen; use una más pequeña.";
    }

    @Override
    public String readNothing() {
        return "No se escribió ningún archivo de telas, porque ningún trozo puede entrar tal como es.";
    }

    @Override
    public String report() {
        return "Sus archivos están intactos. Por favor, avise, con el archivo de telas y lo que escribió.";
    }

    @Override
    public String settings(String file, String line, String name) {
        return "El archivo de ajustes " + file + ", que nombra " + name + ", no se puede leer; escriba líneas como " + line + ", o quite " + name + ".";
    }

    @Override
    public String sheetWrote(String file) {
        return file + " está escrito. Imprímalo al 100 %, sin ajustarlo a la página; su línea fina mide entonces 20 cm, o 7 7/8 in.";
    }

    @Override
    public String shown(String command) {
        return "\"" + command + "\" muestra cómo se escribe.";
    }

    @Override
    public String sizeReach(String text) {
        return "\"" + text + "\" está fuera de alcance; un paño mide de 5 cm a 5 m, revise el número y su unidad";
    }

    @Override
    public String sizeWhich() {
        return "Diga qué envuelve, --gift \"box 30 x 20 x 8 cm\", o qué paño tiene, --cloth \"38 1/2 in\".";
    }

    @Override
    public String unread(String what) {
        return "Esto no se puede leer como está escrito: " + what + ".";
    }

    @Override
    public String unusable(String file) {
        return file + " no sirve tal como está:";
    }

    @Override
    public String unusableInput(String what) {
        return (what.equals("stash") ? "El archivo de telas" : "Lo que llegó") + " no sirve tal como está:";
    }

    @Override
    public String wordTooMany(String word) {
        return "\"" + word + "\" sobra; ponga entre comillas un deseo de varias palabras.";
    }
}
