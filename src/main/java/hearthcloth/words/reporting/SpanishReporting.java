package hearthcloth.words.reporting;

/** The room of reporting in Spanish. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class SpanishReporting implements ReportingWords {

    @Override
    public String areaLarge(String number, String unit) {
        return number + " " + (unit.equals("metric") ? "m²" : "yd²");
    }

    @Override
    public String care(String what) {
        return "Cuidado: " + what;
    }

    @Override
    public String giftLeast(String gift, String size, String tie) {
        return gift + ", " + tie + ": un paño cuadrado de al menos " + size;
    }

    @Override
    public String giftRange(String gift, String least, String most, String size, String tie) {
        return gift + ", " + tie + ": un paño cuadrado de al menos " + size + " (" + least + "–" + most + " según la tela de los nudos sea fina o gruesa)";
    }

    @Override
    public String guidelineBent(String what) {
        return "Adaptado: " + what;
    }

    @Override
    public String guidelineKeeps() {
        return "nada; cumple todas las reglas.";
    }

    @Override
    public String guidelineNearest(String folder, String number, String size, String title) {
        return number + "  " + title + ", " + size + ", en " + folder + ", listo para cortar y coser.";
    }

    @Override
    public String guidelineNone() {
        return "Con estas telas no se puede hacer ningún paño.";
    }

    @Override
    public String guidelineNoneKept(String name) {
        return "No se encontró en estas telas ningún paño que cumpla todas las reglas de «" + name + "».";
    }

    @Override
    public String guidelineScraps() {
        return "Estos trozos no dan una pieza central con tiras alrededor; los retales se juntan tal como están.";
    }

    @Override
    public String kitsCloth(String fabric, int n, String size, String title) {
        return title + ", " + size + ", pieza central de " + fabric + ", " + (n == 0 ? "sin uniones" : n == 1 ? "" + n + " unión" : "" + n + " uniones");
    }

    @Override
    public String kitsFree(int n, String size, String title) {
        return title + ", " + size + ", " + (n == 0 ? "sin uniones" : n == 1 ? "" + n + " unión" : "" + n + " uniones");
    }

    @Override
    public String kitsHanded(int n) {
        return (n == 1 ? "" + n + " trozo queda de un paño para otro; kits.pdf dice quién corta primero." : "" + n + " trozos quedan de un paño para otro; kits.pdf dice quién corta primero.");
    }

    @Override
    public String kitsInTurn(String n) {
        return "Uno tras otro: " + n + ".";
    }

    @Override
    public String kitsMost(String bound, String worst) {
        return "Más uniones: " + worst + "; ningún reparto de estas telas tiene menos de " + bound + ".";
    }

    @Override
    public String kitsNothing(String name) {
        return name + ": no se pudo hacer nada. No como se pidió.";
    }

    @Override
    public String kitsPart(String cloth, String folder, String name) {
        return name + ": " + cloth + ", en " + folder + ".";
    }

    @Override
    public String kitsPartOther(String cloth, String folder, String name) {
        return name + ": " + cloth + ", en " + folder + ". No como se pidió.";
    }

    @Override
    public String kitsPrint(String file) {
        return "Etiquetas, lista de compras y la hoja para quien enseña: " + file;
    }

    @Override
    public String kitsWithout(String n) {
        return "Uno tras otro, " + n + " se habrían quedado sin nada.";
    }

    @Override
    public String planChosen(String what) {
        return "Elegido para usted: " + what;
    }

    @Override
    public String planCuts(String cuts, String lost, String percent, String touched) {
        return "Cortes: " + cuts + ". Pérdida: " + lost + " (" + percent + " de los " + touched + " empezados).";
    }

    @Override
    public String planCutsBound(String cuts, String least, String lost, String percent, String touched) {
        return "Cortes: " + cuts + ". Pérdida: " + lost + " (" + percent + " de los " + touched + " empezados; ningún plan empieza menos de " + least + ").";
    }

    @Override
    public String planCutsBounds(String cuts, String least, String leastLost, String lost, String percent, String touched) {
        return "Cortes: " + cuts + ". Pérdida: " + lost + " (" + percent + " de los " + touched + " empezados; ningún plan empieza menos de " + least + " ni pierde menos de " + leastLost + ").";
    }

    @Override
    public String planGift(String gift) {
        return "Regalo: " + gift + ".";
    }

    @Override
    public String planHead(String folder, String size, String title) {
        return title + ", " + size + ", en " + folder;
    }

    @Override
    public String planImpossible() {
        return "Este paño no se puede hacer con estas telas.";
    }

    @Override
    public String planJoinsAbove(String above, String n) {
        return "Uniones: " + n + ", como mucho " + above + " más que las menos posibles.";
    }

    @Override
    public String planJoinsFewest(String n) {
        return "Uniones: " + n + ", las menos posibles.";
    }

    @Override
    public String planLarger(String length) {
        return "Se planea " + length + " más grande que el mínimo, por lo que pueda tomar la costura.";
    }

    @Override
    public String planMore(String size) {
        return "Para más como este, pida --size \"" + size + "\" y deje lo demás a las telas.";
    }

    @Override
    public String planNearest(String size, String title) {
        return "Lo más parecido que se puede hacer es " + size + ": " + title + ".";
    }

    @Override
    public String planNearestJoins(int n, String size, String title) {
        return "Lo más parecido que se puede hacer es " + size + ": " + title + ", " + (n == 0 ? "sin uniones" : n == 1 ? "" + n + " unión" : "" + n + " uniones") + ".";
    }

    @Override
    public String planNotFound() {
        return "No se encontró modo de hacer este paño con estas telas.";
    }

    @Override
    public String planPatches(String patches, String seams) {
        return "Piezas: " + patches + ". Costuras: " + seams + ".";
    }

    @Override
    public String planReady(String fabrics, String folder) {
        return "Está en " + folder + ", listo para cortar y coser: en " + fabrics + ".";
    }

    @Override
    public String planStash(String area, int fabrics, int pieces) {
        return "Telas: " + (pieces == 1 ? "" + pieces + " trozo" : "" + pieces + " trozos") + " de " + (fabrics == 1 ? "" + fabrics + " tela" : "" + fabrics + " telas") + ", " + area + ".";
    }

    @Override
    public String planTied(String what) {
        return "Atado: " + what;
    }

    @Override
    public String planTimeOut(String budget) {
        return "Nota: el tiempo se acabó antes de probarlo todo; un --budget más largo, como " + budget + ", puede dar algo mejor.";
    }

    @Override
    public String progressBest(int n, String tried) {
        return (n == 1 ? "" + tried + ", la mejor con " + n + " unión" : "" + tried + ", la mejor con " + n + " uniones");
    }

    @Override
    public String progressLayouts(String found, String of, String tried) {
        return "plan: " + tried + " disposiciones probadas de " + of + ", " + found + " posibles";
    }

    @Override
    public String progressTogether(int asked, String made, String most, String of, String tried) {
        return (asked == 1 ? "plan conjunto: " + tried + " repartos probados de " + of + ", " + made + " paño hecho de " + asked + ", " + most + " uniones como mucho" : "plan conjunto: " + tried + " repartos probados de " + of + ", " + made + " paños hechos de " + asked + ", " + most + " uniones como mucho");
    }

    @Override
    public String readAll(String doubt) {
        return "Todos los trozos: " + doubt;
    }

    @Override
    public String readColumn(String column) {
        return (column.equals("usable") ? "útil" : column.equals("shape") ? "forma" : column.equals("colour") ? "color" : column.equals("look") ? "aspecto" : column.equals("fabric") ? "tela" : "lados");
    }

    @Override
    public String readDoubts() {
        return "En duda:";
    }

    @Override
    public String readFound(int fabrics, int pieces) {
        return (pieces == 1 ? "Se encontró " + pieces + " trozo" : "Se encontraron " + pieces + " trozos") + ", por su aspecto de " + (fabrics == 1 ? "" + fabrics + " tela" : "" + fabrics + " telas") + ".";
    }

    @Override
    public String readKnow() {
        return "Conviene saber:";
    }

    @Override
    public String readLeft(int n, String numbers) {
        return (n == 1 ? "Fuera del archivo por una duda: " + n + " trozo (" + numbers + "). Repita la foto como se dice, o añada --keep-doubtful para escribirlo también." : "Fuera del archivo por una duda: " + n + " trozos (" + numbers + "). Repita la foto como se dice, o añada --keep-doubtful para escribirlos también.");
    }

    @Override
    public String readLittle() {
        return "muy poco";
    }

    @Override
    public String readLook(String figured) {
        return (figured.equals("yes") ? "estampado" : "liso");
    }

    @Override
    public String readNarrow(int n, String numbers) {
        return (n == 1 ? "Fuera porque no se puede cortar de él un rectángulo de un centímetro de ancho: " + n + " trozo (" + numbers + ")." : "Fuera porque no se puede cortar de ellos un rectángulo de un centímetro de ancho: " + n + " trozos (" + numbers + ").");
    }

    @Override
    public String readNone() {
        return "No se encontró ningún trozo de tela junto a la hoja. Ponga los trozos sobre un fondo del que destaquen, dejando ver algo de él alrededor de cada uno.";
    }

    @Override
    public String readPiece(String doubt, String number) {
        return "Trozo " + number + ": " + doubt;
    }

    @Override
    public String readShape(String n, String shape) {
        return (shape.equals("TRIANGLE") ? "triángulo" : shape.equals("STRIP") ? "tira" : shape.equals("SQUARE") ? "cuadrado" : shape.equals("RECTANGLE") ? "rectángulo" : shape.equals("UNEVEN") ? "cuatro lados desiguales" : shape.equals("L") ? "en L" : "" + n + " lados");
    }

    @Override
    public String readWrote(int fabrics, String file, int lines, int pieces) {
        return file + " escrito: " + (pieces == 1 ? "" + pieces + " trozo" : "" + pieces + " trozos") + " de " + (fabrics == 1 ? "" + fabrics + " tela" : "" + fabrics + " telas") + " en " + (lines == 1 ? "" + lines + " línea" : "" + lines + " líneas") + ". Una foto no muestra cuál es el derecho ni el orillo: las dos caras se anotan iguales y el lado más largo como largo. Cambie el archivo donde no sea así.";
    }

    @Override
    public String sizeCloth(String end, String size) {
        return "Los regalos más grandes que ata un paño terminado de " + size + ", con " + end + " en cada esquina anudada para el nudo y la punta:";
    }

    @Override
    public String sizeEnds(String least, String leastEnd, String most, String mostEnd, String usual) {
        return "con " + usual + " en cada esquina anudada; " + least + " con " + leastEnd + ", " + most + " con " + mostEnd;
    }

    @Override
    public String sizeFits(String enough) {
        return (enough.equals("yes") ? "basta" : "chico");
    }

    @Override
    public String sizeGift(String gift) {
        return "Para " + gift + ", el paño terminado es un cuadrado de al menos:";
    }

    @Override
    public String sizeKnot() {
        return "El nudo llano:";
    }

    @Override
    public String sizeNoKnot() {
        return "sin nudo";
    }

    @Override
    public String sizeNone(String uses) {
        return "ninguno; se vende para: " + uses;
    }

    @Override
    public String sizeNothing() {
        return "nada; es demasiado pequeño";
    }

    @Override
    public String sizeShape(String shape) {
        return (shape.equals("cake") ? "una caja 3 : 2 : 0,8, como una de pastel" : shape.equals("cube") ? "un cubo" : shape.equals("flat") ? "una caja plana 3 : 2 : 0,3, como una camisa doblada" : shape.equals("long") ? "una caja larga 5 : 1 : 1" : shape.equals("bottle") ? "una botella cuatro veces más alta que ancha, como una de vino" : shape.equals("bottles") ? "dos botellas así" : shape.equals("ball") ? "una bola" : shape.equals("books") ? "dos libros de bolsillo 1,4 : 1 : 0,14" : "un rollo cuatro veces más largo que grueso");
    }

    @Override
    public String sizeSold(String tie) {
        return "Tamaños de venta (práctica común) y el regalo más grande de esta forma (" + tie + "):";
    }

    @Override
    public String sizeSteps(String tie) {
        return "Cómo se ata (" + tie + "):";
    }

    @Override
    public String sizeTrade(String size) {
        return "El tamaño de venta siguiente es " + size + ".";
    }

    @Override
    public String sizeTradeNamed(String size, String trade) {
        return "El tamaño de venta siguiente es " + size + " (" + trade + ").";
    }

    @Override
    public String sizeUpTo(String gift, String uses) {
        return "hasta " + gift + "; se vende para: " + uses;
    }

    @Override
    public String square(String side) {
        return side + " de lado";
    }

    @Override
    public String student(String n) {
        return "Alumno " + n;
    }
}
