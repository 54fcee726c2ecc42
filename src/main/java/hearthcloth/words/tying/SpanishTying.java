package hearthcloth.words.tying;

/** The room of tying in Spanish. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class SpanishTying implements TyingWords {

    @Override
    public String booksClosed() {
        return "Cerrar un libro sobre el otro, de modo que el hueco sea el lomo.";
    }

    @Override
    public String booksEnds() {
        return "Llevar la esquina izquierda y la derecha sobre los libros. Cruzarlas bien apretadas en el hueco.";
    }

    @Override
    public String booksLaid() {
        return "Extender el paño en rombo. Poner un libro cerca y otro lejos. Dejar entre ellos un hueco tan ancho como el grueso de los dos.";
    }

    @Override
    public String booksTied() {
        return "Retorcer las dos puntas. Llevarlas de vuelta a lo largo del lomo y atarlas.";
    }

    @Override
    public String booksWound() {
        return "Doblar la esquina cercana sobre el libro cercano y la lejana sobre el otro.";
    }

    @Override
    public String bottleCrossed() {
        return "Recoger la esquina izquierda y la derecha. Pasarlas alrededor de la botella y cruzarlas por detrás.";
    }

    @Override
    public String bottleHandle() {
        return "Para hacer un asa, deshacer una mitad del nudo de arriba. Retorcer las dos puntas y atarlas entre sí.";
    }

    @Override
    public String bottleLaid() {
        return "Extender el paño en rombo. Poner la botella de pie en el centro.";
    }

    @Override
    public String bottlePair() {
        return "Levantar la esquina cercana y la lejana. Atarlas arriba con un nudo llano, junto a la boca.";
    }

    @Override
    public String bottleTied() {
        return "Traerlas delante y atarlas ahí, bien ajustadas a la botella.";
    }

    @Override
    public String bottlesLaid() {
        return "Extender el paño en rombo. Acostar las dos botellas atravesadas, base con base, a un puño de distancia.";
    }

    @Override
    public String bottlesStood() {
        return "Meter la esquina lejana en el hueco. Poner de pie las dos botellas, de modo que la tela se doble entre las bases.";
    }

    @Override
    public String bottlesTied() {
        return "Atar las dos puntas sobre las botellas con un nudo llano.";
    }

    @Override
    public String bottlesWound() {
        return "Llevar la esquina cercana sobre las botellas. Enrollarlas hacia delante hasta la esquina lejana.";
    }

    @Override
    public String careBottle() {
        return "Probar primero el nudo sobre una mesa. Hasta entonces, llevar la botella con una mano debajo.";
    }

    @Override
    public String careChildren() {
        return "Mantener las puntas largas y los lazos lejos de niños pequeños y de cunas: un paño anudado puede apretarse alrededor del cuello.";
    }

    @Override
    public String careFlames() {
        return "Mantener un regalo envuelto lejos de velas, cocinas y lámparas. Las puntas sueltas arden primero.";
    }

    @Override
    public String careFood() {
        return "Poner antes los alimentos en su caja o en papel. Lavar el paño antes de que toque alimentos.";
    }

    @Override
    public String careSpills() {
        return "No usarlo para nada que pueda derramarse: un rollo va tumbado.";
    }

    @Override
    public String corner(String corner) {
        return (corner.equals("RIGHT") ? "la esquina derecha" : corner.equals("FAR") ? "la esquina lejana" : corner.equals("LEFT") ? "la esquina izquierda" : corner.equals("NEAR") ? "la esquina cercana" : corner.equals("FAR_RIGHT") ? "la esquina lejana derecha" : corner.equals("FAR_LEFT") ? "la esquina lejana izquierda" : corner.equals("NEAR_LEFT") ? "la esquina cercana izquierda" : corner.equals("NEAR_RIGHT") ? "la esquina cercana derecha" : "el paño");
    }

    @Override
    public String diamond() {
        return "Extender el paño en rombo, con una esquina hacia usted y la cara que se quiere mostrar debajo. Poner el regalo en el centro, con su lado largo de izquierda a derecha.";
    }

    @Override
    public String diamondRoll() {
        return "Extender el paño en rombo. Poner el rollo atravesado, de izquierda a derecha.";
    }

    @Override
    public String doubt(String end, String large, String least, String most, String small, String usual) {
        return "Lo incierto es el nudo: la tela fina gasta menos de cada esquina y la gruesa más. Si el nudo y su punta gastan " + least + " de cada esquina, basta un cuadrado de " + small + "; si gastan " + most + ", hacen falta " + large + ". Este plan prevé " + usual + ", adecuado para algodón ligero con puntas de unos " + end + ".";
    }

    @Override
    public String edgeFlaps() {
        return "Alisar los bordes del paño alrededor de la parte de arriba, para que las solapas la cubran.";
    }

    @Override
    public String edgeLaid() {
        return "Extender el paño recto delante de usted, con la cara que se quiere mostrar debajo. Poner el regalo en el centro, con sus bordes paralelos a los del paño.";
    }

    @Override
    public String edgePair() {
        return "Levantar dos esquinas opuestas por las aristas del regalo. Atarlas sobre el centro.";
    }

    @Override
    public String edgeTied() {
        return "Atar las otras dos esquinas sobre el primer nudo.";
    }

    @Override
    public String errandFar() {
        return "Llevar la esquina lejana por encima y doblar su punta hacia dentro.";
    }

    @Override
    public String errandHidden() {
        return "Para ocultar el nudo, sacar de debajo la punta de la esquina lejana y ponerla sobre el nudo.";
    }

    @Override
    public String errandNear() {
        return "Llevar la esquina cercana sobre el regalo. Meter su punta debajo, en el borde lejano.";
    }

    @Override
    public String errandSides() {
        return "Levantar la esquina izquierda y la derecha y alisar los lados hacia dentro.";
    }

    @Override
    public String errandTied() {
        return "Atarlas arriba con un solo nudo llano.";
    }

    @Override
    public String fitJust(String gift, String tie) {
        return "Este paño tiene el tamaño justo para " + gift + " (" + tie + ").";
    }

    @Override
    public String fitJustKnotted(String gift, String tail, String tie) {
        return "Este paño tiene el tamaño justo para " + gift + " (" + tie + "). Quedan " + tail + " en cada esquina anudada para el nudo y su punta.";
    }

    @Override
    public String fitNearly(String gift) {
        return "Sí sirve para " + gift + ".";
    }

    @Override
    public String fitSewnSmaller(String spare) {
        return "Cosido " + spare + " más pequeño, todavía serviría.";
    }

    @Override
    public String fitShorter(String gift, String less, String tail, String tie, String usual) {
        return "Este paño es " + less + " más pequeño de lo que debería para " + gift + " (" + tie + "). Aun así se puede atar: quedan " + tail + " en cada esquina anudada para el nudo y su punta, en lugar de " + usual + ".";
    }

    @Override
    public String fitTies(String gift, String reason, String spare, String tie) {
        return "Este paño sirve para atar " + gift + " (" + tie + "). Sobran " + spare + " para " + reason + ".";
    }

    @Override
    public String fitTooSmall(String corner, String gift, String lack, String reason, String size, String tie) {
        return "Este paño es demasiado pequeño para " + gift + " (" + tie + "): faltan " + lack + " para " + reason + " (" + corner + "). Un paño de " + size + " es suficiente.";
    }

    @Override
    public String fitUsualEnds(String gift) {
        return "Con las puntas habituales sirve para " + gift + ".";
    }

    @Override
    public String fitWraps(String gift, String reason, String spare, String tie) {
        return "Este paño sirve para envolver " + gift + " (" + tie + "). Sobran " + spare + " para " + reason + ".";
    }

    @Override
    public String flatFar() {
        return "Llevar la esquina lejana sobre todo. Meter su punta por el borde cercano.";
    }

    @Override
    public String flatNear() {
        return "Llevar la esquina cercana sobre el regalo. Donde sobresalga la punta, doblarla hacia abajo.";
    }

    @Override
    public String flatSides() {
        return "Llevar encima el lado izquierdo y después el derecho. Alisar cada uno por el borde del regalo.";
    }

    @Override
    public String fourCornerNearAndFar() {
        return "Llevar la esquina cercana y la lejana sobre el centro. Atarlas con un nudo llano, bien ajustado al regalo.";
    }

    @Override
    public String fourCornerSides() {
        return "Levantar rectas la esquina izquierda y la derecha. Doblar hacia dentro, planas contra los lados, las partes que sobresalen.";
    }

    @Override
    public String fourCornerTied() {
        return "Atar la esquina izquierda y la derecha sobre el primer nudo. Extender las cuatro puntas.";
    }

    @Override
    public String knotFirst() {
        return "Poner la punta izquierda sobre la derecha. Pasarla por detrás y hacia arriba. Es la mitad del nudo.";
    }

    @Override
    public String knotPull() {
        return "Tirar de las dos puntas. Un nudo llano queda plano, con las puntas en la línea del tirón. Si las puntas quedan cruzadas, es un nudo de abuela, que se suelta. Deshacer la segunda mitad y cruzarla al revés.";
    }

    @Override
    public String knotSecond() {
        return "Poner la misma punta, ahora a la derecha, otra vez sobre la otra y pasarla por el lazo.";
    }

    @Override
    public String reason(String reason) {
        return (reason.equals("KNOT") ? "el nudo y sus puntas" : reason.equals("COVER") ? "cubrir el regalo" : reason.equals("TUCK") ? "meter la última solapa" : "solapar los lados");
    }

    @Override
    public String rollCrossed() {
        return "Cruzarlos ahí, para que baje uno por cada lado.";
    }

    @Override
    public String rollEnds() {
        return "Doblar los lados sobre los dos extremos del rollo. Llevarlos a lo largo del rollo hasta el centro.";
    }

    @Override
    public String rollTied() {
        return "Dar la vuelta al rollo. Atarlos por el otro lado con un nudo llano.";
    }

    @Override
    public String rollWound() {
        return "Llevar la esquina cercana sobre el rollo. Enrollarlo hacia delante hasta la esquina lejana.";
    }

    @Override
    public String roundHandle() {
        return "Para hacer un asa, pasar el segundo nudo por debajo del primero. Ajustarlo.";
    }

    @Override
    public String roundLaid() {
        return "Extender el paño plano. Poner la bola en el centro.";
    }

    @Override
    public String roundPair() {
        return "Atar la esquina cercana con la derecha por encima de la bola. Dejar puntas bastante largas para un lazo.";
    }

    @Override
    public String roundTied() {
        return "Atar la esquina lejana con la izquierda.";
    }

    @Override
    public String ruleMore(String more, String rule, String size, String source) {
        return "La regla habitual (" + rule + ") da " + size + " (" + source + "). Son " + more + " más de lo que hace falta aquí.";
    }

    @Override
    public String ruleSmall(String gift, String less, String rule, String size, String source) {
        return "La regla habitual (" + rule + ") da " + size + " (" + source + "). Son " + less + " de menos para " + gift + ".";
    }

    @Override
    public String ruleSmallForTall(String gift, String less, String rule, String size, String source) {
        return "La regla habitual (" + rule + ") da " + size + " (" + source + "). Son " + less + " de menos para " + gift + ", por ser alto el regalo.";
    }

    @Override
    public String ruleWords(String rule) {
        return (rule.equals("DIAGONAL_THREE_TIMES_THE_LONGEST_SIDE") ? "diagonal = tres veces el lado más largo" : "lado = tres veces la altura de una botella");
    }

    @Override
    public String shortBooks() {
        return "Si las puntas retorcidas son cortas, atarlas en el hueco antes de cerrar. Llevar los libros bajo el brazo.";
    }

    @Override
    public String shortBottle() {
        return "Si las esquinas no se juntan sobre la boca, atarlas alrededor del cuello y dejarlo a la vista.";
    }

    @Override
    public String shortCorners() {
        return "Si dos esquinas no se alcanzan, cruzarlas sobre el regalo. Atar cada una con una esquina de un lado, como en el envoltorio de dos nudos. O atar las dos esquinas de un mismo borde y después las otras dos.";
    }

    @Override
    public String shortFlat() {
        return "Si la esquina lejana no alcanza el borde cercano, doblarla hacia dentro y prenderla con un alfiler. O hacer el envoltorio de un nudo.";
    }

    @Override
    public String shortRolled() {
        return "Si las puntas son cortas, enrollar con menos tela. O atarlas con una cinta en medio.";
    }

    @Override
    public String shortRound() {
        return "Si dos esquinas son cortas, atar las opuestas por arriba, sin asa.";
    }

    @Override
    public String shortTwoKnot() {
        return "Si una esquina es corta, mover el cruce hacia ella. O atar con una cinta en medio.";
    }

    @Override
    public String showsFabric(String fabric, String percent, String where) {
        return fabric + ": el " + percent + " de lo que se ve" + (where.equals("top") ? ", arriba" : where.equals("sides") ? ", a los lados" : where.equals("both") ? ", a los lados y arriba" : "") + ".";
    }

    @Override
    public String showsFabricInKnot(String fabric) {
        return fabric + ": solo se ve en el nudo y sus puntas.";
    }

    @Override
    public String showsFabricNot(String fabric) {
        return fabric + ": no se ve.";
    }

    @Override
    public String showsHearth(String percent, String where) {
        return "Se ve el " + percent + " de la pieza central" + (where.equals("top") ? ", arriba" : where.equals("sides") ? ", a los lados" : where.equals("both") ? ", a los lados y arriba" : "") + ".";
    }

    @Override
    public String showsHearthAndUnder(String percent, String thing, String under, String where) {
        return "Se ve el " + percent + " de la pieza central" + (where.equals("top") ? ", arriba" : where.equals("sides") ? ", a los lados" : where.equals("both") ? ", a los lados y arriba" : "") + "; el " + under + " queda debajo de " + (thing.equals("box") ? "la caja" : thing.equals("books") ? "los libros" : thing.equals("roll") ? "ese rollo" : thing.equals("ball") ? "la bola" : thing.equals("bottles") ? "las botellas" : "la botella") + ".";
    }

    @Override
    public String showsHearthInKnot() {
        return "La pieza central solo se ve en el nudo y sus puntas.";
    }

    @Override
    public String showsHearthInside() {
        return "La pieza central queda doblada por dentro.";
    }

    @Override
    public String showsHearthUnder(String thing) {
        return "La pieza central queda oculta debajo de " + (thing.equals("box") ? "la caja" : thing.equals("books") ? "los libros" : thing.equals("roll") ? "ese rollo" : thing.equals("ball") ? "la bola" : thing.equals("bottles") ? "las botellas" : "la botella") + ".";
    }

    @Override
    public String showsSpare() {
        return "Donde hay dos cifras, depende de las cuatro esquinas sobrantes: metidas bajo las solapas o por fuera, tal como caen.";
    }

    @Override
    public String tieName(String tie) {
        return (tie.equals("FOUR_CORNER") ? "atado de cuatro puntas" : tie.equals("EDGE_ALONG_EDGE") ? "atado de cuatro puntas, caja paralela al paño" : tie.equals("ERRAND") ? "envoltorio de un nudo" : tie.equals("FLAT") ? "envoltorio plano" : tie.equals("TWO_KNOT") ? "envoltorio de dos nudos" : tie.equals("ONE_BOTTLE") ? "una botella" : tie.equals("TWO_BOTTLES") ? "dos botellas" : tie.equals("ROUND") ? "objeto redondo" : tie.equals("BOOKS") ? "dos libros" : "rollo");
    }

    @Override
    public String tieSuited(String tie) {
        return (tie.equals("FOUR_CORNER") ? "cajas, cosas apiladas o pesadas" : tie.equals("EDGE_ALONG_EDGE") ? "cajas en un paño grande" : tie.equals("ERRAND") ? "cajas que se llevan en la mano" : tie.equals("FLAT") ? "cajas planas y ropa doblada, sin nudo" : tie.equals("TWO_KNOT") ? "cajas largas y esteras enrolladas" : tie.equals("ONE_BOTTLE") ? "una botella de pie" : tie.equals("TWO_BOTTLES") ? "dos botellas iguales" : tie.equals("ROUND") ? "pelotas, melones, cosas redondas" : tie.equals("BOOKS") ? "dos libros iguales" : "rollos de tela, tubos, botes");
    }

    @Override
    public String tradeAll(String enough) {
        return "Tamaños en venta que bastan: " + enough + ".";
    }

    @Override
    public String tradeNone(String small) {
        return "Todos los tamaños que se venden para regalos son pequeños aquí: " + small + ".";
    }

    @Override
    public String tradeSome(String enough, String small) {
        return "Tamaños en venta que bastan: " + enough + ". Demasiado pequeños: " + small + ".";
    }

    @Override
    public String tradeUses(String size) {
        return (size.equals("CHUHABA") ? "regalos pequeños, fiambrera, sobre" : size.equals("SHAKUSAN") ? "fiambrera, caja de pañuelos, botella de medio litro" : size.equals("SHAKUYON") ? "fiambrera" : size.equals("FUTAHABA") ? "caja de tarta, una botella de vino, ropa, cosas redondas" : size.equals("NISHAKU") ? "caja de tarta grande" : size.equals("NISHI") ? "una botella de 1,8 litros, dos botellas de vino, bolso" : size.equals("MIHABA") ? "botella de 1,8 litros, caja de dos botellas, bolsa de la compra" : size.equals("LARGE") ? "bolsa grande" : size.equals("YOHABA") ? "de dos a cuatro cojines de suelo, mantel" : size.equals("ITSUHABA") ? "cinco o seis cojines de suelo" : size.equals("MUHABA") ? "un juego de cama" : "dos juegos de cama");
    }

    @Override
    public String twoKnotCrossed() {
        return "Llevar la esquina cercana y la lejana sobre el regalo. No alcanzan para atarse. Cruzarlas en el centro, una hacia la izquierda y otra hacia la derecha.";
    }

    @Override
    public String twoKnotRight() {
        return "Levantar la esquina derecha y atarla con la que va hacia la derecha.";
    }

    @Override
    public String twoKnotTied() {
        return "Atar la esquina izquierda de la misma manera. Los dos nudos quedan a igual distancia del centro.";
    }

    @Override
    public String twoKnotRollCrossed() {
        return "Llevar encima la esquina cercana y la lejana. Cruzarlas arriba y girarlas a lo largo del rollo.";
    }

    @Override
    public String twoKnotRollEnds() {
        return "Doblar el lado izquierdo y el derecho sobre los extremos del rollo.";
    }

    @Override
    public String twoKnotRollTied() {
        return "Atar cada lado con la esquina cruzada que viene hacia él.";
    }
}
