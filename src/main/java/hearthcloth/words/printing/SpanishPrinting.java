package hearthcloth.words.printing;

/** The room of printing in Spanish. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class SpanishPrinting implements PrintingWords {

    @Override
    public String altCut(String fabric, int n, String piece, String size) {
        return (n == 1 ? "Trozo " + piece + ", " + fabric + ", " + size + ", con " + n + " corte" : "Trozo " + piece + ", " + fabric + ", " + size + ", con " + n + " cortes");
    }

    @Override
    public String altFace(String face, String size, String title) {
        return (face.equals("front") ? "Anverso: " + title + ", " + size : "Reverso: " + title + ", " + size);
    }

    @Override
    public String altPatches(int n) {
        return (n == 1 ? "" + n + " pieza" : "" + n + " piezas");
    }

    @Override
    public String altStep(String added, String step, String work) {
        return "Paso " + step + ": " + work + " y " + added + ", anverso arriba, antes de coser";
    }

    @Override
    public String bagAbout(String size, String title) {
        return title + ", " + size + ".";
    }

    @Override
    public String bagFor(String gift, String size, String title) {
        return title + ", " + size + ". Para " + gift + ".";
    }

    @Override
    public String bagHow() {
        return "Corte por las líneas de puntos y ponga cada papeleta en su bolsa, con los trozos que nombra. Los tamaños son ancho × largo, el largo a lo largo del orillo.";
    }

    @Override
    public String bagPiece(String patches, String piece, String size) {
        return "trozo " + piece + ", " + size + " (" + patches + ")";
    }

    @Override
    public String bagSlips() {
        return "Papeletas de las bolsas";
    }

    @Override
    public String bagTitle(String n, String name) {
        return "Bolsa " + n + ", " + name;
    }

    @Override
    public String beforeTitle() {
        return "Antes de cortar";
    }

    @Override
    public String boxMeasure() {
        return "Ahora debe medir";
    }

    @Override
    public String boxWay() {
        return "ancho × alto, anverso arriba";
    }

    @Override
    public String cardMeasures(String size) {
        return "Mide " + size + ".";
    }

    @Override
    public String cardOthers(int n) {
        return (n == 1 ? "Coser la otra de la misma manera." : "Coser las otras de la misma manera.");
    }

    @Override
    public String cardThick(String places) {
        return "Grueso: " + places + ". Ir despacio ahí.";
    }

    @Override
    public String careTitle() {
        return "Cuidado";
    }

    @Override
    public String chosenTitle() {
        return "Elegido para usted";
    }

    @Override
    public String coloursEyes(String eyes) {
        return (eyes.equals("protan") ? "Como lo ven ojos ciegos al rojo" : eyes.equals("deutan") ? "Como lo ven ojos ciegos al verde" : "Como lo ven ojos ciegos al azul");
    }

    @Override
    public String coloursGrey(String shade) {
        return (shade.equals("black") ? "negro" : shade.equals("dark") ? "gris oscuro" : shade.equals("middle") ? "gris" : shade.equals("light") ? "gris claro" : "blanco");
    }

    @Override
    public String coloursLeast() {
        return "Se ve menos";
    }

    @Override
    public String coloursLike(String fabric) {
        return "como " + fabric;
    }

    @Override
    public String coloursMost() {
        return "Se ve más";
    }

    @Override
    public String coloursSeams() {
        return "Costuras";
    }

    @Override
    public String coloursThread() {
        return "El hilo de cada costura, por su color. El que menos se ve esconde puntadas desiguales; el que más se ve forma parte del dibujo.";
    }

    @Override
    public String coloursTitle() {
        return "Sus colores";
    }

    @Override
    public String coloursValues() {
        return "Claro y oscuro, en cinco grados";
    }

    @Override
    public String corner() {
        return "Una esquina";
    }

    @Override
    public String cornerFirst(String length) {
        return "Primer doblez, a " + length + " del borde cortado";
    }

    @Override
    public String cornerLast(String length) {
        return "Último doblez, a " + length + " del borde cortado: el borde terminado";
    }

    @Override
    public String cornerLife() {
        return "Una esquina, tamaño real";
    }

    @Override
    public String cornerMitre() {
        return "Inglete: cosido con la esquina doblada por la mitad";
    }

    @Override
    public String cornerOff() {
        return "Esquina cortada";
    }

    @Override
    public String cutHead(String row, String scale, String unit, String washed) {
        return "Línea " + row + " de la lista de telas" + (washed.equals("YES") ? ", lavado" : washed.equals("NO") ? ", sin lavar" : "") + ". Dibujado a " + scale + ", medidas en " + (unit.equals("metric") ? "centímetros" : "pulgadas") + ".";
    }

    @Override
    public String cutHow() {
        return "Cortar en el orden de los números. Cada número está en su corte, con la medida. La punta de flecha señala el borde desde el que se mide. Los sobrantes que se guardan están en pálido y con nombre. Lo tachado es demasiado pequeño para guardarlo. En cada dibujo el hilo de la tela va de arriba abajo. «Cuarto de vuelta» quiere decir que la pieza está dibujada un cuarto de vuelta respecto a su sitio en el paño.";
    }

    @Override
    public String cutLeft(String left) {
        return "Queda: " + left + ".";
    }

    @Override
    public String cutNothing() {
        return "Nada que cortar: usar el trozo entero.";
    }

    @Override
    public String cutSheet(int n, String title) {
        return (n == 1 ? "" + title + ". " + n + " trozo. Cortar en el orden de los números. La punta de flecha de cada círculo señala el borde desde el que se mide." : "" + title + ". " + n + " trozos. Cortar en el orden de los números. La punta de flecha de cada círculo señala el borde desde el que se mide.");
    }

    @Override
    public String cutTitle() {
        return "Cortar";
    }

    @Override
    public String cutWhole() {
        return "Usar enteros estos trozos";
    }

    @Override
    public String drawn(String scale) {
        return "Dibujado a " + scale + ".";
    }

    @Override
    public String faceDrawn(String face, String scale) {
        return face + ", dibujado a " + scale;
    }

    @Override
    public String faceFells(String face) {
        return (face.equals("front") ? "Anverso, con solapas y dobladillo" : "Reverso, con solapas y dobladillo");
    }

    @Override
    public String faceName(String face) {
        return (face.equals("front") ? "Anverso" : "Reverso");
    }

    @Override
    public String faceSheet(String scale, String size, String title) {
        return title + ". " + size + " terminado, con dobladillo. Dibujado a " + scale + ".";
    }

    @Override
    public String figureCuts() {
        return "Cortes";
    }

    @Override
    public String figureFinished() {
        return "Terminado";
    }

    @Override
    public String figureJoins() {
        return "Uniones";
    }

    @Override
    public String figureLost() {
        return "Pérdida";
    }

    @Override
    public String figurePatches() {
        return "Piezas";
    }

    @Override
    public String figureSeams() {
        return "Costuras";
    }

    @Override
    public String figureThread() {
        return "Hilo";
    }

    @Override
    public String grain() {
        return "hilo";
    }

    @Override
    public String grainNap() {
        return "hilo, pelo hacia aquí";
    }

    @Override
    public String hemTitle() {
        return "Dobladillo";
    }

    @Override
    public String item(String topic, String words) {
        return topic + ": " + words;
    }

    @Override
    public String kitsBuy(String name, String what) {
        return name + ": " + what + ".";
    }

    @Override
    public String kitsEach(String shared) {
        return "Cada trozo está en una sola bolsa" + (shared.equals("yes") ? ", salvo los que comparten dos: ahí corta primero uno y después otro." : "; nadie tiene que esperar a nadie.");
    }

    @Override
    public String kitsFirst(String of, String piece, String size, String who) {
        return who + " corta primero el trozo " + of + "; lo que queda, " + size + ", será el trozo " + piece + ".";
    }

    @Override
    public String kitsHanded(String of, String piece, String who) {
        return "El trozo " + piece + " es lo que " + who + " deja del trozo " + of + ": córtelo después de " + who + ".";
    }

    @Override
    public String kitsLacks(String made, String name, String why) {
        return name + ": " + (made.equals("no") ? "no se pudo hacer nada." : "no como se pidió.") + " " + why;
    }

    @Override
    public String kitsNearest() {
        return "Es lo más parecido que se pudo hacer; vea la lista de compras.";
    }

    @Override
    public String kitsQuarters(int n) {
        return (n == 1 ? "" + n + " cuarto (fat quarter)" : "" + n + " cuartos (fat quarters)");
    }

    @Override
    public String kitsRunning(int n) {
        return "Lotes para " + (n == 1 ? "" + n + " paño" : "" + n + " paños");
    }

    @Override
    public String kitsTitle() {
        return "Lotes";
    }

    @Override
    public String kitsWay(String goods, String unit) {
        return (goods.equals("FAT_QUARTERS") ? "" + (unit.equals("in") ? "En cuartos (18 × 20 in como mínimo)" : "En cuartos (45 × 50 cm como mínimo)") : goods.equals("NARROW_BOLT") ? "" + (unit.equals("in") ? "De la pieza, 44 in de ancho (40 in entre orillos)" : "De la pieza, 110 cm de ancho (102 cm entre orillos)") : "" + (unit.equals("in") ? "De la pieza, 60 in de ancho (58 in entre orillos)" : "De la pieza, 150 cm de ancho (145 cm entre orillos)"));
    }

    @Override
    public String kitsWorst(int n) {
        return (n == 0 ? "Ninguna tira va unida." : n == 1 ? "Nadie tiene más de " + n + " unión." : "Nadie tiene más de " + n + " uniones.");
    }

    @Override
    public String kitsYards(String n, String way) {
        return n + " " + (way.equals("part") ? "de yarda" : way.equals("one") ? "yarda" : "yardas");
    }

    @Override
    public String labelHearth() {
        return "centro";
    }

    @Override
    public String labelOffcut(String number) {
        return "sobrante " + number;
    }

    @Override
    public String legendFell() {
        return "Solapa, más oscura";
    }

    @Override
    public String legendStitches() {
        return "Fila de puntadas";
    }

    @Override
    public String legendUnknown(String fabric) {
        return fabric + " (color aún desconocido)";
    }

    @Override
    public String legendWrong() {
        return "Rayado: el revés";
    }

    @Override
    public String lostJoins(int n) {
        return (n == 1 ? "Ningún plan de este paño tiene menos de " + n + " unión." : "Ningún plan de este paño tiene menos de " + n + " uniones.");
    }

    @Override
    public String lostLeast(String least, String touched) {
        return "Pérdida: retales demasiado pequeños para usarlos. Se cortan " + touched + " de tela; ningún plan de este paño podría con menos de " + least + ".";
    }

    @Override
    public String lostLeastLost(String least, String lost, String touched) {
        return "Pérdida: retales demasiado pequeños para usarlos. Se cortan " + touched + " de tela; ningún plan de este paño podría con menos de " + least + " ni perder menos de " + lost + ".";
    }

    @Override
    public String lostTouched(String touched) {
        return "Pérdida: retales demasiado pequeños para usarlos. Se cortan " + touched + " de tela.";
    }

    @Override
    public String matStays() {
        return "queda";
    }

    @Override
    public String matTitle(String all, String made, String piece) {
        return "Trozo " + piece + " en la base, " + made + " de " + all + " cortes hechos";
    }

    @Override
    public String measuringPrint() {
        return "Imprimir al 100 %, sin ajustar. Ponerla plana entre los trozos.";
    }

    @Override
    public String measuringRuler() {
        return "Ponga una regla en la línea fina: 20 cm (7 7/8 in).";
    }

    @Override
    public String measuringSay() {
        return "Si no, diga cuánto mide al enviar la foto.";
    }

    @Override
    public String measuringTitle() {
        return "Hoja de medir";
    }

    @Override
    public String needsTitle() {
        return "Qué hace falta";
    }

    @Override
    public String netFold() {
        return "El interior hacia arriba, como está delante de usted. Doblar por las líneas; donde se juntan, la tela va recogida: arrugar ahí el papel o retorcerlo.";
    }

    @Override
    public String netHow(String gift, String scale, String size, String small) {
        return "Un paño de " + size + " para " + gift + ", dibujado a " + scale + ". Recortado, envuelve " + small + " de cartulina.";
    }

    @Override
    public String netSquare(String side) {
        return side + " de lado";
    }

    @Override
    public String netTitle(String tie) {
        return "Los dobleces: " + tie;
    }

    @Override
    public String page(String all, String number) {
        return "página " + number + " de " + all;
    }

    @Override
    public String pictureCuts(String name) {
        return "Plan de corte: " + name;
    }

    @Override
    public String pictureDone() {
        return "Atado";
    }

    @Override
    public String pictureKnot() {
        return "Un nudo llano";
    }

    @Override
    public String pictureNet() {
        return "Desplegado, el interior hacia arriba: doble por las líneas";
    }

    @Override
    public String pictureTied() {
        return "El regalo atado, desde arriba, de frente y desde una esquina";
    }

    @Override
    public String pictureTying() {
        return "Durante el atado";
    }

    @Override
    public String piecesDone(String piece) {
        return piece + ", ya cortado";
    }

    @Override
    public String piecesHow(String unit) {
        return "Cada trozo con lo que se corta de él. Medidas: ancho × largo en " + (unit.equals("metric") ? "centímetros" : "pulgadas") + "; el segundo número sigue el hilo de la tela.";
    }

    @Override
    public String piecesTitle() {
        return "Telas y trozos";
    }

    @Override
    public String pinHatched() {
        return "Rayado en todos los dibujos: el revés de la tela.";
    }

    @Override
    public String pinLies(String added, String face, String work) {
        return added + " va encima, con el " + (face.equals("front") ? "anverso" : "reverso") + " arriba; debajo: " + work + ".";
    }

    @Override
    public String pinSticksOut(String length, String wrapping) {
        return wrapping + " sobresale " + length + ". Este margen más ancho envolverá al otro.";
    }

    @Override
    public String pinStitching() {
        return "La línea discontinua es la costura. Quitar cada alfiler antes de que llegue el prensatelas.";
    }

    @Override
    public String pinTitle() {
        return "Paso 1, prendido";
    }

    @Override
    public String seamTitle() {
        return "La costura";
    }

    @Override
    public String sectionFold() {
        return "Doblar, pespuntear";
    }

    @Override
    public String sectionOpen() {
        return "Abrir, planchar";
    }

    @Override
    public String sectionStitch() {
        return "Coser";
    }

    @Override
    public String sectionWrapped(String name) {
        return name + ": lado envuelto";
    }

    @Override
    public String sectionWraps(String name) {
        return name + ": envuelve";
    }

    @Override
    public String sewTitle() {
        return "Coser";
    }

    @Override
    public String shopNoWay() {
        return "Por mucho que se añadiera de una tela, no se halló cómo hacerlos.";
    }

    @Override
    public String shopNone() {
        return "Nada: todos los paños salen de lo que hay. El hilo y los útiles se nombran en cada guía.";
    }

    @Override
    public String shopTitle() {
        return "Lista de compras";
    }

    @Override
    public String shopWays() {
        return "Basta con una de estas maneras, junto con lo que dejan los demás. Todas se probaron: los paños se planearon con ellas. Lave y planche lo que compre antes de cortar.";
    }

    @Override
    public String slipsHow() {
        return "Cortar por las líneas discontinuas. Prender cada etiqueta a su pieza en cuanto se corta, en la cara que será el anverso del paño. La flecha señala la parte de arriba del paño.";
    }

    @Override
    public String slipsRunning(String title) {
        return title + ", etiquetas";
    }

    @Override
    public String slipsSize(String size) {
        return size + ", al cortar";
    }

    @Override
    public String slipsTitle() {
        return "Etiquetas de las piezas";
    }

    @Override
    public String slipsTop() {
        return "arriba";
    }

    @Override
    public String slipsUp(String showing) {
        return (showing.equals("RIGHT") ? "Derecho arriba" : showing.equals("WRONG") ? "Revés arriba" : "Cualquier lado");
    }

    @Override
    public String square(String side) {
        return "Este cuadrado mide " + side + " por lado. Si no es así, imprimir otra vez al 100 % (no «ajustar a la página»). Medir en el papel solo donde dice tamaño real. En lo demás valen las medidas escritas.";
    }

    @Override
    public String stepTrim() {
        return "recortar";
    }

    @Override
    public String stepWraps() {
        return "envuelve";
    }

    @Override
    public String tableAlone(String alone, String measure) {
        return measure + "; tira " + alone;
    }

    @Override
    public String tableHow() {
        return "Coser cada costura como en el paso 1. «La labor» es todo lo que ya está cosido. Medidas: ancho × alto, anverso arriba. Ir despacio en los sitios gruesos o girar el volante.";
    }

    @Override
    public String tableJoin(String n, String what) {
        return what + " (antes, sus " + n + " partes)";
    }

    @Override
    public String tableMeasures() {
        return "Medida";
    }

    @Override
    public String tableNewWraps() {
        return "En una tira unida, cada parte nueva envuelve a la anterior.";
    }

    @Override
    public String tableOldWraps() {
        return "En una tira unida, cada parte envuelve a la siguiente.";
    }

    @Override
    public String tableSew() {
        return "Coser";
    }

    @Override
    public String tableStep() {
        return "N.º";
    }

    @Override
    public String tableThick() {
        return "Grueso";
    }

    @Override
    public String tableTitle() {
        return "Todas las costuras, en orden";
    }

    @Override
    public String tableWraps() {
        return "Envuelve";
    }

    @Override
    public String teacherAbout(int joins, int patches, int pieces, String size, String title) {
        return title + ", " + size + ": " + (patches == 1 ? "" + patches + " pieza" : "" + patches + " piezas") + " de " + (pieces == 1 ? "" + pieces + " trozo" : "" + pieces + " trozos") + (joins == 0 ? "" : joins == 1 ? ", " + joins + " unión" : ", " + joins + " uniones") + ".";
    }

    @Override
    public String teacherDot() {
        return "Un punto en un paño marca dónde se juntan más capas. Que ahí se planche con vapor y se gire el volante a mano.";
    }

    @Override
    public String teacherNoCross() {
        return "Ninguna costura cruza otra.";
    }

    @Override
    public String teacherThick(int count, int places, String plies, String steps) {
        return "Lo más grueso: " + plies + " capas en " + (places == 1 ? "" + places + " sitio" : "" + places + " sitios") + ", cosidas en " + (count == 1 ? "el paso " + steps : "los pasos " + steps) + ".";
    }

    @Override
    public String teacherTitle() {
        return "Para quien enseña";
    }

    @Override
    public String thickTitle() {
        return "Dónde será grueso";
    }

    @Override
    public String threadTitle() {
        return "Hilo";
    }

    @Override
    public String tieCare() {
        return "Cuidado al atar";
    }

    @Override
    public String tieKnot() {
        return "El nudo llano";
    }

    @Override
    public String tieTitle() {
        return "Atar";
    }

    @Override
    public String tiedCare() {
        return "Cuidado una vez atado";
    }

    @Override
    public String tiedHow(String suited, String tie) {
        return tie + ", para: " + suited + ". Cada flecha termina donde está ahora la esquina.";
    }

    @Override
    public String tiedHowNamed(String suited, String tie, String trade) {
        return tie + " (" + trade + "), para: " + suited + ". Cada flecha termina donde está ahora la esquina.";
    }

    @Override
    public String tiedJust(String reason, String size) {
        return "Este paño (" + size + ") alcanza justo para " + reason + ".";
    }

    @Override
    public String tiedKnot() {
        return "El nudo";
    }

    @Override
    public String tiedLeaves(String reason, String size, String spare) {
        return "Este paño (" + size + ") deja " + spare + " más de lo previsto para " + reason + ".";
    }

    @Override
    public String tiedNear() {
        return "Cerca del nudo (a una mano más o menos) la tela real se frunce, y las puntas sueltas caen como quieren.";
    }

    @Override
    public String tiedNext(String size, String uses) {
        return "El siguiente tamaño en venta es " + size + ", para: " + uses + ".";
    }

    @Override
    public String tiedNextNamed(String size, String trade, String uses) {
        return "El siguiente tamaño en venta es " + size + " (" + trade + "), para: " + uses + ".";
    }

    @Override
    public String tiedSheet(String gift, String tie) {
        return "El regalo, atado: " + gift + ", " + tie;
    }

    @Override
    public String tiedShort() {
        return "Cuando una esquina no alcanza";
    }

    @Override
    public String tiedShows() {
        return "Lo que se ve";
    }

    @Override
    public String tiedSure() {
        return "Cómo de seguro es el tamaño";
    }

    @Override
    public String tiedTitle() {
        return "El regalo, atado";
    }

    @Override
    public String tiedTying() {
        return "Cómo se ata";
    }

    @Override
    public String toolsEach(String tool) {
        return tool + ".";
    }

    @Override
    public String toolsTitle() {
        return "Herramientas";
    }

    @Override
    public String view(String view) {
        return (view.equals("above") ? "Desde arriba" : view.equals("front") ? "De frente" : view.equals("right") ? "Desde la derecha" : view.equals("spine") ? "Desde el lomo" : "Desde una esquina");
    }

    @Override
    public String washingTitle() {
        return "Lavado";
    }
}
