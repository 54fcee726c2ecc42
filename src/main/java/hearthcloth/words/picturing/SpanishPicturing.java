package hearthcloth.words.picturing;

/** The room of picturing in Spanish. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class SpanishPicturing implements PicturingWords {

    @Override
    public String added(String first, String last, int n) {
        return (n == 1 ? "Añadido " + n + " trozo, número " + first + "." : "Añadidos " + n + " trozos, números " + first + "–" + last + ".");
    }

    @Override
    public String another() {
        return "Desde una foto";
    }

    @Override
    public String askBefore() {
        return "Empezado antes";
    }

    @Override
    public String askChoose() {
        return "Elegir una foto";
    }

    @Override
    public String askHow() {
        return "Cómo colocar y fotografiar";
    }

    @Override
    public String askKinds() {
        return "JPEG o PNG, como lo hizo la cámara, hasta 80 MB. Se queda en este equipo.";
    }

    @Override
    public String askNoSize() {
        return "Falta el tamaño de la referencia; mídala y escriba ancho por alto.";
    }

    @Override
    public String askNone() {
        return "No se eligió ninguna foto; elija una o hágala ahora.";
    }

    @Override
    public String askNotWhole() {
        return "La foto no llegó entera; envíela otra vez.";
    }

    @Override
    public String askNow() {
        return "Hacer una foto ahora";
    }

    @Override
    public String askPhotograph(String when) {
        return "Foto: " + when;
    }

    @Override
    public String askPreview() {
        return "La foto elegida, en pequeño";
    }

    @Override
    public String askPrint() {
        return "Imprimir la hoja de medir";
    }

    @Override
    public String askPrintHow() {
        return "Imprímala al 100 %, sin ajustar a la página, y compruebe su línea con una regla.";
    }

    @Override
    public String askRead() {
        return "Leerla";
    }

    @Override
    public String askSend() {
        return "Enviar una foto";
    }

    @Override
    public String askSheet() {
        return "Lo más seguro es nuestra hoja de medir: sus marcas no se confunden con tela y muestran si está doblada.";
    }

    @Override
    public String back() {
        return "Volver a las telas";
    }

    @Override
    public String deleted() {
        return "La foto se ha borrado.";
    }

    @Override
    public String drawBack() {
        return "Quitar la última esquina";
    }

    @Override
    public String drawCloser() {
        return "Más cerca";
    }

    @Override
    public String drawCorner() {
        return "Esquina %1 de %2. Las flechas la mueven, más lejos con Mayús.";
    }

    @Override
    public String drawCross() {
        return "La cruz: Intro pone aquí una esquina.";
    }

    @Override
    public String drawFarther() {
        return "Más lejos";
    }

    @Override
    public String drawFew() {
        return "%d esquinas; siga alrededor.";
    }

    @Override
    public String drawFind() {
        return "Buscar su borde alrededor de aquí";
    }

    @Override
    public String drawHow() {
        return "Toque sus esquinas una tras otra, dando la vuelta; ciérrelo tocando otra vez la primera. Acérquese para acertar. O toque una vez en el centro y se busca su borde.";
    }

    @Override
    public String drawKeys() {
        return "Dos dedos o arrastrar mueven la foto. Con el teclado: las flechas mueven la cruz, más lejos con Mayús; Intro pone una esquina, Retroceso la quita, + y – acercan y alejan.";
    }

    @Override
    public String drawLeave() {
        return "Dejarlo";
    }

    @Override
    public String drawMeasure() {
        return "Cerrar y medir";
    }

    @Override
    public String drawMost() {
        return "%d esquinas, es el máximo. Ciérrelo ahora.";
    }

    @Override
    public String drawNoRim() {
        return "No se ve ningún borde alrededor de aquí; toque las esquinas una tras otra. No se añadió nada.";
    }

    @Override
    public String drawNone() {
        return "Aún ninguna esquina.";
    }

    @Override
    public String drawOne() {
        return "1 esquina; siga alrededor o, si es el centro, deje que se busque el borde.";
    }

    @Override
    public String drawPicture() {
        return "Su foto, para dibujar";
    }

    @Override
    public String drawSome() {
        return "%d esquinas; siga, o ciérrelo.";
    }

    @Override
    public String fabricAbout(String faces, String nap, String washed) {
        return (faces.equals("right") ? "tiene derecho" : "igual por los dos lados") + (nap.equals("yes") ? ", pelo a lo largo" : "") + (washed.equals("YES") ? ", lavada" : washed.equals("NO") ? ", sin lavar" : "");
    }

    @Override
    public String fabricFaces() {
        return "Caras";
    }

    @Override
    public String fabricKeep() {
        return "Guardar";
    }

    @Override
    public String fabricKnown() {
        return "Su lista tiene esta tela; su color, sus caras y su pelo siguen como están allí.";
    }

    @Override
    public String fabricLabel(String name) {
        return "Tela " + name;
    }

    @Override
    public String fabricName(String pieces) {
        return "Nombre, " + pieces;
    }

    @Override
    public String fabricNap() {
        return "Pelo";
    }

    @Override
    public String fabricNapAny() {
        return "ninguno, en cualquier sentido";
    }

    @Override
    public String fabricNapLong() {
        return "a lo largo";
    }

    @Override
    public String fabricNo() {
        return "sin lavar";
    }

    @Override
    public String fabricRight() {
        return "tiene derecho";
    }

    @Override
    public String fabricSame() {
        return "igual por los dos lados";
    }

    @Override
    public String fabricUnknown() {
        return "no se sabe";
    }

    @Override
    public String fabricWashed() {
        return "Lavada";
    }

    @Override
    public String fabricYes() {
        return "lavada";
    }

    @Override
    public String formCorners() {
        return "Faltan las esquinas de un trozo; póngalas en la foto.";
    }

    @Override
    public String formKind() {
        return "Este formulario es de otro tipo; cargue la página otra vez.";
    }

    @Override
    public String formNumber() {
        return "Falta el número de una esquina; cargue la página otra vez.";
    }

    @Override
    public String formPlace() {
        return "Falta un lugar de la foto; cargue la página otra vez.";
    }

    @Override
    public String goingDoing(String what) {
        return (what.equals("waiting") ? "esperando" : what.equals("opening") ? "abriendo la foto" : what.equals("ground") ? "mirando el fondo" : what.equals("sheet") ? "buscando la hoja" : what.equals("pieces") ? "buscando los trozos" : what.equals("measuring") ? "midiendo" : what.equals("laying") ? "colocando" : "hecho");
    }

    @Override
    public String goingLabel() {
        return "Lectura de la foto";
    }

    @Override
    public String goingLeave() {
        return "Puede dejar esta página; sigue leyendo y no se pierde nada.";
    }

    @Override
    public String goingLook() {
        return "Mirar otra vez";
    }

    @Override
    public String goingShare(String share, String what) {
        return share + " %, " + what + " …";
    }

    @Override
    public String goingStop() {
        return "Parar y quitarla";
    }

    @Override
    public String goingTitle() {
        return "Leyendo su foto";
    }

    @Override
    public String goingWaits(int n) {
        return (n == 1 ? "Se lee " + n + " foto antes que la suya; espera su turno." : "Se leen " + n + " fotos antes que la suya; espera su turno.");
    }

    @Override
    public String gone() {
        return "Esta foto se ha borrado; envíela otra vez.";
    }

    @Override
    public String goneElsewhere() {
        return "Esta foto se ha borrado en otra ventana.";
    }

    @Override
    public String hintBlurred() {
        return "Está borrosa. No se mueva, deje que la cámara enfoque los trozos y repítala.";
    }

    @Override
    public String hintDark() {
        return "Está muy oscura. Hágala con luz de día o con más lámparas, sin flash.";
    }

    @Override
    public String hintFine() {
        return "A primera vista, nada en contra.";
    }

    @Override
    public String hintNoSheet() {
        return "No se ve clara ninguna hoja blanca. ¿Está entera en la foto, sin tocar nada, sobre algo más oscuro?";
    }

    @Override
    public String hintSlant() {
        return "Está tomada de lado, más de 25°. Sostenga la cámara nivelada sobre el centro.";
    }

    @Override
    public String howAbove() {
        return "Desde arriba.";
    }

    @Override
    public String howAboveHow() {
        return "Sostenga la cámara nivelada sobre el centro, con todo en la foto. Lo mejor es luz de día de lado; sin flash.";
    }

    @Override
    public String howAbovePicture() {
        return "Un teléfono nivelado sobre el centro de los trozos.";
    }

    @Override
    public String howApart() {
        return "Separados.";
    }

    @Override
    public String howApartHow() {
        return "Coloque los trozos a un dedo de distancia, sobre un fondo liso del que destaquen.";
    }

    @Override
    public String howApartPicture() {
        return "Cinco trozos separados sobre un fondo liso.";
    }

    @Override
    public String howFlat() {
        return "Planos.";
    }

    @Override
    public String howFlatHow() {
        return "Planche dobleces y arrugas; ningún trozo encima de otro.";
    }

    @Override
    public String howFlatPicture() {
        return "De lado: un trozo está plano, otro está doblado y tachado.";
    }

    @Override
    public String howSheet() {
        return "La hoja plana y con peso.";
    }

    @Override
    public String howSheetHow() {
        return "Papel o una tarjeta entre ellos, entero, sin tocar nada. Si el papel se riza, ponga una moneda en cada esquina.";
    }

    @Override
    public String howSheetPicture() {
        return "Una hoja blanca está plana entre los trozos, con una moneda en cada esquina.";
    }

    @Override
    public String kept() {
        return "Guardado.";
    }

    @Override
    public String keyDoubt() {
        return "? mirar";
    }

    @Override
    public String keyIn() {
        return "✓ en la lista";
    }

    @Override
    public String keyLeft() {
        return "× fuera";
    }

    @Override
    public String keyMeasured() {
        return "medido";
    }

    @Override
    public String keyUsable() {
        return "lo que se puede usar";
    }

    @Override
    public String labelAdd(int n) {
        return "añadir " + (n == 1 ? "" + n + " trozo" : "" + n + " trozos") + " de una foto";
    }

    @Override
    public String labelAllRight() {
        return "todos los dudosos están bien";
    }

    @Override
    public String labelBring(String piece) {
        return "recuperar el trozo " + piece;
    }

    @Override
    public String labelCorner(String piece) {
        return "esquina del trozo " + piece;
    }

    @Override
    public String labelDraw(String piece) {
        return "dibujar el trozo " + piece;
    }

    @Override
    public String labelDrop(String piece) {
        return "dejar fuera el trozo " + piece;
    }

    @Override
    public String labelFabric(String name) {
        return "tela " + name;
    }

    @Override
    public String labelGrain(String piece) {
        return "hilo del trozo " + piece;
    }

    @Override
    public String labelLess(String piece) {
        return "esquina menos en el trozo " + piece;
    }

    @Override
    public String labelMore(String piece) {
        return "esquina más en el trozo " + piece;
    }

    @Override
    public String labelMove(String piece) {
        return "tela del trozo " + piece;
    }

    @Override
    public String labelName(String name) {
        return "nombre " + name;
    }

    @Override
    public String labelNoGrain(String piece) {
        return "sin hilo en el trozo " + piece;
    }

    @Override
    public String labelNotSure(String piece) {
        return "el trozo " + piece + " no es seguro";
    }

    @Override
    public String labelRight(String piece) {
        return "el trozo " + piece + " está bien";
    }

    @Override
    public String labelRim() {
        return "dejar fuera los del borde";
    }

    @Override
    public String labelSplit(String piece) {
        return "dividir el trozo " + piece;
    }

    @Override
    public String noPiece() {
        return "Ese trozo no está en esta foto.";
    }

    @Override
    public String notOpened() {
        return "Esta foto no se puede abrir.";
    }

    @Override
    public String notRead() {
        return "Esta foto aún no está leída.";
    }

    @Override
    public String nothingToTake() {
        return "No hay ningún trozo que tomar: cada uno está en la lista, fuera, o aún por mirar.";
    }

    @Override
    public String pieceBring() {
        return "Recuperarlo";
    }

    @Override
    public String pieceBringAbout(String piece) {
        return "Recuperar el trozo " + piece;
    }

    @Override
    public String pieceBy(String by, String grain) {
        return (by.equals("drawn") ? "Dibujado por usted" : by.equals("hand") ? "Medido por su contorno" : "Medido por su borde") + (grain.equals("yes") ? ", al hilo" : "") + ".";
    }

    @Override
    public String pieceClose() {
        return "Cerrar";
    }

    @Override
    public String pieceCloseAbout(String piece) {
        return "Cerrar el trozo " + piece;
    }

    @Override
    public String pieceCorner(String all, String n) {
        return "Esquina " + n + " de " + all + ". Las flechas la mueven, más lejos con Mayús.";
    }

    @Override
    public String pieceDrag() {
        return "Arrastre una esquina; o tóquela y después dónde va; o muévala con las flechas.";
    }

    @Override
    public String pieceEnd(String n) {
        return "Extremo " + n + " de la línea. Las flechas lo mueven, más lejos con Mayús.";
    }

    @Override
    public String pieceFabric() {
        return "Su tela";
    }

    @Override
    public String pieceGrain() {
        return "Marcar el hilo";
    }

    @Override
    public String pieceIsIn() {
        return "Está en la lista de telas. Deshágalo en esa página para corregirlo aquí.";
    }

    @Override
    public String pieceLeaveAbout(String piece) {
        return "No tomar el trozo " + piece + " en la lista";
    }

    @Override
    public String pieceLess(String n) {
        return "Quitar la esquina " + n;
    }

    @Override
    public String pieceLessAbout(String n) {
        return "Quitar la esquina " + n;
    }

    @Override
    public String pieceLine(String doing) {
        return (doing.equals("split") ? "Ponga la línea donde se juntan los dos trozos: arrastre sus extremos o toque dónde van." : "Ponga la línea por el hilo de la tela: arrastre sus extremos o toque dónde van.");
    }

    @Override
    public String pieceLineDone(String doing) {
        return (doing.equals("split") ? "Dividir aquí" : "El hilo va así");
    }

    @Override
    public String pieceMore() {
        return "Esquina aquí";
    }

    @Override
    public String pieceMoreAbout(String n) {
        return "Una esquina nueva en medio del lado " + n;
    }

    @Override
    public String pieceMove() {
        return "Moverlo ahí";
    }

    @Override
    public String pieceNoGrain() {
        return "El hilo da igual";
    }

    @Override
    public String pieceNotSure() {
        return "Al final no es seguro";
    }

    @Override
    public String pieceOwn() {
        return "una tela aparte";
    }

    @Override
    public String piecePicture(String piece) {
        return "Trozo " + piece + ", de cerca";
    }

    @Override
    public String pieceSides() {
        return "Lados y esquinas";
    }

    @Override
    public String pieceSplit() {
        return "Dividir en dos";
    }

    @Override
    public String pieceSquare(String degrees, String one, String same, String two) {
        return "Sus diagonales miden " + one + " y " + two + ", " + (same.equals("yes") ? "iguales hasta donde muestra la foto" : "así que no está a escuadra") + "; sus esquinas son rectas a " + degrees + "°.";
    }

    @Override
    public String pieceStraight() {
        return "Su foto como vista desde arriba";
    }

    @Override
    public String pieceTitle(String piece) {
        return "Trozo " + piece;
    }

    @Override
    public String pieces(int n) {
        return (n == 1 ? "" + n + " trozo" : "" + n + " trozos");
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
    public String redone(String what) {
        return "Rehecho: " + what + ".";
    }

    @Override
    public String refusedAgain() {
        return "Empezar otra vez con las esquinas";
    }

    @Override
    public String refusedAnew() {
        return "O hacerla de nuevo";
    }

    @Override
    public String refusedAway() {
        return "Quitar esta";
    }

    @Override
    public String refusedFailed() {
        return "Esta foto no se puede leer; algo salió mal. Repítala, o guárdela otra vez como JPEG y envíela.";
    }

    @Override
    public String refusedHundredths() {
        return "A qué distancia está cada esquina, de lado y hacia abajo, en centésimas de la foto: 21 30, 44 31, 43 62, 20 60";
    }

    @Override
    public String refusedMark() {
        return "Marcar estas esquinas";
    }

    @Override
    public String refusedNoPieces() {
        return "Se encontró la referencia, pero ningún trozo de tela al lado. Separe los trozos sobre un fondo liso del que destaquen y repita la foto.";
    }

    @Override
    public String refusedNoTap() {
        return "Sin tocar";
    }

    @Override
    public String refusedOnce() {
        return "Leerla otra vez";
    }

    @Override
    public String refusedOther() {
        return "¿Era otra referencia?";
    }

    @Override
    public String refusedPicture(String reference) {
        return "La foto: pulse en una esquina (" + reference + ")";
    }

    @Override
    public String refusedRead() {
        return "Leerla con estas esquinas";
    }

    @Override
    public String refusedReference(String sheet) {
        return (sheet.equals("MEASURING") ? "la hoja de medir" : sheet.equals("A4") ? "la hoja A4" : sheet.equals("LETTER") ? "la hoja carta" : sheet.equals("CARD") ? "la tarjeta" : "el rectángulo");
    }

    @Override
    public String refusedTake() {
        return "Hacer otra foto";
    }

    @Override
    public String refusedTap(String n) {
        return (n.equals("none") ? "Toque una esquina. Basta cerca: se toma el borde más próximo." : n.equals("some") ? "Toque la siguiente esquina, dando la vuelta." : n.equals("three") ? "Toque la última esquina." : "Las cuatro están marcadas.");
    }

    @Override
    public String refusedTitle() {
        return "No se pudo leer nada";
    }

    @Override
    public String refusedTooMuch() {
        return "Esta foto es demasiado grande para la memoria de este equipo. Ponga la cámara en menos megapíxeles, con 12 sobra, y repítala.";
    }

    @Override
    public String refusedWhere(String reference) {
        return "¿Está ahí: " + reference + "? Muestre dónde";
    }

    @Override
    public String scriptChosen() {
        return "Elegida: %s. Ahora pulse «Leerla».";
    }

    @Override
    public String scriptLarge() {
        return "%s pasa de 80 MB. Envíela como la hizo la cámara, o una más pequeña.";
    }

    @Override
    public String scriptNone() {
        return "Aún no hay foto elegida.";
    }

    @Override
    public String scriptSending() {
        return "Enviando la foto …";
    }

    @Override
    public String sheetA4() {
        return "Papel A4";
    }

    @Override
    public String sheetCard() {
        return "Una tarjeta de banco o de biblioteca";
    }

    @Override
    public String sheetLetter() {
        return "Papel carta";
    }

    @Override
    public String sheetLine() {
        return "Largo de su línea fina, si no son 20 cm (7 7/8 in)";
    }

    @Override
    public String sheetMeasuring() {
        return "La hoja de medir";
    }

    @Override
    public String sheetSize() {
        return "Un rectángulo de";
    }

    @Override
    public String sheetSizeExample(String unit) {
        return (unit.equals("in") ? "12 x 18" : "30 x 45");
    }

    @Override
    public String sheetSizeHow(String unit) {
        return "Ancho por alto, " + unit;
    }

    @Override
    public String sheetWhich() {
        return "¿Qué hay entre los trozos?";
    }

    @Override
    public String sortAllMine(int n) {
        return (n == 1 ? "" + n + " es mío y está bien medido" : "Los " + n + " son míos y están bien medidos");
    }

    @Override
    public String sortAllMineAbout() {
        return "Todos los trozos con duda son míos y están bien medidos";
    }

    @Override
    public String sortAway() {
        return "Quitar la foto";
    }

    @Override
    public String sortAwayAsk() {
        return "¿Quitar esta foto? Lo que está en la lista de telas se queda; lo demás habría que enviarlo otra vez.";
    }

    @Override
    public String sortFabrics(int n) {
        return (n == 1 ? "Una tela" : "" + n + " telas");
    }

    @Override
    public String sortFabricsHow() {
        return "Los trozos parecidos van juntos; nombre uno y se nombran todos. Un nombre que ya está en su lista se une a esa tela.";
    }

    @Override
    public String sortFirst() {
        return "Mire primero estos";
    }

    @Override
    public String sortLead() {
        return "Sobre su foto hay contornos y números. Toque un trozo para verlo de cerca; corrija lo que esté mal, nombre cada tela y tómelo todo.";
    }

    @Override
    public String sortLeave() {
        return "Dejarlo fuera";
    }

    @Override
    public String sortLeaveAbout(String piece) {
        return "Dejar fuera el trozo " + piece;
    }

    @Override
    public String sortLook() {
        return "Ver de cerca";
    }

    @Override
    public String sortLookAt(String piece) {
        return "Ver de cerca el trozo " + piece;
    }

    @Override
    public String sortMaybe(String in, String piece, String there) {
        return piece + " puede ser el trozo " + there + " de otra foto" + (in.equals("yes") ? ", que está en la lista de telas" : "") + ".";
    }

    @Override
    public String sortMaybeLook() {
        return "La otra foto";
    }

    @Override
    public String sortMissed() {
        return "Dibujar un trozo que falta";
    }

    @Override
    public String sortRight() {
        return "Está bien medido";
    }

    @Override
    public String sortRightAbout(String piece) {
        return "El trozo " + piece + " está bien medido";
    }

    @Override
    public String sortRim(int n) {
        return (n == 1 ? "Dejar fuera el del borde" : "Dejar fuera los " + n + " del borde");
    }

    @Override
    public String sortRimAbout() {
        return "Dejar fuera todos los trozos con duda que se salen de la foto";
    }

    @Override
    public String sortSame() {
        return "El mismo trozo: dejarlo fuera aquí";
    }

    @Override
    public String sortSameAbout(String piece) {
        return "El trozo " + piece + " es el mismo que en la otra foto: dejarlo fuera aquí";
    }

    @Override
    public String sortStay(int n) {
        return (n == 1 ? "" + n + " se queda hasta que lo haya mirado." : "" + n + " se quedan hasta que los haya mirado.");
    }

    @Override
    public String sortTake(int n) {
        return (n == 1 ? "Tomar " + n + " trozo" : "Tomar " + n + " trozos");
    }

    @Override
    public String sortTitle() {
        return "¿Está bien leído?";
    }

    @Override
    public String sortTold(String off, String size) {
        return size + ", " + off + ".";
    }

    @Override
    public String sortTwice() {
        return "¿Visto también en otra foto?";
    }

    @Override
    public String sortTwiceHow() {
        return "Tamaño, color y dibujo se parecen. Nada se une sin preguntar: deje fuera el que sea el mismo trozo; si solo se parecen, que entren los dos.";
    }

    @Override
    public String sortWhole(int n) {
        return (n == 1 ? "Su foto con el contorno y el número de " + n + " trozo; la lista lo describe." : "Su foto con el contorno y el número de " + n + " trozos; la lista los describe.");
    }

    @Override
    public String stale() {
        return "Esta foto se cambió entretanto en otra ventana. Aquí no cambió nada; cargue la página otra vez.";
    }

    @Override
    public String staleTaking() {
        return "Esta foto se cambió entretanto en otra ventana. No se tomó nada; cargue la página otra vez.";
    }

    @Override
    public String state(String state) {
        return (state.equals("LOOK") ? "mirar" : state.equals("SMALL") ? "demasiado pequeño para su regla" : state.equals("DROPPED") ? "fuera" : state.equals("IN") ? "en la lista" : "");
    }

    @Override
    public String stays(int n, String pieces) {
        return (n == 1 ? "El trozo " + pieces + " se queda en la foto hasta que lo haya mirado." : "Los trozos " + pieces + " se quedan en la foto hasta que los haya mirado.");
    }

    @Override
    public String taken(String piece) {
        return "El trozo " + piece + " ya está en la lista de telas; deshágalo allí primero, o cámbielo allí.";
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
    public String undone(String what) {
        return "Deshecho: " + what + ".";
    }
}
