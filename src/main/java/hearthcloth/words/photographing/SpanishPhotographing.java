package hearthcloth.words.photographing;

/** The room of photographing in Spanish. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class SpanishPhotographing implements PhotographingWords {

    @Override
    public String absent(String sheet) {
        return "No se encontró " + sheet + ".";
    }

    @Override
    public String again(String how, String sheet) {
        return (how.equals("FREE") ? "Repita la foto con " + sheet + " entera dentro y libre todo alrededor." : how.equals("FLAT") ? "Ponga " + sheet + " plana, sin tocar nada, y repita la foto." : "Ponga " + sheet + " plana, sin tocar nada, y repita la foto más de cerca.");
    }

    @Override
    public String doubtCutOff() {
        return "Se sale de la imagen; métalo dentro o aléjese y repita la foto.";
    }

    @Override
    public String doubtEdge() {
        return "Llega al borde de la imagen; lo que sigue no se mide. Si continúa, repita la foto.";
    }

    @Override
    public String doubtFar() {
        return "Está lejos de la hoja, donde la imagen mide con menos seguridad; acérquelo.";
    }

    @Override
    public String doubtFrayed(String mm) {
        return "Los bordes están deshilachados unos " + mm + " mm; se mide sin los hilos. Recórtelo antes para estar seguro.";
    }

    @Override
    public String doubtGround() {
        return "Apenas se distingue de lo que hay debajo; póngalo sobre algo más claro o más oscuro.";
    }

    @Override
    public String doubtOver(String piece) {
        return "Está sobre el trozo " + piece + "; deje fuera uno de los dos, o la misma tela entrará dos veces.";
    }

    @Override
    public String doubtRim() {
        return "Parte del borde no se ve; compruebe el contorno o póngalo sobre otro fondo.";
    }

    @Override
    public String doubtRough() {
        return "Las esquinas se pusieron a ojo; mire de cerca y arrastre cada una a su sitio.";
    }

    @Override
    public String doubtSheetAlike(String sheet) {
        return "Tan de lado, A4 y Letter se parecen; asegúrese de que es " + sheet + ", o haga la foto desde arriba.";
    }

    @Override
    public String doubtSheetFaint(String sheet) {
        return sheet + " apenas se distingue de lo que hay debajo, y de ella dependen todas las medidas. Compruebe su contorno en la imagen, o póngala sobre un fondo más oscuro o con más color y repita la foto.";
    }

    @Override
    public String doubtSheetSkew(String share, String sheet) {
        return sheet + " parece un " + share + " % demasiado larga o corta: puede estar tapada en parte, no estar plana o ser muy pequeña en la imagen, y de ella dependen todas las medidas. Póngala plana y despejada, y repita la foto de más cerca.";
    }

    @Override
    public String doubtSheetTapped(String share, String sheet) {
        return sheet + " que usted tocó parece un " + share + " % demasiado larga o corta: una esquina puede estar al lado, o no estar plana. De ella dependen todas las medidas.";
    }

    @Override
    public String doubtSheetUnseen(String sheet, int sides) {
        return (sides == 1 ? "Un lado no se ve" : "Varios lados no se ven") + " (" + sheet + "); se toma donde usted tocó, y de ello dependen todas las medidas.";
    }

    @Override
    public String doubtSheetsApart(String share) {
        return "Las hojas de la imagen no concuerdan: según una, todo es un " + share + " % más grande que según otra. Póngalas planas y despejadas, o deje solo una, y tome la foto otra vez.";
    }

    @Override
    public String doubtSides() {
        return "Los lados no se ven bien; compruebe el contorno.";
    }

    @Override
    public String doubtTwo() {
        return "Quizá sean dos trozos que se tocan o se solapan; sepárelos o divídalo aquí.";
    }

    @Override
    public String doubtUneven() {
        return "El borde es irregular; compruebe el contorno.";
    }

    @Override
    public String goneFabric() {
        return "Esa tela ya no está en esta foto.";
    }

    @Override
    public String gonePiece(String piece) {
        return "Ya no hay trozo " + piece + " en esta foto.";
    }

    @Override
    public String kept(String why) {
        return (why.equals("LARGE") ? "Esta imagen pasa de 20 MB; redúzcala y vuelva a intentarlo." : why.equals("DAMAGED") ? "Esta imagen está dañada; expórtela de nuevo como PNG o JPEG." : why.equals("KIND") ? "No es una imagen PNG o JPEG; expórtela en uno de esos." : "Esta imagen pasa de 50 megapíxeles; redúzcala y vuelva a intentarlo.");
    }

    @Override
    public String noMarks() {
        return "No se encontró la hoja de medir: se ven menos de tres de sus marcas cuadradas. Póngala plana y descubierta entre los trozos, y haga la foto más de cerca, nítida y desde arriba.";
    }

    @Override
    public String noRival(String sheet) {
        return "Dos cosas de la imagen podrían ser " + sheet + ": una tiene su forma, y otra es igual de blanca pero está doblada, tapada, en sombra o cortada. Toque las cuatro esquinas de la buena, o quite la otra y repita la foto.";
    }

    @Override
    public String noRound(String sheet) {
        return "Las cuatro esquinas tocadas no rodean una forma. Tóquelas otra vez, una tras otra alrededor: " + sheet + ".";
    }

    @Override
    public String noShadow(String sheet) {
        return "Dos cosas de la imagen podrían ser " + sheet + ": la mayor es igual de blanca, pero la cruza el borde de una sombra. Quite la otra, o ponga la hoja toda a la luz o toda a la sombra, y repita la foto.";
    }

    @Override
    public String noShare(String share, String sheet) {
        return "Lo que hay entre las cuatro esquinas es un " + share + " % demasiado largo o corto para ser " + sheet + ". Diga qué es, o toque otra vez las esquinas.";
    }

    @Override
    public String noSizes(String sheet) {
        return "Dos cosas de la imagen podrían ser " + sheet + ", y no son del mismo tamaño. Quite el trozo que tiene esa forma y repita la foto.";
    }

    @Override
    public String noTwin(String sheet, String twin) {
        return "Lo que hay ahí parece " + twin + ", no " + sheet + ". Elija " + twin + ", o ponga " + sheet + " y repita la foto.";
    }

    @Override
    public String notePicture(String numbers) {
        return "en la foto: " + numbers;
    }

    @Override
    public String outlineCorner() {
        return "Este trozo ya no tiene esa esquina.";
    }

    @Override
    public String outlineFault(String fault, String most) {
        return (fault.equals("FEW") ? "Un trozo tiene tres esquinas o más; ponga otra." : fault.equals("OUTSIDE") ? "Una esquina está fuera de la imagen; deshágala y póngala sobre la foto." : fault.equals("CROSSING") ? "Dos de sus lados se cruzan; deshaga las últimas esquinas y póngalas una tras otra alrededor del trozo." : fault.equals("SMALL") ? "De ahí no se puede cortar nada de 1 cm por 1 cm; un trozo es mayor." : "Un trozo se dibuja con " + most + " esquinas como mucho; deshaga algunas y añada más después en sus lados.") + " No se añadió nada.";
    }

    @Override
    public String outlineGrain() {
        return "La línea es demasiado corta para indicar una dirección. No se cambió nada.";
    }

    @Override
    public String outlineNone() {
        return "No quedaría contorno; un trozo tiene tres esquinas o más, ninguna al otro lado de su borde. No se cambió nada.";
    }

    @Override
    public String outlineSplit(String piece) {
        return "La línea no parte en dos el trozo " + piece + "; trácela de lado a lado. No se cambió nada.";
    }

    @Override
    public String pictureDamaged() {
        return "La imagen está dañada; guárdela de nuevo como JPEG y vuelva a intentarlo.";
    }

    @Override
    public String pictureHeic() {
        return "Es una foto HEIC (o AVIF), que aquí no se lee. Envíe un JPEG: en los ajustes de la cámara elija JPEG o el formato más compatible y repita la foto, o ábrala y guárdela o compártala como JPEG.";
    }

    @Override
    public String pictureKind() {
        return "No es una foto en JPEG o PNG; envíe una de esas.";
    }

    @Override
    public String pictureLarge() {
        return "El archivo pasa de 80 MB; envíe la foto tal como la tomó el teléfono.";
    }

    @Override
    public String picturePixels(String height, String mega, String width) {
        return "La imagen tiene " + width + " × " + height + " píxeles (" + mega + " megapíxeles); aquí se leen 50 como mucho. Envíe una más pequeña.";
    }

    @Override
    public String pictureScans() {
        return "Este JPEG está hecho como no lo hace ninguna cámara; expórtelo de nuevo y vuelva a intentarlo.";
    }

    @Override
    public String pictureSmall(String height, String width) {
        return "La imagen solo tiene " + width + " × " + height + " píxeles; para medir hacen falta 2 megapíxeles o más. Envíela en su tamaño original.";
    }

    @Override
    public String pictureUnread() {
        return "La imagen está dañada o es de un tipo que aquí no se lee; guárdela de nuevo como JPEG y vuelva a intentarlo.";
    }

    @Override
    public String referenceCorner(String corner) {
        return "«" + corner + "» no es una esquina; escriba cuánto a lo ancho y cuánto hacia abajo, como parte de la imagen, por ejemplo 0.21 0.30.";
    }

    @Override
    public String referenceCorners(String count) {
        return "Una hoja tiene cuatro esquinas, y se dieron " + count + "; dé las cuatro en orden, separadas por comas.";
    }

    @Override
    public String referenceLine() {
        return "La línea de la hoja de medir debe medir unos 20 cm (7 7/8 in); mida otra vez la línea larga y fina entre sus dos trazos.";
    }

    @Override
    public String referenceSmall(String size) {
        return "Una referencia de " + size + " es demasiado pequeña para medir; use una de 2 cm o más.";
    }

    @Override
    public String seenCut(String where, String white, String why) {
        return (where.equals("MIDDLE") ? "En el centro" : where.equals("UPPER_LEFT") ? "Arriba a la izquierda" : where.equals("UPPER") ? "Arriba" : where.equals("UPPER_RIGHT") ? "Arriba a la derecha" : where.equals("LEFT") ? "A la izquierda" : where.equals("RIGHT") ? "A la derecha" : where.equals("LOWER_LEFT") ? "Abajo a la izquierda" : where.equals("LOWER") ? "Abajo" : "Abajo a la derecha") + " de la imagen hay algo " + (white.equals("yes") ? "blanco" : "con cuatro esquinas") + ", pero " + (why.equals("CUT") ? "se sale de la imagen, o toca algo que se sale" : why.equals("RIM") ? "su borde no son cuatro lados rectos: algo lo toca o está encima, o está doblado" : "es demasiado pequeño o borroso para medir con ello") + ".";
    }

    @Override
    public String seenNothing(String white) {
        return "Nada " + (white.equals("yes") ? "blanco con cuatro lados rectos" : "con cuatro lados rectos") + " resalta sobre el fondo. Póngala plana entre los trozos, entera en la imagen, sin tocar nada, y haga la foto desde arriba.";
    }

    @Override
    public String seenSkew(String share, String sheet, String where, String white) {
        return (where.equals("MIDDLE") ? "En el centro" : where.equals("UPPER_LEFT") ? "Arriba a la izquierda" : where.equals("UPPER") ? "Arriba" : where.equals("UPPER_RIGHT") ? "Arriba a la derecha" : where.equals("LEFT") ? "A la izquierda" : where.equals("RIGHT") ? "A la derecha" : where.equals("LOWER_LEFT") ? "Abajo a la izquierda" : where.equals("LOWER") ? "Abajo" : "Abajo a la derecha") + " de la imagen hay algo " + (white.equals("yes") ? "blanco" : "con cuatro esquinas") + ", pero sus proporciones se apartan un " + share + " % (" + sheet + "). Si es eso, está doblado o tapado en parte: póngalo plano, sin tocar nada, y repita la foto; si no, diga qué es.";
    }

    @Override
    public String seenWhite(String sheet) {
        return "Lo que llena casi toda la imagen es claro y casi sin color: o " + sheet + " llena la imagen, o está sobre algo igual de blanco. Póngala sobre algo más oscuro o con más color, con los trozos alrededor, sin tocar nada, y repita la foto.";
    }

    @Override
    public String sheet(String sheet) {
        return (sheet.equals("MEASURING") ? "la hoja de medir" : sheet.equals("A4") ? "la hoja A4" : sheet.equals("LETTER") ? "la hoja Letter" : sheet.equals("CARD") ? "la tarjeta" : "la forma medida");
    }
}
