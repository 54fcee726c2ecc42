package hearthcloth.words.stashing;

/** The room of stashing in Spanish. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class SpanishStashing implements StashingWords {

    @Override
    public String added(String first, String last, int n) {
        return (n == 1 ? "" + n + " trozo añadido, número " + first + "." : "" + n + " trozos añadidos, números " + first + "–" + last + ".");
    }

    @Override
    public String addedKnown(String fabric) {
        return fabric + " ya estaba; su color, sus caras y su pelo se quedan como aquí.";
    }

    @Override
    public String and(String before, String next) {
        return before + ", " + next;
    }

    @Override
    public String area(String number, String unit) {
        return (unit.equals("m") ? "" + number + " m²" : "" + number + " yd²");
    }

    @Override
    public String asideBack() {
        return "Devolver";
    }

    @Override
    public String asideNote() {
        return "Lo apartado sigue entre sus telas, pero no se planea ningún paño con ello.";
    }

    @Override
    public String asideSet() {
        return "Apartar";
    }

    @Override
    public String asideTitle() {
        return "Para otra cosa";
    }

    @Override
    public String backStash() {
        return "Volver a las telas";
    }

    @Override
    public String backTable() {
        return "Volver a la mesa";
    }

    @Override
    public String chosen() {
        return "Lo elegido";
    }

    @Override
    public String chosenBack() {
        return "Devolver";
    }

    @Override
    public String chosenFirst() {
        return "Usar primero";
    }

    @Override
    public String chosenFreeAlready() {
        return "Ya están libres.";
    }

    @Override
    public String chosenKeep() {
        return "Guardar para luego";
    }

    @Override
    public String chosenKeptAlready() {
        return "Ya están guardados.";
    }

    @Override
    public String chosenMany() {
        return "%d elegidos";
    }

    @Override
    public String chosenMore() {
        return "Decir más";
    }

    @Override
    public String chosenNone() {
        return "Ninguno";
    }

    @Override
    public String chosenNothing() {
        return "Elija antes trozos en la mesa.";
    }

    @Override
    public String chosenUsed() {
        return "Gastado";
    }

    @Override
    public String colour(String hue, String tone) {
        return (tone.equals("dark") ? "" + hue + " oscuro" : tone.equals("light") ? "" + hue + " claro" : tone.equals("pale") ? "" + hue + " pálido" : tone.equals("bright") ? "" + hue + " vivo" : tone.equals("greyish") ? "" + hue + " grisáceo" : "" + hue);
    }

    @Override
    public String colourUnknown() {
        return "color aún desconocido";
    }

    @Override
    public String deedAdd(String what) {
        return "añadir " + what;
    }

    @Override
    public String deedAddFile(String what) {
        return "añadir " + what + " de un archivo";
    }

    @Override
    public String deedAside(String what) {
        return "apartar " + what;
    }

    @Override
    public String deedBack(String what) {
        return "devolver " + what;
    }

    @Override
    public String deedChange(String what) {
        return "cambiar " + what;
    }

    @Override
    public String deedDelete(String what) {
        return "borrar " + what;
    }

    @Override
    public String deedFabric(String fabric) {
        return "cambiar la tela " + fabric;
    }

    @Override
    public String deedSplit(String what) {
        return "cortar en dos " + what;
    }

    @Override
    public String deedUse(String what) {
        return "gastar " + what;
    }

    @Override
    public String done(String deed) {
        return "Hecho: " + deed + ".";
    }

    @Override
    public String fabricAbout(String colour, String faces, String nap) {
        return colour + ", " + (faces.equals("RIGHT") ? "tiene derecho" : "igual por los dos lados") + (nap.equals("LENGTHWISE") ? ", pelo a lo largo" : "");
    }

    @Override
    public String fabricAboutWrong(String colour, String faces, String nap, String wrong) {
        return colour + ", " + (faces.equals("RIGHT") ? "tiene derecho" : "igual por los dos lados") + ", revés " + wrong + (nap.equals("LENGTHWISE") ? ", pelo a lo largo" : "");
    }

    @Override
    public String fabricAcross() {
        return "Tela a lo largo del lado corto";
    }

    @Override
    public String fabricAll() {
        return "Para todos sus trozos";
    }

    @Override
    public String fabricAsideAll() {
        return "Apartarlo todo";
    }

    @Override
    public String fabricAsideSome(String aside, String pieces) {
        return aside + " de " + pieces + " apartados.";
    }

    @Override
    public String fabricAway() {
        return "Quitar la imagen";
    }

    @Override
    public String fabricAwaySure() {
        return "¿Quitar la imagen? Habría que enviarla otra vez.";
    }

    @Override
    public String fabricBackAll() {
        return "Devolverlo todo";
    }

    @Override
    public String fabricChanged(String pieces) {
        return "Cambiado en " + pieces + ".";
    }

    @Override
    public String fabricFile() {
        return "Imagen, PNG o JPEG";
    }

    @Override
    public String fabricHow() {
        return "Ponga la tela plana a la luz del día. El centro de la imagen se repite donde se dibuja esta tela.";
    }

    @Override
    public String fabricIsAside() {
        return "Apartada: no se planea ningún paño con ella.";
    }

    @Override
    public String fabricIsBack() {
        return "Devuelta: se vuelve a planear con ella.";
    }

    @Override
    public String fabricMerge() {
        return "Si le da el nombre de otra tela, las dos se vuelven una. Se puede deshacer en la página de telas.";
    }

    @Override
    public String fabricNoPicture() {
        return "No hay imagen de esta tela.";
    }

    @Override
    public String fabricNone() {
        return "Ya no hay ninguna tela con ese nombre.";
    }

    @Override
    public String fabricOwn() {
        return "Su propia foto";
    }

    @Override
    public String fabricPicture(String about) {
        return about + ". El dibujo muestra 20 cm, unas 8 pulgadas.";
    }

    @Override
    public String fabricSavePicture() {
        return "Guardar la imagen";
    }

    @Override
    public String fabricTiled() {
        return "Su imagen está guardada y repetida a escala.";
    }

    @Override
    public String fabricUntiled() {
        return "La imagen se ha quitado; vuelve a verse el color.";
    }

    @Override
    public String fabricWrongAcross() {
        return "Una imagen muestra entre 1 cm y 3 m de tela; mida del borde izquierdo al derecho.";
    }

    @Override
    public String fieldColour() {
        return "Color";
    }

    @Override
    public String fieldColourBlank() {
        return "Color (puede quedar en blanco)";
    }

    @Override
    public String fieldFabric() {
        return "Tela";
    }

    @Override
    public String fieldFaces() {
        return "Caras";
    }

    @Override
    public String fieldFacesAre(String faces) {
        return (faces.equals("same") ? "igual por los dos lados" : "tiene derecho");
    }

    @Override
    public String fieldHowMany() {
        return "Cuántos";
    }

    @Override
    public String fieldHowManyOf(String n) {
        return "Cuántos de los " + n;
    }

    @Override
    public String fieldLength() {
        return "A lo largo del orillo";
    }

    @Override
    public String fieldLengthIn(String unit) {
        return "A lo largo del orillo, " + unit;
    }

    @Override
    public String fieldName() {
        return "Nombre";
    }

    @Override
    public String fieldNap() {
        return "Pelo";
    }

    @Override
    public String fieldNapIs(String nap) {
        return (nap.equals("any") ? "ninguno, en cualquier sentido" : "a lo largo");
    }

    @Override
    public String fieldWashed() {
        return "Lavado";
    }

    @Override
    public String fieldWashedIs(String washed) {
        return (washed.equals("UNKNOWN") ? "no se sabe" : washed.equals("YES") ? "lavado" : "sin lavar");
    }

    @Override
    public String fieldWidth() {
        return "Ancho";
    }

    @Override
    public String fieldWidthIn(String unit) {
        return "Ancho, " + unit;
    }

    @Override
    public String fieldWrong() {
        return "Revés";
    }

    @Override
    public String fieldWrongOwn() {
        return "El revés tiene este color";
    }

    @Override
    public String fileColumns() {
        return "Se han dejado fuera las columnas que no tratan de la tela.";
    }

    @Override
    public String fileEncoding() {
        return "Este archivo no es texto en UTF-8; guárdelo desde la hoja de cálculo como CSV (UTF-8).";
    }

    @Override
    public String fileRefused() {
        return "No se ha aceptado el archivo; no se ha cambiado nada.";
    }

    @Override
    public String goCloth() {
        return "¿Qué se puede hacer con mis telas?";
    }

    @Override
    public String goGift() {
        return "¿Qué va a envolver?";
    }

    @Override
    public String goneDelete() {
        return "Borrar (anotado por error)";
    }

    @Override
    public String goneNoPiece() {
        return "Ese trozo ya no existe; se gastó o se quitó.";
    }

    @Override
    public String goneTitle() {
        return "Ya no está";
    }

    @Override
    public String goneUndo() {
        return "Ambas cosas se pueden deshacer en la página de telas.";
    }

    @Override
    public String groupNote(String faces, String nap, String pieces) {
        return pieces + (faces.equals("RIGHT") ? " · R" : "") + (nap.equals("LENGTHWISE") ? " · pelo" : "");
    }

    @Override
    public String heardAbout(String about, String length, String width) {
        return about + "; " + width + " de ancho, " + length + " a lo largo del orillo";
    }

    @Override
    public String heardFabrics(int fabrics, String pieces) {
        return (fabrics == 1 ? "" + pieces + ", " + fabrics + " tela" : "" + pieces + ", " + fabrics + " telas");
    }

    @Override
    public String heardKnown(String about, String fabric) {
        return fabric + " ya está entre sus telas y se queda como está: " + about + ".";
    }

    @Override
    public String heardUnclear(String first, int n) {
        return (n == 1 ? "Una línea no está clara. " + first : "" + n + " líneas no están claras; la primera: " + first);
    }

    @Override
    public String heardWhat(String fabric, String size) {
        return size + ", " + fabric;
    }

    @Override
    public String heldAside(int n) {
        return (n == 0 ? "apartado" : "" + n + " apartados");
    }

    @Override
    public String heldFor(String cloth, int n) {
        return (n == 0 ? "para " + cloth : "" + n + " para " + cloth);
    }

    @Override
    public String heldMore(String before, String next) {
        return before + "; " + next;
    }

    @Override
    public String hue(String hue) {
        return (hue.equals("white") ? "blanco" : hue.equals("grey") ? "gris" : hue.equals("black") ? "negro" : hue.equals("pink") ? "rosa" : hue.equals("wine_red") ? "burdeos" : hue.equals("orange") ? "naranja" : hue.equals("brown") ? "marrón" : hue.equals("red") ? "rojo" : hue.equals("cream") ? "crema" : hue.equals("beige") ? "beis" : hue.equals("yellow") ? "amarillo" : hue.equals("olive_green") ? "verde oliva" : hue.equals("green") ? "verde" : hue.equals("yellow_green") ? "verde amarillento" : hue.equals("teal") ? "azul verdoso" : hue.equals("turquoise") ? "turquesa" : hue.equals("blue") ? "azul" : "morado");
    }

    @Override
    public String lineAdd() {
        return "Añadir";
    }

    @Override
    public String lineAsks() {
        return "Cuántos, de qué, de qué tamaño; también muchas líneas a la vez.";
    }

    @Override
    public String lineExample(String unit) {
        return (unit.equals("metric") ? "12 estampado verde 10 x 20" : "12 estampado verde 4 x 8");
    }

    @Override
    public String lineListening() {
        return "Escuchando; toque para parar";
    }

    @Override
    public String lineMany(String lines, String most) {
        return "Son " + lines + " líneas; se aceptan " + most + " a la vez. Un archivo CSV admite más.";
    }

    @Override
    public String lineMend() {
        return "Primero hay que corregir esto.";
    }

    @Override
    public String linePhotograph() {
        return "Fotografiarlas";
    }

    @Override
    public String lineSay() {
        return "Describir un trozo";
    }

    @Override
    public String lineSpeak() {
        return "Dictar";
    }

    @Override
    public String lineStill() {
        return "Estas líneas siguen en la casilla de abajo.";
    }

    @Override
    public String lineUnclear(String line, String why) {
        return "«" + line + "»: " + why + ".";
    }

    @Override
    public String lot(String fabric, int n, String numbers, String size) {
        return (n == 1 ? "" + fabric + ", " + size + ", número " + numbers : "" + n + ", " + fabric + ", " + size + ", números " + numbers);
    }

    @Override
    public String lotWashed(String fabric, int n, String numbers, String size, String washed) {
        return (n == 1 ? "" + fabric + ", " + size + ", " + washed + ", número " + numbers : "" + n + ", " + fabric + ", " + size + ", " + washed + ", números " + numbers);
    }

    @Override
    public String markClaimed() {
        return "reservado para un paño";
    }

    @Override
    public String markGreys() {
        return "de oscuro a claro";
    }

    @Override
    public String markKept() {
        return "guardado para luego";
    }

    @Override
    public String markNap() {
        return "pelo hacia arriba";
    }

    @Override
    public String markRight() {
        return "tiene derecho";
    }

    @Override
    public String moreAll() {
        return "Todas las telas";
    }

    @Override
    public String moreByFabric() {
        return "Por tela";
    }

    @Override
    public String moreFiles() {
        return "En campos y como archivo";
    }

    @Override
    public String moreFill() {
        return "Rellenar campos o traer un archivo";
    }

    @Override
    public String moreFind() {
        return "Buscar";
    }

    @Override
    public String moreLeast() {
        return "Al menos de este tamaño";
    }

    @Override
    public String moreLeastExample() {
        return "4 x 8";
    }

    @Override
    public String moreSave() {
        return "Guardar como CSV";
    }

    @Override
    public String moreText() {
        return "Tela o número";
    }

    @Override
    public String moreTitle() {
        return "Más: buscar, telas, archivos";
    }

    @Override
    public String photoBegun(String day, String pieces) {
        return day + ", por incorporar: " + pieces;
    }

    @Override
    public String photoDay() {
        return "d/M, HH:mm";
    }

    @Override
    public String photoNotRead(String day) {
        return day + ", aún sin leer";
    }

    @Override
    public String photoNothing(String day) {
        return day + ", no se leyó nada";
    }

    @Override
    public String pieceAlike(int n, String numbers) {
        return (n == 1 ? "Un trozo, número " + numbers : "" + n + " iguales, números " + numbers);
    }

    @Override
    public String pieceChange() {
        return "Cambiar";
    }

    @Override
    public String pieceTitle(String fabric, String size) {
        return size + ", " + fabric;
    }

    @Override
    public String pieceWay(String about) {
        return about + ". El largo va de arriba abajo en el dibujo, a lo largo del orillo.";
    }

    @Override
    public String pieces(int n) {
        return (n == 1 ? "" + n + " trozo" : "" + n + " trozos");
    }

    @Override
    public String piecesOf(String fabric, int n) {
        return (n == 1 ? "" + n + " trozo (" + fabric + ")" : "" + n + " trozos (" + fabric + ")");
    }

    @Override
    public String piecesSaid(String fabric, int n) {
        return (n == 1 ? "" + n + " trozo (" + fabric + ")" : "" + n + " trozos (" + fabric + ")");
    }

    @Override
    public String redo() {
        return "Rehacer";
    }

    @Override
    public String redoNothing() {
        return "No hay nada que rehacer.";
    }

    @Override
    public String redone(String deed) {
        return "Rehecho: " + deed + ".";
    }

    @Override
    public String save() {
        return "Guardar";
    }

    @Override
    public String splitAt(String unit) {
        return "A, " + unit;
    }

    @Override
    public String splitDivides() {
        return "Un corte recto que divide";
    }

    @Override
    public String splitLength(String length) {
        return "el largo, " + length;
    }

    @Override
    public String splitTitle() {
        return "Cortar en dos";
    }

    @Override
    public String splitWidth(String width) {
        return "el ancho, " + width;
    }

    @Override
    public String staleChoose() {
        return "Mientras tanto, estos trozos han cambiado en otra ventana. No se ha cambiado nada; mire otra vez y elija.";
    }

    @Override
    public String staleFabric() {
        return "Mientras tanto, esta tela ha cambiado en otra ventana. Aquí no se ha cambiado nada.";
    }

    @Override
    public String staleFabricNow(String about, String colour, String fabric, String pieces) {
        return fabric + ", " + colour + ", " + about + "; " + pieces + ".";
    }

    @Override
    public String staleGone() {
        return "Ya no están entre sus telas.";
    }

    @Override
    public String staleLast(String deed) {
        return "Mientras tanto, las telas han cambiado en otra ventana: el último cambio es ahora «" + deed + "». No se ha cambiado nada; mire otra vez.";
    }

    @Override
    public String staleNothing() {
        return "Mientras tanto, las telas han cambiado en otra ventana: ya no queda nada que deshacer. No se ha cambiado nada; mire otra vez.";
    }

    @Override
    public String staleNow(String pieces, String size) {
        return pieces + ", " + size + ".";
    }

    @Override
    public String staleNowWashed(String pieces, String size, String washed) {
        return pieces + ", " + size + ", " + washed + ".";
    }

    @Override
    public String stalePieces() {
        return "Mientras tanto, estos trozos han cambiado en otra ventana. Aquí no se ha cambiado nada.";
    }

    @Override
    public String summary(String area, int n) {
        return (n == 1 ? "" + n + " trozo, " + area : "" + n + " trozos, " + area);
    }

    @Override
    public String summarySome(String area, String found, int n) {
        return (n == 1 ? "" + found + " de " + n + " trozo, " + area : "" + found + " de " + n + " trozos, " + area);
    }

    @Override
    public String tableBefore() {
        return "Antes";
    }

    @Override
    public String tableChange(String fabric) {
        return "Cambiar la tela " + fabric;
    }

    @Override
    public String tableColour() {
        return "Color";
    }

    @Override
    public String tableColours() {
        return "Colores";
    }

    @Override
    public String tableDrawn() {
        return "Sus trozos, a escala";
    }

    @Override
    public String tableFarther() {
        return "Más lejos";
    }

    @Override
    public String tableGreys() {
        return "Claro y oscuro";
    }

    @Override
    public String tableKeep() {
        return "guardar";
    }

    @Override
    public String tableNearer() {
        return "Más cerca";
    }

    @Override
    public String tableNext() {
        return "Siguiente";
    }

    @Override
    public String tableNone() {
        return "No hay ningún trozo así.";
    }

    @Override
    public String tablePage(String page, String pages) {
        return "Página " + page + " de " + pages;
    }

    @Override
    public String tablePages() {
        return "Páginas de las telas";
    }

    @Override
    public String tableShowAll() {
        return "Mostrar todas las telas";
    }

    @Override
    public String tableShown() {
        return "Cómo se ve la mesa";
    }

    @Override
    public String tableTap() {
        return "Toque un trozo para elegirlo.";
    }

    @Override
    public String tableUnknown() {
        return "color aún sin saber: toque para elegir";
    }

    @Override
    public String title() {
        return "¿Qué tiene?";
    }

    @Override
    public String titleWays() {
        return "Campos y archivos";
    }

    @Override
    public String unchanged() {
        return "No se ha cambiado nada.";
    }

    @Override
    public String undo() {
        return "Deshacer";
    }

    @Override
    public String undoNothing() {
        return "No hay nada que deshacer.";
    }

    @Override
    public String undoWhat(String deed) {
        return "Deshacer: " + deed;
    }

    @Override
    public String undone(String deed) {
        return "Deshecho: " + deed + ".";
    }

    @Override
    public String washed(String washed) {
        return (washed.equals("YES") ? "lavado" : washed.equals("NO") ? "sin lavar" : "");
    }

    @Override
    public String waysAddFile() {
        return "Añadir el archivo";
    }

    @Override
    public String waysAlso(String unit) {
        return "También count, colour, faces (same o right), nap (any o lengthwise), washed (yes o no). Los tamaños sin unidad son " + (unit.equals("metric") ? "centímetros" : "pulgadas") + ". Si una línea está mal, no se añade nada.";
    }

    @Override
    public String waysColumns() {
        return "Un archivo con las columnas fabric, width, length";
    }

    @Override
    public String waysFields() {
        return "En campos";
    }

    @Override
    public String waysFile() {
        return "Como archivo CSV";
    }

    @Override
    public String waysHelp() {
        return "¿Qué puedo escribir en la línea de la mesa?";
    }

    @Override
    public String waysHelpSays(String unit) {
        return "En cualquier orden: cuántos, cómo la llama, ancho por largo, un color, «derecho» si una cara es la buena, «pelo» si no se debe girar, «lavado». El ancho cruza la tela y el largo sigue el orillo. " + (unit.equals("metric") ? "«12 estampado verde 10 x 20», «3 lino salvia 30 x 30 cm»." : "«12 estampado verde 4 x 8», «3 lino salvia 12 x 12 in».") + " Se pueden pegar muchas líneas a la vez.";
    }

    @Override
    public String wrongCount(String count) {
        return "«" + count + "» no es un número de trozos; escriba un número entero o déjelo en blanco para uno.";
    }

    @Override
    public String wrongHowMany(String n) {
        return "Hay " + n + "; diga cuántos, de 1 a " + n + ".";
    }

    @Override
    public String wrongLongName(String most) {
        return "El nombre es demasiado largo para una etiqueta; caben " + most + " letras.";
    }

    @Override
    public String wrongNoName() {
        return "La tela no tiene nombre; escriba cómo la llama.";
    }

    @Override
    public String wrongOutside(String whole) {
        return "El corte cae fuera del trozo; diga dónde está, entre 0 y " + whole + ".";
    }
}
