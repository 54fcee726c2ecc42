package hearthcloth.words.refusing;

/** The room of refusing in Spanish. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class SpanishRefusing implements RefusingWords {

    @Override
    public String fileAfterQuote(String text) {
        return "hay texto tras una comilla de cierre: " + text + "; duplique la comilla que sea del texto, como en \"6 1/2\"\" wide\"";
    }

    @Override
    public String fileAt(String column, String line, String what) {
        return (column.equals("none") ? "línea " + line + ": " + what : "línea " + line + ", " + column + ": " + what);
    }

    @Override
    public String fileCells(String cells, String columns) {
        return "hay " + cells + " celdas pero " + columns + " columnas; ponga entre comillas \" una celda con coma, como \"16,5 cm\"";
    }

    @Override
    public String fileChoice(String one, String other, String text) {
        return text + " no significa nada aquí; escriba " + one + " u " + other + ", o déjelo en blanco";
    }

    @Override
    public String fileColour(String text) {
        return text + " no es un color; escriba uno como #8a9a5b o un nombre como dark green, o déjelo en blanco";
    }

    @Override
    public String fileCount(String most, String text) {
        return text + " no es un número de trozos; escriba un entero de 1 a " + most + ", o déjelo en blanco si es uno";
    }

    @Override
    public String fileDisagree(String before, String name, String now, String was) {
        return name + " es " + now + " aquí y " + was + " en la línea " + before + "; una tela es una cosa o la otra: corrija una línea o dele otro nombre";
    }

    @Override
    public String fileEmpty() {
        return "el archivo de telas está vacío; su primera línea nombra las columnas fabric,width,length y cada línea siguiente es un trozo";
    }

    @Override
    public String fileLongName(String letters, String most, String name) {
        return name + " tiene " + letters + " letras; en una etiqueta caben " + most + ": acórtelo y ponga el resto en note";
    }

    @Override
    public String fileMore(String more) {
        return "y " + more + " más";
    }

    @Override
    public String fileMost(String metres, String text) {
        return text + " pasa de los " + metres + " m que se admiten por trozo; compruebe el número y su unidad";
    }

    @Override
    public String fileNoColumn(String header) {
        return "ninguna columna tiene este nombre; la primera línea debe nombrar las columnas fabric, width y length (dice " + header + ")";
    }

    @Override
    public String fileNoName() {
        return "la tela no tiene nombre; escriba cómo la llama";
    }

    @Override
    public String fileNoPieces() {
        return "las columnas tienen nombre pero no sigue ningún trozo; añada una línea por trozo";
    }

    @Override
    public String fileNoUnit(int more) {
        return "el tamaño no tiene unidad" + (more == 0 ? "" : " (ni en otras " + more + " líneas)") + "; escriba in, cm o mm tras los números, añada una columna unit, o diga --unit in o --unit cm";
    }

    @Override
    public String fileNothing(String text) {
        return text + " es nada; escriba un tamaño mayor que cero o quite la línea";
    }

    @Override
    public String fileQuoteOpen() {
        return "aquí se abre una comilla \" que no se cierra; ciérrela o quítela";
    }

    @Override
    public String fileTooMany(String most) {
        return "aquí las telas pasan de " + most + " trozos, más de lo admitido; compruebe las cantidades o quite trozos";
    }

    @Override
    public String fileTwice() {
        return "dos columnas tienen este nombre; cambie el nombre de una o bórrela";
    }

    @Override
    public String fileTwoColours(String before, String line, String name, String now, String side, String was) {
        return "línea " + line + ": " + (side.equals("wrong") ? "el revés de " : "") + name + " es " + now + " aquí y " + was + " en la línea " + before + "; vale el primero";
    }

    @Override
    public String fileUnit(String text) {
        return text + " no es una unidad; escriba in, cm, mm, m, ft o yd";
    }

    @Override
    public String giftBook() {
        return "un libro se ata como una caja; escriba \"box\" y sus tres medidas, o \"books\" para dos libros iguales";
    }

    @Override
    public String giftBottle() {
        return "la boca de una botella no es más ancha que su cuerpo ni su hombro más alto que la boca; compruebe las medidas";
    }

    @Override
    public String giftCount(String count, String rule, String text) {
        return "«" + text + "» tiene " + count + " medidas, pero " + rule;
    }

    @Override
    public String giftKinds() {
        return "escriba el tipo y sus medidas, como \"box 30 x 20 x 8 cm\", \"bottle 8 x 30 cm\", \"two bottles 8 x 30 cm\", \"ball 22 cm\", \"books 21 x 15 x 2 cm\" o \"roll 6 x 40 cm\"";
    }

    @Override
    public String giftLarge(String size) {
        return size + " es más de dos metros, demasiado para un solo paño; compruebe el número y su unidad";
    }

    @Override
    public String giftLong(String kinds, String text) {
        return "«" + text + "…» es demasiado largo para un regalo; " + kinds;
    }

    @Override
    public String giftNone(String kinds) {
        return "no hay ningún regalo escrito; " + kinds;
    }

    @Override
    public String giftRule(String kind) {
        return (kind.equals("BOX") ? "una caja tiene tres medidas: largo x ancho x alto" : kind.equals("CUBE") ? "un cubo tiene una medida" : kind.equals("BOTTLE") ? "una botella tiene dos medidas: diámetro x alto" : kind.equals("BOTTLES") ? "dos botellas iguales tienen dos medidas: diámetro x alto" : kind.equals("BALL") ? "algo redondo tiene una medida, su diámetro" : kind.equals("BOOKS") ? "dos libros iguales tienen tres medidas, las de uno: alto x ancho x grosor" : "un rollo tiene dos medidas: diámetro x largo");
    }

    @Override
    public String giftSmall() {
        return "un regalo de menos de un centímetro no se puede atar; compruebe los números y su unidad";
    }

    @Override
    public String giftUnmeasured(String rule, String text) {
        return "«" + text + "» no tiene medidas; " + rule;
    }

    @Override
    public String giftWhat(String kinds, String text) {
        return "«" + text + "» no dice qué es el regalo; " + kinds;
    }

    @Override
    public String giftWord(String kinds, String text, String word) {
        return "«" + text + "»: no se entiende «" + word + "»; " + kinds;
    }

    @Override
    public String giftZero() {
        return "las medidas de un regalo son todas mayores que cero; escriba la que falta";
    }

    @Override
    public String givenCsv(String name, String such) {
        return name + " es una carpeta; dé el archivo CSV que hay dentro, por ejemplo " + such + ".";
    }

    @Override
    public String givenEmpty(String name) {
        return name + " está vacío; su primera línea nombra las columnas fabric,width,length y cada línea siguiente es un trozo.";
    }

    @Override
    public String givenGone(String name, String place) {
        return "No hay ningún archivo " + name + "; compruebe el nombre y dónde está usted (" + place + ").";
    }

    @Override
    public String givenInput() {
        return "la entrada estándar";
    }

    @Override
    public String givenLarge(String most, String name) {
        return name + " pasa de " + most + " MB, mucho más de lo que necesita una lista de telas; dé el archivo donde están sus telas.";
    }

    @Override
    public String givenNoText(String line, String name, String why) {
        return (why.equals("ARCHIVE") ? "" + name + " es un libro de cálculo o un archivo comprimido, no texto; guarde la tabla como CSV (UTF-8) y dé ese archivo." : why.equals("UTF16") ? "" + name + " es texto en UTF-16; guarde la tabla como CSV (UTF-8) y dé ese archivo." : why.equals("BYTE") ? "" + name + " no es texto (la línea " + line + " contiene un byte que no es una letra); guarde la tabla como CSV (UTF-8) y dé ese archivo." : "" + name + " no es UTF-8 (la línea " + line + " contiene una letra en otra codificación); guarde la tabla como CSV (UTF-8) y dé ese archivo.");
    }

    @Override
    public String givenNot(String name, String why) {
        return (why.equals("NAME") ? "«" + name + "» no es un nombre de archivo; compruebe cómo está escrito." : why.equals("LOCKED") ? "Usted no puede leer " + name + "; cambie sus permisos o cópielo." : "" + name + " no se pudo leer hasta el final; compruebe el disco y pruebe otra vez.");
    }

    @Override
    public String givenPhoto(String name) {
        return name + " es una carpeta; dé la foto que hay dentro.";
    }

    @Override
    public String givenPhotoEmpty(String name) {
        return name + " está vacío; dé la foto tal como la tomó la cámara o el móvil.";
    }

    @Override
    public String heapLine(String line, String what) {
        return "Línea " + line + ": " + what + ".";
    }

    @Override
    public String heapMany(String most, String pieces) {
        return "Son " + pieces + " trozos; una página planea con " + most + " como mucho. Quite algunos.";
    }

    @Override
    public String listAt(String line, String list, String what) {
        return list + ", línea " + line + ", " + what;
    }

    @Override
    public String listColumn(String names, String text) {
        return "ningún deseo se llama «" + text + "»; hay " + names + ".";
    }

    @Override
    public String listExtent() {
        return "no se dice el tamaño; escriba uno como 16 in, o un regalo";
    }

    @Override
    public String listFile(String list, String what) {
        return list + ", " + what + ".";
    }

    @Override
    public String listMissing() {
        return "name: falta un nombre; escriba de quién es el paño.";
    }

    @Override
    public String listMost(String list, String most) {
        return list + " tiene más de " + most + " paños; divídala.";
    }

    @Override
    public String listNoName() {
        return "ninguna columna se llama name; la primera línea nombra las columnas, como name,size,gift.";
    }

    @Override
    public String listNone(String list) {
        return list + " no nombra ningún paño; su primera línea nombra las columnas, como name,size,gift, y cada línea siguiente es un paño.";
    }

    @Override
    public String listSame(String text) {
        return "name: otro paño también se llama «" + text + "»; distíngalos.";
    }

    @Override
    public String listTwice(String text) {
        return text + ": dos columnas tienen este nombre; borre una.";
    }

    @Override
    public String listUnder(String text) {
        return "«" + text + "» no está bajo ninguna columna; ponga entre comillas lo que lleve coma.";
    }

    @Override
    public String listWhole(String line, String list, String what) {
        return list + ", línea " + line + ": " + what;
    }

    @Override
    public String listYes(String text) {
        return "free: «" + text + "» no sirve; escriba yes o no.";
    }

    @Override
    public String outEnding(String ending, String name, String option) {
        return option + ": «" + name + "» no sirve; escriba un nombre de archivo que acabe en " + ending + ".";
    }

    @Override
    public String outFile(String name, String option, String why) {
        return (why.equals("FOLDER") ? "" + option + ": " + name + " es una carpeta; dé un nombre de archivo." : why.equals("THERE") ? "" + option + ": ya hay un archivo " + name + "; dé otro nombre, o añada --replace para sobrescribirlo." : why.equals("NOWHERE") ? "" + option + ": no hay carpeta para " + name + "; créela antes o compruebe el nombre." : why.equals("LOCKED") ? "" + option + ": usted no puede escribir en la carpeta de " + name + "; cambie sus permisos o dé otra." : why.equals("NAME") ? "" + option + ": «" + name + "» no es un nombre de archivo; compruebe cómo está escrito." : "" + option + ": " + name + " no se pudo escribir; compruebe sus permisos y el espacio en el disco.");
    }

    @Override
    public String outFolder(String name, String why) {
        return (why.equals("MISSING") ? "--out: falta una carpeta; escriba por ejemplo --out cloths." : why.equals("FILE") ? "--out: " + name + " es un archivo; dé una carpeta, que puede no existir todavía." : why.equals("NAME") ? "--out: «" + name + "» no es un nombre de carpeta; compruebe cómo está escrito." : why.equals("CLOSED") ? "--out: no se pudo mirar dentro de " + name + "; compruebe sus permisos." : "--out: " + name + " no se pudo escribir; compruebe sus permisos y el espacio en el disco. No se cambió nada.");
    }

    @Override
    public String outHolds(String name, String thing) {
        return "--out: " + name + " contiene otras cosas (" + thing + "); dé una carpeta nueva, o una que solo contenga propuestas.";
    }

    @Override
    public String outInWay(String name, String thing) {
        return "--out: " + name + " no se pudo crear porque hay un archivo en su lugar (" + thing + "); dé otra carpeta.";
    }

    @Override
    public String outStopped(String name) {
        return "Detenido. No se cambió nada en " + name + ".";
    }

    @Override
    public String stashFull(String most) {
        return "las telas pasarían de " + most + " trozos, más de lo admitido; compruebe las cantidades. No se añadió nada";
    }

    @Override
    public String stashKnown(String fabric) {
        return fabric + " ya está; su color, caras y pelo quedan como están aquí.";
    }

    @Override
    public String tieFirst() {
        return "un atado necesita algo que atar; añada --gift \"box 30 x 20 x 8 cm\"";
    }

    @Override
    public String tieOther(String names, String suited, String tie) {
        return tie + ": para " + suited + "; para este regalo elija " + names;
    }

    @Override
    public String tieUnknown(String names, String text) {
        return "«" + text + "» no es un atado conocido; hay " + names;
    }

    @Override
    public String wishAt(String field, String what) {
        return field + ": " + what + ".";
    }

    @Override
    public String wishBands() {
        return "no va con trozos que deban estar o ir en el centro";
    }

    @Override
    public String wishBlocks(String text) {
        return "«" + text + "» no es un número de bloques; escriba \"3 x 3\"";
    }

    @Override
    public String wishBlocksReach(String most, String text) {
        return "«" + text + "» queda fuera de alcance; se planean de 1 x 1 a " + most + " x " + most + " bloques";
    }

    @Override
    public String wishBoth() {
        return "no se pueden pedir a la vez un tamaño y un regalo; quite uno de los dos";
    }

    @Override
    public String wishCloth(String text) {
        return "«" + text + "» queda fuera de alcance; se planean paños de 5 cm (2 in) a 5 m (196 in), así que compruebe el número y su unidad";
    }

    @Override
    public String wishContrast(String names, String text) {
        return "«" + text + "» no es un contraste; escriba uno de " + names;
    }

    @Override
    public String wishFabric(int more, String name, String names) {
        return "ninguna tela de la lista se llama «" + name + "»; hay " + names + (more == 0 ? "" : " y " + more + " más");
    }

    @Override
    public String wishFar(String text) {
        return "«" + text + "» queda fuera de alcance; compruebe el número y su unidad";
    }

    @Override
    public String wishFell(String text) {
        return "«" + text + "» no deja sobrecarga: el segundo margen envuelve al primero, debe ser el más ancho";
    }

    @Override
    public String wishGoes(String other) {
        return "va con " + other;
    }

    @Override
    public String wishGoesBars() {
        return "va con pieza central y tiras, no con --free ni --blocks";
    }

    @Override
    public String wishManyWidths(String count, String most) {
        return count + " anchos son demasiados; escriba " + most + " como mucho";
    }

    @Override
    public String wishMiddle() {
        return "escriba el número de un trozo";
    }

    @Override
    public String wishMixed(String text) {
        return "«" + text + "» no se puede mezclar; tras el + escriba scattered evenly o one bright scrap";
    }

    @Override
    public String wishNarrow(String band, String eaten, String how, String needed, String text) {
        return "«" + text + "» es demasiado estrecho: " + (how.equals("finished") ? "la costura sobrecargada sola mide " + band : "costuras o dobladillo toman hasta " + eaten + " y la sobrecarga cubre " + band) + "; escriba más de " + needed;
    }

    @Override
    public String wishNeed(String most, String size, String tie) {
        return tie + " necesitaría un paño de " + size + ", y se planea hasta " + most + "; envuelva algo menor o elija otro atado";
    }

    @Override
    public String wishNoCloth(String most, String text) {
        return "«" + text + "» pasa de " + most + " y no deja tela; compruebe el número y su unidad";
    }

    @Override
    public String wishNotWith(String other) {
        return "no va con " + other;
    }

    @Override
    public String wishNothing() {
        return "una pieza de nada no se puede coser; escriba una longitud como \"2 in\"";
    }

    @Override
    public String wishOff(String text) {
        return "«" + text + "» no es una distancia del centro; escriba una longitud y right, left, away o near: \"2 cm left, 3 cm away\"";
    }

    @Override
    public String wishOrder(String text) {
        return "«" + text + "» no es un orden; escriba round, pairs o two-sides";
    }

    @Override
    public String wishPair(int count, String text, String what) {
        return "«" + text + "» tiene " + (count == 1 ? "" + count + " número" : "" + count + " números") + "; " + (what.equals("seam") ? "una costura sobrecargada tiene un margen estrecho y uno ancho, como \"1/4 + 1/2 in\"" : "un dobladillo tiene un primer y un segundo doblez, como \"1/4 + 1/4 in\"");
    }

    @Override
    public String wishPart(String most, String text) {
        return "«" + text + "» no sirve: cada parte es más que nada y como mucho " + most;
    }

    @Override
    public String wishReach(String least, String most, String text) {
        return "«" + text + "» queda fuera de alcance; se planea de " + least + " a " + most + ", así que compruebe el número y su unidad";
    }

    @Override
    public String wishScheme(String names, String text) {
        return "«" + text + "» no es un plan de color; escriba stash o uno de " + names;
    }

    @Override
    public String wishScraps(String text) {
        return "«" + text + "» no es una regla para retales; escriba as-they-are, cut o either";
    }

    @Override
    public String wishSeam(String names, String text) {
        return "«" + text + "» no es una costura; escriba su margen estrecho y ancho, como \"1/4 + 1/2 in\", o una de " + names;
    }

    @Override
    public String wishSeed(String text) {
        return "«" + text + "» no es un número entero; escriba uno como 7";
    }

    @Override
    public String wishSetting(String text) {
        return "«" + text + "» no es una disposición; escriba straight furrow, barn raising, sunshine and shadow, turned at will o all alike";
    }

    @Override
    public String wishShow(String text) {
        return "«" + text + "» es más de una tela; escriba la que debe verse";
    }

    @Override
    public String wishSlack(String most, String text) {
        return "«" + text + "» pasa de " + most + ", más de lo que come la costura; compruebe el número y su unidad, o escriba none";
    }

    @Override
    public String wishTied() {
        return "se trata de un regalo atado; añada --gift \"box 30 x 20 x 8 cm\"";
    }

    @Override
    public String wishTime(String text) {
        return "«" + text + "» no es un tiempo; escriba uno como 2s, 500ms o 1min";
    }

    @Override
    public String wishTimeReach(String text) {
        return "«" + text + "» queda fuera de alcance; dé entre 1ms y 10min";
    }

    @Override
    public String wishUnit(String text) {
        return "«" + text + "» no es una unidad en la que se mida; escriba in o cm";
    }

    @Override
    public String wishWhole(String least, String most, String text) {
        return "«" + text + "» no sirve; escriba un entero de " + least + " a " + most;
    }

    @Override
    public String wishWidths(int rounds, int widths) {
        return (widths == 1 ? "" + widths + " ancho" : "" + widths + " anchos") + " para " + (rounds == 1 ? "" + rounds + " vuelta" : "" + rounds + " vueltas") + "; escriba un ancho por vuelta, o más vueltas";
    }

    @Override
    public String wishWord(String names, String text) {
        return "«" + text + "» no sirve; escriba " + names;
    }
}
