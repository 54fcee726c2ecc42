package hearthcloth.words.ruling;

/** The room of ruling in Spanish. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class SpanishRuling implements RulingWords {

    @Override
    public String asked() {
        return "pieza central, tiras y vueltas como se pidió";
    }

    @Override
    public String askedGift(String gift, String tie) {
        return gift + ", " + tie;
    }

    @Override
    public String bars(String rule) {
        return "Tiras alrededor: " + rule + ".";
    }

    @Override
    public String bendBars(String rule, String widths) {
        return "Las tiras se cortan a " + widths + " de ancho, y no: " + rule + ".";
    }

    @Override
    public String bendColours(String found, String scheme, String ways) {
        return (found.equals("none") ? "Los colores van según da la tela, y no: " + ways + "." : "Los colores: " + scheme + ", y no: " + ways + ".");
    }

    @Override
    public String bendHearth(String rule, String share, String size) {
        return "La pieza central se corta a " + size + ", el " + share + " del ancho del paño, y no: " + rule + ".";
    }

    @Override
    public String bendJoins(int joins, String most) {
        return "Una tira tiene " + (joins == 1 ? "" + joins + " unión" : "" + joins + " uniones") + ", y no " + most + " como mucho.";
    }

    @Override
    public String bendMiddle(String lies, String wanted) {
        return "En el centro va " + lies + ", no " + wanted + ".";
    }

    @Override
    public String bendOrder(String found, String wanted) {
        return "Las tiras van " + (found.equals("ROUND") ? "alrededor" : found.equals("PAIRS") ? "en parejas opuestas" : found.equals("TWO_SIDES") ? "en dos lados" : "en otro orden") + ", y no " + (wanted.equals("ROUND") ? "alrededor" : wanted.equals("PAIRS") ? "en parejas opuestas" : "en dos lados") + ".";
    }

    @Override
    public String bendRounds(int rounds, String rule) {
        return (rounds == 1 ? "Hay una vuelta, no " + rule + "." : "Hay " + rounds + " vueltas, no " + rule + ".");
    }

    @Override
    public String bendSize(String rule, String size) {
        return "El paño mide " + size + ", y no: " + rule + ".";
    }

    @Override
    public String bendWidths(String least, String most) {
        return least + " a " + most;
    }

    @Override
    public String colours(String rule) {
        return "Colores: " + rule + ".";
    }

    @Override
    public String giftBooks(String sizes) {
        return "dos libros de " + sizes + " cada uno";
    }

    @Override
    public String giftBottle(String across, String high) {
        return "una botella de " + across + " de diámetro y " + high + " de alto";
    }

    @Override
    public String giftBottles(String across, String high) {
        return "dos botellas de " + across + " de diámetro y " + high + " de alto";
    }

    @Override
    public String giftBox(String sizes) {
        return "una caja de " + sizes;
    }

    @Override
    public String giftRoll(String across, String length) {
        return "un rollo de " + across + " de diámetro y " + length + " de largo";
    }

    @Override
    public String giftRound(String across) {
        return "algo redondo de " + across + " de diámetro";
    }

    @Override
    public String hearth(String rule) {
        return "Pieza central, en el medio: " + rule + ".";
    }

    @Override
    public String isBars(String kind, String most, String width) {
        return (kind.equals("WIDTHS") ? "" + width + " de ancho, cortadas" : kind.equals("WIDTHS_FINISHED") ? "" + width + " de ancho, acabadas" : kind.equals("BETWEEN") ? "de " + width + " a " + most + " de ancho, cortadas" : kind.equals("BETWEEN_FINISHED") ? "de " + width + " a " + most + " de ancho, acabadas" : kind.equals("SHARE") ? "del " + width + " al " + most + " % del ancho del paño" : kind.equals("STRIPS") ? "tan anchas como sus tiras de tela" : "según sus telas");
    }

    @Override
    public String isColours(String open, String ways) {
        return (open.equals("yes") ? "según sus telas" : "" + ways);
    }

    @Override
    public String isGift(String gift, String tie) {
        return "bastante grande para envolver " + gift + ", " + tie;
    }

    @Override
    public String isHearth(String kind, String least, String most, String size) {
        return (kind.equals("EXACT") ? "" + size + ", cortada" : kind.equals("FINISHED") ? "" + size + ", acabada" : kind.equals("SHARE") ? "del " + least + " al " + most + " % del ancho del paño" : kind.equals("SQUARE") ? "el mayor cuadrado que dé uno de sus trozos" : "según sus telas");
    }

    @Override
    public String isRounds(String least, int most) {
        return (most == 0 ? "tantas como den sus telas" : "" + (least.equals("none") ? "" : "" + least + " a ") + most);
    }

    @Override
    public String isSize(String kind, String most, String size) {
        return (kind.equals("EXACT") ? "" + size + ", acabado" : kind.equals("WITHIN") ? "un cuadrado de " + size + " a " + most + " de lado, tan grande como permitan sus telas" : "tan grande como permitan sus telas");
    }

    @Override
    public String isWay(String idea, String scheme) {
        return scheme + " (" + idea + ")";
    }

    @Override
    public String joins(String least, int most) {
        return (most == 0 ? "Cada tira es de una pieza; ninguna va unida." : most == 1 ? "Una tira puede ir unida: " + most + " unión como mucho, ninguna parte acabada de menos de " + least + "." : "Una tira puede ir unida: " + most + " uniones como mucho, ninguna parte acabada de menos de " + least + ".");
    }

    @Override
    public String middle(String middle) {
        return "En el centro va " + (middle.equals("FAVOURITE") ? "su tela preferida" : middle.equals("LIGHTEST") ? "su tela más clara que sea bastante grande" : middle.equals("DARKEST") ? "su tela más oscura que sea bastante grande" : "cualquier tela") + ".";
    }

    @Override
    public String order(String order) {
        return (order.equals("ROUND") ? "Cada tira va al lado siguiente, dando vueltas." : order.equals("PAIRS") ? "Las tiras van en parejas opuestas." : "Las tiras van solo en dos lados; la pieza central queda en una esquina.");
    }

    @Override
    public String orderOpen() {
        return "El orden de las tiras depende de sus telas.";
    }

    @Override
    public String rounds(String rule) {
        return "Vueltas de tiras: " + rule + ".";
    }

    @Override
    public String seam(String name, String seam) {
        return (seam.equals("felled") ? "sobrecargada" : seam.equals("ssamsol") ? "ssamsol" : seam.equals("felled_and_trimmed") ? "sobrecargada y recortada" : seam.equals("lapped") ? "enganchada" : seam.equals("french") ? "francesa" : seam.equals("french_trimmed") ? "francesa recortada" : seam.equals("gamchimjil") ? "gamchimjil" : "" + name);
    }

    @Override
    public String sewn(String corner, String first, String narrow, String seam, String second, String wide) {
        return "Costuras: " + seam + ", " + narrow + " + " + wide + ". Dobladillo: " + first + " + " + second + ", esquinas " + (corner.equals("MITRED") ? "en inglete" : "rectas") + ".";
    }

    @Override
    public String size(String rule) {
        return "Tamaño del paño: " + rule + ".";
    }

    @Override
    public String suited(String tie) {
        return (tie.equals("FOUR_CORNER") ? "cajas, cosas apiladas o pesadas" : tie.equals("EDGE_ALONG_EDGE") ? "cajas en un paño grande" : tie.equals("ERRAND") ? "cajas que se llevan en la mano" : tie.equals("FLAT") ? "cajas planas y ropa doblada, sin nudo" : tie.equals("TWO_KNOT") ? "cajas largas y esteras enrolladas" : tie.equals("ONE_BOTTLE") ? "una botella de pie" : tie.equals("TWO_BOTTLES") ? "dos botellas iguales" : tie.equals("ROUND") ? "pelotas, melones, cosas redondas" : tie.equals("BOOKS") ? "dos libros iguales" : "rollos de tela, tubos, botes");
    }

    @Override
    public String tie(String tie) {
        return (tie.equals("FOUR_CORNER") ? "atado de cuatro puntas" : tie.equals("EDGE_ALONG_EDGE") ? "atado de cuatro puntas, caja paralela al paño" : tie.equals("ERRAND") ? "envoltorio de un nudo" : tie.equals("FLAT") ? "envoltorio plano" : tie.equals("TWO_KNOT") ? "envoltorio de dos nudos" : tie.equals("ONE_BOTTLE") ? "una botella" : tie.equals("TWO_BOTTLES") ? "dos botellas" : tie.equals("ROUND") ? "objeto redondo" : tie.equals("BOOKS") ? "dos libros" : "rollo");
    }
}
