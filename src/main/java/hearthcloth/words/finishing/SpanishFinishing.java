package hearthcloth.words.finishing;

/** The room of finishing in Spanish. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class SpanishFinishing implements FinishingWords {

    @Override
    public String againBefore(int n) {
        return (n == 1 ? "Una vez antes, sin nota." : "" + n + " veces antes, sin nota.");
    }

    @Override
    public String againFor(String who) {
        return "para " + who;
    }

    @Override
    public String againSomething() {
        return "algo";
    }

    @Override
    public String againTitle() {
        return "Envuelto otra vez";
    }

    @Override
    public String againUsed(String cloth, int n) {
        return cloth + " se ha usado " + (n == 1 ? "" + n + " vez" : "" + n + " veces") + ".";
    }

    @Override
    public String againWhat() {
        return "Qué";
    }

    @Override
    public String againWhen() {
        return "Cuándo";
    }

    @Override
    public String againWho() {
        return "Para quién";
    }

    @Override
    public String bars(int n) {
        return (n == 1 ? "" + n + " tira" : "" + n + " tiras");
    }

    @Override
    public String date(String day, String month, String year) {
        return day + " de " + (month.equals("m1") ? "enero" : month.equals("m2") ? "febrero" : month.equals("m3") ? "marzo" : month.equals("m4") ? "abril" : month.equals("m5") ? "mayo" : month.equals("m6") ? "junio" : month.equals("m7") ? "julio" : month.equals("m8") ? "agosto" : month.equals("m9") ? "septiembre" : month.equals("m10") ? "octubre" : month.equals("m11") ? "noviembre" : "diciembre") + " de " + year;
    }

    @Override
    public String how(int days, int fabrics, String parts) {
        return parts + ", " + (fabrics == 1 ? "" + fabrics + " tela" : "" + fabrics + " telas") + (days == 0 ? "" : days == 1 ? ", cosido en un día" : ", cosido en " + days + " días") + ".";
    }

    @Override
    public String labelAgain() {
        return "envuelto otra vez";
    }

    @Override
    public String labelSlip() {
        return "etiqueta";
    }

    @Override
    public String labelSlipOf(String cloth) {
        return "etiqueta de " + cloth;
    }

    @Override
    public String lastStep() {
        return "Volver al último paso";
    }

    @Override
    public String leftBack(int n) {
        return (n == 1 ? "Está otra vez en la mesa, con su medida de ahora." : "Están otra vez en la mesa, con su medida de ahora.");
    }

    @Override
    public String leftFirst() {
        return "Estos sobrantes se usan primero. ¿Qué van a envolver?";
    }

    @Override
    public String leftHeading(int n) {
        return (n == 0 ? "Ningún sobrante que guardar" : n == 1 ? "Un sobrante que guardar" : "" + n + " sobrantes que guardar");
    }

    @Override
    public String leftNone() {
        return "Ya no queda ninguno en la lista de telas.";
    }

    @Override
    public String leftOne(String fabric, String size) {
        return fabric + ", " + size;
    }

    @Override
    public String leftSome(String n) {
        return n + " siguen en la mesa; los demás se han usado.";
    }

    @Override
    public String leftUse() {
        return "Usar los sobrantes";
    }

    @Override
    public String leftUsed() {
        return "Todo se ha usado desde entonces.";
    }

    @Override
    public String notMade() {
        return "Aún no está hecho: no hay bastante tela.";
    }

    @Override
    public String patches(int n) {
        return (n == 1 ? "" + n + " pieza" : "" + n + " piezas");
    }

    @Override
    public String photoAnother() {
        return "Otra foto";
    }

    @Override
    public String photoAway() {
        return "Quitarla";
    }

    @Override
    public String photoAwayAsk() {
        return "¿Quitar la foto? No se guarda aquí en ningún otro sitio.";
    }

    @Override
    public String photoDrawn(String cloth) {
        return cloth + ", dibujado";
    }

    @Override
    public String photoIsAway() {
        return "La foto se ha quitado; vuelve el dibujo.";
    }

    @Override
    public String photoIts() {
        return "Su foto";
    }

    @Override
    public String photoKeep() {
        return "Guardarla";
    }

    @Override
    public String photoKept() {
        return "La foto está guardada. No se guarda dónde ni cuándo se tomó.";
    }

    @Override
    public String photoNone() {
        return "No hay foto de este paño.";
    }

    @Override
    public String photoSend() {
        return "Las dos caras, para enviar";
    }

    @Override
    public String photoTake() {
        return "Hacerle una foto";
    }

    @Override
    public String photoYours(String cloth) {
        return "Su foto de " + cloth;
    }

    @Override
    public String picture(String cloth) {
        return "Anverso de " + cloth;
    }

    @Override
    public String slipAgainst(String across, String both, String height, String up, String width) {
        return (across.equals("less") ? "" + width + " más estrecho" : across.equals("more") ? "" + width + " más ancho" : "") + (both.equals("yes") ? ", " : "") + (up.equals("less") ? "" + height + " más bajo" : up.equals("more") ? "" + height + " más alto" : "") + " de lo previsto.";
    }

    @Override
    public String slipAnd() {
        return "y";
    }

    @Override
    public String slipAsPlanned() {
        return "Como estaba previsto.";
    }

    @Override
    public String slipCorners() {
        return "De esquina a esquina";
    }

    @Override
    public String slipCornersOther() {
        return "De esquina a esquina, en el otro sentido";
    }

    @Override
    public String slipHeight() {
        return "Alto";
    }

    @Override
    public String slipIsKept() {
        return "La etiqueta está guardada.";
    }

    @Override
    public String slipIts() {
        return "Su etiqueta";
    }

    @Override
    public String slipKeep() {
        return "Guardar esta etiqueta";
    }

    @Override
    public String slipKeeper() {
        return "Para quién";
    }

    @Override
    public String slipLeans(String length) {
        return "De esquina a esquina los dos sentidos difieren en " + length + ": está un poco torcido. Atado, nadie lo ve.";
    }

    @Override
    public String slipLongName(String most) {
        return "Escriba un nombre de hasta " + most + " letras.";
    }

    @Override
    public String slipLongNote(String most) {
        return "Una nota tiene " + most + " letras como máximo.";
    }

    @Override
    public String slipMade() {
        return "Hecho el";
    }

    @Override
    public String slipMeasures(String unit) {
        return "Mide, " + unit;
    }

    @Override
    public String slipMissing(String side) {
        return (side.equals("width") ? "Dé también el ancho, o deje todo el tamaño en blanco." : "Dé también el alto, o deje todo el tamaño en blanco.");
    }

    @Override
    public String slipName() {
        return "Su nombre";
    }

    @Override
    public String slipPlanned(String size) {
        return "previsto " + size;
    }

    @Override
    public String slipPrint() {
        return "Imprimirla";
    }

    @Override
    public String slipSewn() {
        return "Está cosido";
    }

    @Override
    public String slipStraight() {
        return "De esquina a esquina mide igual en los dos sentidos.";
    }

    @Override
    public String slipTie() {
        return "Cómo se ata";
    }

    @Override
    public String slipUnread(String field, String why) {
        return (field.equals("width") ? "El ancho" : field.equals("height") ? "El alto" : field.equals("corner") ? "De esquina a esquina" : "Las otras esquinas") + ": " + why;
    }

    @Override
    public String slipWidth() {
        return "Ancho";
    }

    @Override
    public String slipWord() {
        return "Una nota para usted";
    }

    @Override
    public String slipWrapped() {
        return "Envolvió";
    }

    @Override
    public String title() {
        return "Está cosido, y aguanta.";
    }
}
