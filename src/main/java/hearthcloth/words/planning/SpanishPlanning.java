package hearthcloth.words.planning;

/** The room of planning in Spanish. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class SpanishPlanning implements PlanningWords {

    @Override
    public String barNoPiece(String piece, String width) {
        return "Ningún trozo es bastante ancho para una tira cortada a " + width + "; el más ancho es " + piece + ".";
    }

    @Override
    public String betterCuts() {
        return "menos cortes";
    }

    @Override
    public String betterFewerBars() {
        return "menos tiras por coser";
    }

    @Override
    public String betterHearth() {
        return "una pieza central más grande";
    }

    @Override
    public String betterJoins() {
        return "menos uniones";
    }

    @Override
    public String betterLost() {
        return "menos tela perdida";
    }

    @Override
    public String betterMoreBars() {
        return "más tiras a la vista";
    }

    @Override
    public String betterNarrower() {
        return "tiras más estrechas";
    }

    @Override
    public String betterPieces() {
        return "más trozos aprovechados";
    }

    @Override
    public String betterSize() {
        return "un paño más grande";
    }

    @Override
    public String betterTouched() {
        return "menos tela empezada";
    }

    @Override
    public String betterWider() {
        return "tiras más anchas";
    }

    @Override
    public String cabinTitle(String scraps) {
        return (scraps.equals("yes") ? "Un log cabin entre retales" : "Un log cabin");
    }

    @Override
    public String cabinsFew(String across, String down, int rounds, String size) {
        return "Estos retales no bastan para " + across + " × " + down + " log cabins de " + (rounds == 1 ? "" + rounds + " vuelta" : "" + rounds + " vueltas") + " a " + size + "; con menos bloques o vueltas hace falta menos.";
    }

    @Override
    public String cabinsTitle(String across, String down, String scraps, String setting) {
        return setting + ", " + across + " × " + down + " log cabins" + (scraps.equals("yes") ? " entre retales" : "");
    }

    @Override
    public String chosenBands(String direction) {
        return "En bandas que " + (direction.equals("ACROSS") ? "cruzan el paño a lo ancho" : "bajan por el paño") + ", de borde a borde.";
    }

    @Override
    public String chosenBars(String width) {
        return "Tiras cortadas a " + width + " de ancho.";
    }

    @Override
    public String chosenByHand() {
        return "Elegido a mano.";
    }

    @Override
    public String chosenCabin(String order, int rounds) {
        return "Un log cabin, " + (rounds == 1 ? "una vuelta" : "" + rounds + " vueltas") + ", " + order + ".";
    }

    @Override
    public String chosenCabins(String across, String count, String down, String order, int rounds) {
        return count + " log cabins, " + across + " × " + down + ", " + (rounds == 1 ? "una vuelta" : "" + rounds + " vueltas") + " en cada uno, " + order + ".";
    }

    @Override
    public String chosenHearth(String size) {
        return "La pieza central se corta a " + size + ".";
    }

    @Override
    public String chosenMiddle(String piece) {
        return "La pieza " + piece + " está en el centro tal como es.";
    }

    @Override
    public String chosenMixed() {
        return "Lo claro y lo oscuro están mezclados: no hubo modo de separarlos.";
    }

    @Override
    public String chosenOrder(String order) {
        return "El orden: " + order + ".";
    }

    @Override
    public String chosenOuter(String size) {
        return "La vuelta exterior se corta a medida, para que el paño quede en " + size + ".";
    }

    @Override
    public String chosenReadyBars(String widths) {
        return "Tiras cortadas a " + widths + " de ancho, el ancho de trozos que tiene.";
    }

    @Override
    public String chosenReadyRounds(String rounds) {
        return "Anchos de corte de las tiras, los de trozos que tiene: " + rounds + ".";
    }

    @Override
    public String chosenRound(String number, String widths) {
        return "vuelta " + number + ": " + widths;
    }

    @Override
    public String chosenRounds(int n) {
        return (n == 1 ? "Una vuelta." : "" + n + " vueltas.");
    }

    @Override
    public String chosenSizeFound(String limit) {
        return "El tamaño: el cuadrado más grande encontrado; toda la tela junta no daría uno de más de " + limit + ".";
    }

    @Override
    public String chosenSizeScraps(String limit, String side) {
        return "El tamaño: el cuadrado más grande encontrado, " + side + "; todos estos retales juntos no darían uno de más de " + limit + ".";
    }

    @Override
    public String chosenSizeSteps() {
        return "El tamaño: el más grande encontrado, en pasos de un catorceavo aproximadamente.";
    }

    @Override
    public String chosenSizeSure(String step) {
        return "El tamaño: en pasos de " + step + " no es posible un cuadrado más grande.";
    }

    @Override
    public String chosenSmaller(String percent) {
        return "Este paño es " + percent + " más pequeño de lo deseado.";
    }

    @Override
    public String chosenWith(String pieces) {
        return "Las piezas que pidió están en él: " + pieces + ".";
    }

    @Override
    public String colour(String what) {
        return what + ".";
    }

    @Override
    public String colourApart() {
        return "ninguna tela toca a sí misma";
    }

    @Override
    public String colourBack(String what) {
        return "En el revés: " + what + ".";
    }

    @Override
    public String colourCouldLie(String length) {
        return "Como mucho " + length + " de sus costuras podrían quedar mejor.";
    }

    @Override
    public String colourField() {
        return "las tiras son un solo campo de tela";
    }

    @Override
    public String colourHearthAll() {
        return "la pieza central destaca por todos los lados";
    }

    @Override
    public String colourHearthNone() {
        return "la pieza central es discreta, parecida a lo que la rodea";
    }

    @Override
    public String colourHearthSome(String share) {
        return "la pieza central destaca en el " + share + " de su borde";
    }

    @Override
    public String colourMixed(int n) {
        return (n == 1 ? "una tira es de varias telas" : "" + n + " tiras son de varias telas");
    }

    @Override
    public String colourOutside(String fabric, String share) {
        return fabric + ": " + share + " de lo que se ve una vez atado.";
    }

    @Override
    public String colourOutsideAlways(String fabric, String least, String most) {
        return fabric + " se ve se ate como se ate: del " + least + " al " + most + " de lo que se ve una vez atado.";
    }

    @Override
    public String colourOutsideRange(String fabric, String least, String most) {
        return fabric + ": del " + least + " al " + most + " de lo que se ve una vez atado, según queden las esquinas sobrantes.";
    }

    @Override
    public String colourPrice(int n) {
        return (n == 1 ? "Un corte más que el mínimo encontrado, por sus colores." : "" + n + " cortes más que el mínimo encontrado, por sus colores.");
    }

    @Override
    public String colourPriceJoins(int n) {
        return (n == 1 ? "Una unión más que el mínimo encontrado, por sus colores." : "" + n + " uniones más que el mínimo encontrado, por sus colores.");
    }

    @Override
    public String colourProven() {
        return "Ninguna otra elección de tela por tira queda mejor; está demostrado.";
    }

    @Override
    public String colourSame(String share) {
        return "una tela toca a sí misma en el " + share + " de las costuras entre tiras";
    }

    @Override
    public String colourTied(String what) {
        return "En los bordes que se ven una vez atado: " + what + ".";
    }

    @Override
    public String fabricUnknown(String name, String names) {
        return "Ninguna tela de la lista se llama «" + name + "»; hay " + names + ".";
    }

    @Override
    public String good(String idea, String points) {
        return idea + "; " + points + ".";
    }

    @Override
    public String goodAlone(String idea) {
        return idea + ".";
    }

    @Override
    public String heapEmpty() {
        return "No hay telas; añada al menos un trozo.";
    }

    @Override
    public String hearth() {
        return "la pieza central";
    }

    @Override
    public String hearthNoPiece(String piece, String size) {
        return "Ningún trozo da para la pieza central, cortada a " + size + "; el mejor es " + piece + ".";
    }

    @Override
    public String moreAdded(String pieces) {
        return "Saldría añadiendo esto: " + pieces + ".";
    }

    @Override
    public String morePiece(String fabric, String size) {
        return fabric + ", " + size;
    }

    @Override
    public String morePieces(String fabric, String number, String size) {
        return number + " de " + fabric + ", " + size;
    }

    @Override
    public String moreTime() {
        return "El plan necesita más tiempo; planee otra vez con más tiempo.";
    }

    @Override
    public String needFabrics() {
        return "No tiene bastante de estas telas para ninguno de los planes de color probados.";
    }

    @Override
    public String needMore(String has, String more, String takes) {
        return "La disposición que menos tela gasta necesita " + takes + " con costuras y dobladillo. Toda su tela junta es " + has + ", así que faltan unos " + more + ".";
    }

    @Override
    public String order(String order) {
        return (order.equals("ROUND") ? "alrededor" : order.equals("PAIRS") ? "parejas opuestas" : "dos lados");
    }

    @Override
    public String pieceLine(String fabric, String line, String size) {
        return fabric + ", " + size + " (línea " + line + ")";
    }

    @Override
    public String pointFewestBars(String n) {
        return "las menos tiras por coser, " + n;
    }

    @Override
    public String pointFewestCuts(String n) {
        return "los menos cortes, " + n;
    }

    @Override
    public String pointFewestJoins(String n) {
        return "las menos uniones, " + n;
    }

    @Override
    public String pointJoins(int n) {
        return (n == 1 ? "una unión" : "" + n + " uniones");
    }

    @Override
    public String pointJoinsAsFew(int n) {
        return (n == 1 ? "una unión, ninguno tiene menos" : "" + n + " uniones, ninguno tiene menos");
    }

    @Override
    public String pointLargest() {
        return "el más grande de estos";
    }

    @Override
    public String pointLargestHearth() {
        return "la pieza central más grande";
    }

    @Override
    public String pointLeastLost() {
        return "la menor pérdida de tela";
    }

    @Override
    public String pointLeavesMost() {
        return "deja más tela sin empezar";
    }

    @Override
    public String pointMostBars(String n) {
        return "más tiras a la vista, " + n;
    }

    @Override
    public String pointMostPieces(String n) {
        return "aprovecha más trozos, " + n;
    }

    @Override
    public String pointNarrowest() {
        return "las tiras más estrechas";
    }

    @Override
    public String pointNoJoin() {
        return "ninguna tira necesita unión";
    }

    @Override
    public String pointOnlyWithoutCut() {
        return "el único sin corte";
    }

    @Override
    public String pointOnlyWithoutJoin() {
        return "el único sin unión";
    }

    @Override
    public String pointThan(String better) {
        return better + " que el primero";
    }

    @Override
    public String pointWidest() {
        return "las tiras más anchas";
    }

    @Override
    public String rulesNone() {
        return "No se encontró ninguno que las cumpla todas, aunque se probaron muchos.";
    }

    @Override
    public String scheme(String scheme) {
        return (scheme.equals("HALVES") ? "Dos mitades" : scheme.equals("ROUNDS") ? "Anillo por anillo" : scheme.equals("TURNS") ? "Por turnos" : scheme.equals("FIELD") ? "Un solo campo" : scheme.equals("SPIRAL") ? "Espiral" : scheme.equals("SCATTERED") ? "Bien repartidas" : scheme.equals("GRADED") ? "De claro a oscuro" : scheme.equals("FRAMES") ? "Marcos" : scheme.equals("ACCENT") ? "Un retal vivo" : scheme.equals("ALL") ? "De toda la tela" : scheme.equals("FALLS") ? "Según da la tela" : scheme.equals("OUTWARDS") ? "Lo mejor por fuera" : "A su gusto");
    }

    @Override
    public String schemeIdea(String scheme) {
        return (scheme.equals("HALVES") ? "lo claro y lo oscuro se juntan en la diagonal" : scheme.equals("ROUNDS") ? "cada vuelta tiene su tela" : scheme.equals("TURNS") ? "lo claro y lo oscuro se turnan, tira a tira" : scheme.equals("FIELD") ? "la pieza central está sola en una misma tela" : scheme.equals("SPIRAL") ? "lo claro y lo oscuro giran juntos hacia fuera" : scheme.equals("SCATTERED") ? "una tela por tira, nunca junto a sí misma" : scheme.equals("GRADED") ? "cada vuelta es más oscura que la de dentro" : scheme.equals("FRAMES") ? "dos telas se turnan, vuelta a vuelta" : scheme.equals("ACCENT") ? "una tela viva destaca en unos pocos sitios" : scheme.equals("ALL") ? "telas en cualquier sitio" : scheme.equals("FALLS") ? "las tiras se cortan donde la tela rinde más" : scheme.equals("OUTWARDS") ? "la tela elegida está donde se ve una vez atada" : "elegido a mano");
    }

    @Override
    public String schemeNeeds(String scheme) {
        return (scheme.equals("HALVES") ? "telas que se separen bien en claras y oscuras, bastante de cada una" : scheme.equals("TURNS") ? "telas que se separen bien en claras y oscuras, bastante de cada una" : scheme.equals("SPIRAL") ? "telas que se separen bien en claras y oscuras, bastante de cada una" : scheme.equals("ROUNDS") ? "bastante de una misma tela para cada vuelta, distinta de la pieza central" : scheme.equals("FIELD") ? "bastante de una misma tela para todas las tiras y otra para la pieza central" : scheme.equals("SCATTERED") ? "bastante de varias telas para que ninguna quede junto a sí misma" : scheme.equals("GRADED") ? "una tela por vuelta, cada una más oscura que la de dentro" : scheme.equals("FRAMES") ? "dos telas, una claramente más clara, bastante de cada una para sus vueltas" : scheme.equals("ACCENT") ? "una tela viva junto a otras más tranquilas" : "solo tela");
    }

    @Override
    public String schemeUntrue(String needs, String scheme) {
        return "No se encontró ningún paño que merezca el nombre «" + scheme + "»; hacen falta " + needs + ".";
    }

    @Override
    public String scrapsByHand() {
        return "Unido a mano";
    }

    @Override
    public String scrapsMore(String size) {
        return "Con un trozo más de " + size + " es posible.";
    }

    @Override
    public String scrapsNoPiece(String piece) {
        return "No hay ninguna pieza " + piece + " de la que cortar un trozo; búsquela en las existencias.";
    }

    @Override
    public String scrapsNone() {
        return "No se puede hacer ningún paño con estos retales; hacen falta más, o más grandes.";
    }

    @Override
    public String scrapsShort(String area) {
        return "Se pongan como se pongan, a estos retales les faltan " + area + " una vez descontadas las costuras.";
    }

    @Override
    public String scrapsTitle(String choice) {
        return (choice.equals("ANY") ? "Retales como vienen" : choice.equals("WHOLE") ? "Ningún retal partido" : choice.equals("SMALL") ? "Muchos retales pequeños" : choice.equals("LARGE") ? "Pocos retales grandes" : choice.equals("EVEN") ? "Tamaños más parecidos" : choice.equals("CALM") ? "Colores cercanos" : choice.equals("ALIKE") ? "Tamaños cercanos" : "Claro contra oscuro");
    }

    @Override
    public String scrapsTooSmall(String length) {
        return "Ningún trozo basta para una pieza que muestre " + length + " en cada sentido; pida un --least-piece menor.";
    }

    @Override
    public String scrapsUsed(String lost, int n, String parted, String trimmed, String whole) {
        return (n == 1 ? "" + n + " retal: " + whole + " tal cual, " + trimmed + " recortados, " + parted + " partidos en dos; se recorta y se pierde el " + lost + " de lo cosido." : "" + n + " retales: " + whole + " tal cual, " + trimmed + " recortados, " + parted + " partidos en dos; se recorta y se pierde el " + lost + " de lo cosido.");
    }

    @Override
    public String seamsApart() {
        return "Ninguna tela queda junto a sí misma.";
    }

    @Override
    public String seamsClear(String clear) {
        return "No hay dos costuras que acaben a menos de " + clear + " una de otra a ambos lados de una tercera.";
    }

    @Override
    public String seamsNear(String clear, int n) {
        return (n == 1 ? "En un punto acaban costuras a menos de " + clear + " una de otra a ambos lados de una tercera; la guía dice dónde hay grosor." : "En " + n + " puntos acaban costuras a menos de " + clear + " una de otra a ambos lados de una tercera; la guía dice dónde hay grosor.");
    }

    @Override
    public String seamsNowhere() {
        return "En ningún punto se juntan cuatro costuras.";
    }

    @Override
    public String seamsThick(int n) {
        return (n == 1 ? "En un punto se juntan costuras a ambos lados de una tercera; la guía dice dónde hay grosor." : "En " + n + " puntos se juntan costuras a ambos lados de una tercera; la guía dice dónde hay grosor.");
    }

    @Override
    public String setting(String setting) {
        return (setting.equals("ALIKE") ? "Todos iguales" : setting.equals("STRAIGHT_FURROW") ? "Surco recto" : setting.equals("BARN_RAISING") ? "Rombos (barn raising)" : setting.equals("SUNSHINE_AND_SHADOW") ? "Sol y sombra" : "Girados al azar");
    }

    @Override
    public String settingIdea(String setting) {
        return (setting.equals("ALIKE") ? "Todos los bloques miran igual." : setting.equals("STRAIGHT_FURROW") ? "Lo claro y lo oscuro forman franjas de esquina a esquina." : setting.equals("BARN_RAISING") ? "Lo claro y lo oscuro salen del centro en cuadrados de punta." : setting.equals("SUNSHINE_AND_SHADOW") ? "Se juntan las mitades claras de cuatro bloques, y las oscuras." : "Cada bloque está girado al azar.");
    }

    @Override
    public String shapeComes(String sizes) {
        return "Esta pieza central con estas tiras da " + sizes + "; pida una de estas medidas, o deje la pieza central o las tiras a la tela.";
    }

    @Override
    public String shapeNone(String size) {
        return "Ninguna pieza central con estas tiras llega a " + size + "; deje una de las dos a la tela, o pida otro número de vueltas.";
    }

    @Override
    public String shapeNoneAny() {
        return "Ninguna pieza central con estas tiras da un paño; deje una de las dos a la tela, o pida otro número de vueltas.";
    }

    @Override
    public String shapeNothing() {
        return "Con estas costuras no quedaría nada de la pieza central o de las tiras; hágalas más grandes.";
    }

    @Override
    public String shapeSize(int rounds, String size) {
        return size + " con " + (rounds == 1 ? "una vuelta" : "" + rounds + " vueltas");
    }

    @Override
    public String shortAny(String fabric, String length, String number, String sure, String what, String width) {
        return "Faltan " + (sure.equals("proven") ? "al menos" : "unos") + " " + length + " de una de " + number + " telas, como " + fabric + ", a " + width + " de ancho, para " + what + ".";
    }

    @Override
    public String shortCloth(String has, String missing, String size) {
        return "Solo el paño mide " + size + "; toda la tela junta es " + has + ", así que faltan al menos " + missing + " antes de cualquier costura.";
    }

    @Override
    public String shortOf(String fabrics, String length, String sure, String what, String width) {
        return "Faltan " + (sure.equals("proven") ? "al menos" : "unos") + " " + length + " de " + fabrics + " a " + width + " de ancho, para " + what + ".";
    }

    @Override
    public String stashEmpty() {
        return "La lista de telas está vacía; añada al menos un trozo.";
    }

    @Override
    public String title(String order, String scheme) {
        return scheme + ", " + order;
    }

    @Override
    public String washMixed(String unwashed, String unwashedFabric, String washed, String washedFabric) {
        return "Unos trozos están lavados (como " + washed + ", " + washedFabric + ") y otros no (como " + unwashed + ", " + unwashedFabric + "): encogerán de distinta manera. Lave y planche todos antes de cortar.";
    }
}
