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
    public String fileField(String field, String what) {
        return "«" + field + "»: " + what + ".";
    }

    @Override
    public String fileFormat(String guideline, String plan, String text) {
        return "aquí dice «" + text + "»; un archivo de plan dice " + plan + ", un modelo " + guideline;
    }

    @Override
    public String fileGuideline(String what) {
        return "Esto no es un archivo de modelo: " + what + ".";
    }

    @Override
    public String fileJson(String line, String text, String why) {
        return "línea " + line + ": " + (why.equals("AFTER") ? "hay algo más después del final del único objeto del archivo" : why.equals("EARLY") ? "el archivo termina demasiado pronto; quizá se envió o se guardó solo en parte" : why.equals("COLON") ? "falta " + text + " después del nombre de un campo" : why.equals("COMMA_FIELD") ? "falta " + text + ", o una coma después de un campo" : why.equals("COMMA_LIST") ? "falta " + text + ", o una coma en una lista" : why.equals("DEEP") ? "está anidado demasiado hondo" : why.equals("NAME") ? "falta el nombre de un campo; va entre comillas" : why.equals("TWICE") ? "«" + text + "» está dos veces; quite uno" : why.equals("OPEN_QUOTE") ? "unas comillas no se cierran" : why.equals("LINE_END") ? "una línea termina dentro de comillas; escriba \\n para una línea nueva" : why.equals("ESCAPE") ? "" + text + " no es una letra de JSON; escriba dos barras inversas por una" : why.equals("CODE") ? "\\u pide cuatro cifras de 0 a f" : "un valor no se entiende; las palabras van entre comillas");
    }

    @Override
    public String fileKind(String kind, String signs) {
        return (kind.equals("OBJECT") ? "aquí va un objeto con campos, entre " + signs : kind.equals("LIST") ? "aquí va una lista, entre " + signs : "aquí van palabras entre comillas");
    }

    @Override
    public String fileLong(String letters, String most) {
        return "esto tiene " + letters + " letras; caben " + most;
    }

    @Override
    public String fileMissing() {
        return "falta";
    }

    @Override
    public String fileObject(String sign) {
        return "El archivo no contiene ningún objeto; su primer signo es " + sign + ".";
    }

    @Override
    public String filePatches(String why) {
        return (why.equals("SCRAPS") ? "Este plan es un paño de retales; no tiene pieza central ni tiras que pasar a otros." : why.equals("HEARTH") ? "Ninguna pieza de este plan es la central; saque el plan de nuevo." : why.equals("NONE") ? "Este plan no tiene piezas; saque el plan de nuevo." : why.equals("MANY") ? "Este plan tiene más piezas de las que puede tener un paño aquí; saque el plan de nuevo." : "Las piezas de este plan no casan entre sí; saque el plan de nuevo.");
    }

    @Override
    public String filePicture(String why) {
        return (why.equals("LARGE") ? "la imagen es demasiado grande; redúzcala a 330 kB como mucho" : "esto no es una imagen en base 64; ponga la imagen otra vez");
    }

    @Override
    public String filePlan(String what) {
        return "Esto no es un archivo de plan: " + what + ".";
    }

    @Override
    public String fileUnknown(String names) {
        return "este campo no se conoce aquí; hay " + names;
    }

    @Override
    public String fileWhole(String least, String most, String there) {
        return (there.equals("no") ? "falta; escriba un entero de " + least + " a " + most : "esto no sirve; escriba un entero de " + least + " a " + most);
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
    public String plannerMissing() {
        return "Este Hearthcloth se construyó sin el planificador para páginas; ejecute ideapage/build en su carpeta y constrúyalo de nuevo.";
    }

    @Override
    public String rounds(String rule) {
        return "Vueltas de tiras: " + rule + ".";
    }

    @Override
    public String ruleBar(String text) {
        return "«" + text + "» no es una tira; las tiras se llaman 1A, 1B y así sucesivamente";
    }

    @Override
    public String ruleMeasure(String rule, String text) {
        return "«" + text + "» no sirve; escriba " + (rule.equals("SIZE") ? "open, un tamaño como \"16 in\" o \"16 to 20 in\", o \"for box 30 x 20 x 8 cm\"" : rule.equals("HEARTH") ? "open, largest square, una parte como \"30 to 40 %\" o un tamaño como \"14 in\"" : "open, strips, una parte como \"8 to 12 %\" o anchos como \"2 to 3 in\"");
    }

    @Override
    public String ruleMost(String most, String none, String text) {
        return "«" + text + "» no sirve; escriba " + (none.equals("yes") ? "una longitud de " + most + " como mucho" : "más que nada y como mucho " + most);
    }

    @Override
    public String ruleRange(String text) {
        return "«" + text + "» no es un intervalo; escriba primero la medida menor, como \"2 to 3 in\"";
    }

    @Override
    public String ruleReach(String text) {
        return "«" + text + "» queda fuera de alcance; escriba más que nada y como mucho 5 m, y revise la unidad";
    }

    @Override
    public String ruleRounds(String most, String text) {
        return "«" + text + "» no sirve; escriba un número de vueltas de 1 a " + most + ", dos como \"2 to 4\", u \"open\"";
    }

    @Override
    public String ruleSeam(String names, String text) {
        return "«" + text + "» no es una costura conocida; hay " + names;
    }

    @Override
    public String ruleShare(String text) {
        return "«" + text + "» no es una parte; escriba enteros de 1 a 99, el menor primero, como \"30 to 40 %\"";
    }

    @Override
    public String ruleWay(String names, String text) {
        return "«" + text + "» no es un modo de color; escriba " + names;
    }

    @Override
    public String ruleWider() {
        return "el margen ancho envuelve al estrecho, debe ser el más ancho";
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
