package hearthcloth.words.designing;

/** The room of designing in Spanish. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class SpanishDesigning implements DesigningWords {

    @Override
    public String againButton() {
        return "Planear otra vez los colores";
    }

    @Override
    public String againLocked() {
        return "Lo fijado se queda.";
    }

    @Override
    public String altEyes(String eyes, String name, String size) {
        return name + " a ojos " + eyes + ", " + size;
    }

    @Override
    public String altFace(String face, String name, String size) {
        return (face.equals("FRONT") ? "Anverso de " + name + ", " + size : "Reverso de " + name + ", " + size);
    }

    @Override
    public String altFront() {
        return "Anverso; se puede elegir cada tira";
    }

    @Override
    public String altTarget(String bar, String cut, String fabrics, String locked) {
        return bar + ", " + fabrics + ", corte " + cut + (locked.equals("yes") ? ", fijada" : "");
    }

    @Override
    public String altValues(String name) {
        return "Claro y oscuro de " + name + ", en cinco grados";
    }

    @Override
    public String altWide(String width) {
        return width + " de ancho";
    }

    @Override
    public String barAny() {
        return "Cualquier tela";
    }

    @Override
    public String barAnySays() {
        return "elige el plan";
    }

    @Override
    public String barCut(String unit) {
        return "Corte, " + unit;
    }

    @Override
    public String barLock() {
        return "Fijar";
    }

    @Override
    public String barLockIt() {
        return "Fijar como está";
    }

    @Override
    public String barLocked() {
        return "Fijada";
    }

    @Override
    public String barMiddle() {
        return "el centro";
    }

    @Override
    public String barName(String bar, String label) {
        return (bar.equals("hearth") ? "Pieza central" : "Tira " + label);
    }

    @Override
    public String barNarrower() {
        return "Más estrecha";
    }

    @Override
    public String barSet() {
        return "Fijar el ancho";
    }

    @Override
    public String barUnlock() {
        return "Fijada; pulse para soltarla";
    }

    @Override
    public String barWhere(String round, String side) {
        return (side.equals("LEFT") ? "izquierda, vuelta " + round : side.equals("RIGHT") ? "derecha, vuelta " + round : side.equals("TOP") ? "arriba, vuelta " + round : "abajo, vuelta " + round);
    }

    @Override
    public String barWider() {
        return "Más ancha";
    }

    @Override
    public String benchChoices() {
        return "Opciones";
    }

    @Override
    public String benchClose() {
        return "No elegir nada";
    }

    @Override
    public String benchHolds(String largest, String tie) {
        return tie + ": " + largest;
    }

    @Override
    public String benchLacking() {
        return "No tiene bastante tela para esto.";
    }

    @Override
    public String benchPanel() {
        return "Qué se puede cambiar";
    }

    @Override
    public String benchRedo() {
        return "Rehacer";
    }

    @Override
    public String benchRedoWhat(String deed) {
        return "Rehacer: " + deed;
    }

    @Override
    public String benchReplan() {
        return "Planear otra vez con sus telas";
    }

    @Override
    public String benchReplanCuts() {
        return "Planear otra vez lo que falta por cortar";
    }

    @Override
    public String benchTap() {
        return "Toque la pieza central o una tira para cambiar su tela o su ancho. Una tira rayada muestra el revés de su tela.";
    }

    @Override
    public String benchTies() {
        return "Qué puede atar";
    }

    @Override
    public String benchUndo() {
        return "Deshacer";
    }

    @Override
    public String benchUndoWhat(String deed) {
        return "Deshacer: " + deed;
    }

    @Override
    public String benchViews() {
        return "Maneras de verlo";
    }

    @Override
    public String benchWall() {
        return "Llenar la pantalla con el dibujo";
    }

    @Override
    public String besideName(String deed, String name) {
        return name + ", " + deed;
    }

    @Override
    public String besideOld() {
        return "Este paño ha cambiado varias veces en otra ventana desde que se cargó esta página. Aquí no se ha cambiado nada; cárguela otra vez.";
    }

    @Override
    public String besideSaid(String deed, String name) {
        return "Mientras tanto, " + name + " ha cambiado en otra ventana. Se guardan los dos: uno queda como lo dejó esa ventana y el otro, al lado, con su cambio (" + deed + ").";
    }

    @Override
    public String coloursBest() {
        return "como mejor vea el plan";
    }

    @Override
    public String coloursContrast() {
        return "Contraste";
    }

    @Override
    public String coloursLabel() {
        return "Colores";
    }

    @Override
    public String copyName(String name) {
        return name + ", otro";
    }

    @Override
    public String deedAgain() {
        return "colores planeados otra vez";
    }

    @Override
    public String deedAnyFabric() {
        return "cualquier tela";
    }

    @Override
    public String deedBar(String bar) {
        return "ancho de " + bar;
    }

    @Override
    public String deedFabric(String fabric, String place) {
        return fabric + " para " + place;
    }

    @Override
    public String deedFell() {
        return "cara de las solapas";
    }

    @Override
    public String deedHearth() {
        return "pieza central";
    }

    @Override
    public String deedLock(String on, String place) {
        return (on.equals("yes") ? "fijar " + place : "soltar " + place);
    }

    @Override
    public String deedMaking(String what) {
        return (what.equals("seam") ? "costura" : "dobladillo");
    }

    @Override
    public String deedOrder() {
        return "orden";
    }

    @Override
    public String deedReplan() {
        return "planeado otra vez";
    }

    @Override
    public String deedRound(String round) {
        return "ancho de la vuelta " + round;
    }

    @Override
    public String deedRounds(int n) {
        return (n == 1 ? "una vuelta" : "" + n + " vueltas");
    }

    @Override
    public String deedRules() {
        return "reglas de unión";
    }

    @Override
    public String deedSwap() {
        return "intercambio de telas";
    }

    @Override
    public String exampleAway() {
        return "quitar el ejemplo";
    }

    @Override
    public String exampleGone() {
        return "El ejemplo está borrado.";
    }

    @Override
    public String exampleLaid() {
        return "Hay telas de ejemplo y un paño para probar; un clic los borra.";
    }

    @Override
    public String exampleLay() {
        return "extender el ejemplo";
    }

    @Override
    public String exampleName(String title) {
        return "Ejemplo: " + title;
    }

    @Override
    public String eyes(String eyes) {
        return (eyes.equals("PROTAN") ? "ciegos al rojo" : eyes.equals("DEUTAN") ? "ciegos al verde" : "ciegos al azul");
    }

    @Override
    public String eyesTo() {
        return "A otros ojos:";
    }

    @Override
    public String eyesTold(String colours, String eyes) {
        return "A ojos " + eyes + ": " + colours;
    }

    @Override
    public String fabricsSwap() {
        return "Intercambiar";
    }

    @Override
    public String fabricsTitle() {
        return "Telas";
    }

    @Override
    public String fabricsWith() {
        return "con";
    }

    @Override
    public String face(String face) {
        return (face.equals("front") ? "anverso" : "reverso");
    }

    @Override
    public String figureCuts() {
        return "Cortes";
    }

    @Override
    public String figureJoins() {
        return "Uniones";
    }

    @Override
    public String figureJoinsFew(int above, String joins) {
        return (above == 0 ? "" + joins + ", las mínimas posibles" : "" + joins + ", como mucho " + above + " más que las mínimas");
    }

    @Override
    public String figureLayers(int n) {
        return (n == 1 ? "" + n + " capa" : "" + n + " capas");
    }

    @Override
    public String figureLost() {
        return "Tela perdida";
    }

    @Override
    public String figurePatches() {
        return "Piezas";
    }

    @Override
    public String figurePieces() {
        return "Trozos que se cortan";
    }

    @Override
    public String figureThickest() {
        return "Punto más grueso";
    }

    @Override
    public String figureThread() {
        return "Hilo";
    }

    @Override
    public String figureWas(String was) {
        return "antes " + was;
    }

    @Override
    public String figuresAll() {
        return "Todas las cifras";
    }

    @Override
    public String goCut() {
        return "Cortar este paño";
    }

    @Override
    public String goRecut() {
        return "Cortar lo que se pide";
    }

    @Override
    public String goSew() {
        return "Coser este paño";
    }

    @Override
    public String handEnough() {
        return "bastante";
    }

    @Override
    public String handJoined() {
        return "unida";
    }

    @Override
    public String handShort() {
        return "demasiado corta";
    }

    @Override
    public String handWide(String width) {
        return width + " de ancho";
    }

    @Override
    public String labelRenamed(String name, String was) {
        return was + " pasó a llamarse " + name;
    }

    @Override
    public String look(String look) {
        return (look.equals("FLAT") ? "Plano" : look.equals("BACK") ? "Reverso" : look.equals("TIED") ? "Atado" : look.equals("VALUES") ? "Claro, oscuro" : look.equals("PROTAN") ? "Protán" : look.equals("DEUTAN") ? "Deután" : "Tritán");
    }

    @Override
    public String nameCopy() {
        return "Guardar una copia";
    }

    @Override
    public String nameMore() {
        return "Más propuestas";
    }

    @Override
    public String nameName() {
        return "Nombre";
    }

    @Override
    public String nameRename() {
        return "Cambiar el nombre";
    }

    @Override
    public String nameTitle() {
        return "Nombre y copia";
    }

    @Override
    public String nearGone() {
        return "Ese ya no se puede hacer; mira otra vez.";
    }

    @Override
    public String nearKind(String kind) {
        return (kind.equals("FABRICS") ? "En otras telas" : kind.equals("BARS") ? "Con tiras más estrechas" : kind.equals("HEARTH") ? "Con una pieza central más pequeña" : kind.equals("ROUNDS") ? "Con menos vueltas" : "Más pequeño en todo");
    }

    @Override
    public String nearLead() {
        return "Cada uno cambia una sola cosa, y tienes tela para él.";
    }

    @Override
    public String nearNone() {
        return "Con lo que está libre no sale ningún paño parecido. Deshaz, o mira otros paños.";
    }

    @Override
    public String nearOf(String fabrics) {
        return "De " + fabrics + ".";
    }

    @Override
    public String nearTaken(String way) {
        return "Elegido: " + way + ".";
    }

    @Override
    public String nearTitle() {
        return "Los paños más parecidos que puedes hacer";
    }

    @Override
    public String picturesBack(String kind) {
        return "Reverso, " + kind;
    }

    @Override
    public String picturesBoth() {
        return "Las dos, para enviar";
    }

    @Override
    public String picturesFlat(String kind) {
        return "Plano, " + kind;
    }

    @Override
    public String picturesTied(String kind) {
        return "Atado, " + kind;
    }

    @Override
    public String picturesTitle() {
        return "Imágenes para guardar y enviar";
    }

    @Override
    public String picturesWhat() {
        return "Una imagen de las dos caras y del regalo atado, o cada una por separado.";
    }

    @Override
    public String piecingApart(String several) {
        return (several.equals("yes") ? "Separar" : "Devolver");
    }

    @Override
    public String piecingClear() {
        return "Despejar la mesa";
    }

    @Override
    public String piecingDeed() {
        return "los trozos";
    }

    @Override
    public String piecingFill(String again) {
        return (again.equals("yes") ? "Llenar de nuevo alrededor de lo fijado" : "Llenar el resto");
    }

    @Override
    public String piecingFit(String piece, String way) {
        return piece + ", " + way;
    }

    @Override
    public String piecingFrom() {
        return "Cambiarlo trozo a trozo";
    }

    @Override
    public String piecingGo() {
        return "Unir retales a mano";
    }

    @Override
    public String piecingHeap(int n) {
        return (n == 1 ? "" + n + " retal al lado" : "" + n + " retales al lado");
    }

    @Override
    public String piecingIntro() {
        return "Toque un retal y luego otro: verá cómo van juntos y qué se recorta. Llene el resto cuando quiera; lo que ha unido sigue unido.";
    }

    @Override
    public String piecingIsLocked(String piece) {
        return piece + ", fijado";
    }

    @Override
    public String piecingJoined(String a, String b, String trims) {
        return "Las piezas " + a + " y " + b + " están unidas; " + trims + ".";
    }

    @Override
    public String piecingKeep(String cloth) {
        return "Guardar en " + cloth;
    }

    @Override
    public String piecingLay() {
        return "Poner en la mesa";
    }

    @Override
    public String piecingLock(String on) {
        return (on.equals("yes") ? "Soltar" : "Fijar");
    }

    @Override
    public String piecingMake() {
        return "Hacer este paño";
    }

    @Override
    public String piecingMore(String area, String how) {
        return (how.equals("SAME") ? "recorta lo mismo que ahora" : how.equals("MORE") ? "recorta " + area + " más" : "recorta " + area + " menos");
    }

    @Override
    public String piecingNext() {
        return "Qué va al lado";
    }

    @Override
    public String piecingNone(String what) {
        return (what.equals("next") ? "En este paño nada va al lado." : what.equals("two") ? "Estos dos no van juntos: un trozo quedaría demasiado pequeño o no caben en el paño." : "Ningún otro retal es bastante grande para este lugar.");
    }

    @Override
    public String piecingPanel() {
        return "El retal elegido";
    }

    @Override
    public String piecingPiece(String fabric, String piece, String size) {
        return piece + " " + fabric + ", " + size;
    }

    @Override
    public String piecingSaid(String what) {
        return (what.equals("UNDO") ? "Deshecho." : what.equals("REDO") ? "Rehecho." : what.equals("CLEAR") ? "La mesa está despejada." : what.equals("LAY") ? "Está en la mesa y estará en el paño." : what.equals("APART") ? "Separado." : what.equals("LOCK") ? "Hecho." : what.equals("TURN") ? "Girado." : what.equals("SWAP") ? "Los dos han cambiado de lugar." : what.equals("SIZE") ? "El tamaño está fijado." : what.equals("FILL") ? "El paño está lleno. Toque un trozo para fijarlo o darle otro retal." : what.equals("SHORT") ? "No se encontró modo de llenar el resto a este tamaño. Separe algo o haga el paño más pequeño." : what.equals("MADE") ? "Su paño está guardado." : what.equals("FROM") ? "Toque un trozo para darle otro retal, o fije lo que le guste y llene el resto de nuevo." : "Este paño no se puede cambiar aquí: dos trozos salen de una pieza, o falta una pieza.");
    }

    @Override
    public String piecingSet() {
        return "Fijar";
    }

    @Override
    public String piecingSize(String unit) {
        return "Tamaño del paño en " + unit;
    }

    @Override
    public String piecingStale() {
        return "La mesa ha cambiado entretanto; mírela otra vez.";
    }

    @Override
    public String piecingSwap() {
        return "Otro retal en su lugar";
    }

    @Override
    public String piecingTable() {
        return "En la mesa";
    }

    @Override
    public String piecingTitle() {
        return "Retales a mano";
    }

    @Override
    public String piecingTrim(String length, String off, String piece) {
        return (off.equals("NONE") ? "no se recorta nada" : off.equals("SECOND") ? "" + length + " de la pieza " + piece : "" + length + " del otro lado");
    }

    @Override
    public String piecingTurn() {
        return "Girar";
    }

    @Override
    public String piecingWay(String turned, String where) {
        return (where.equals("BESIDE") ? "a la derecha" : "debajo") + (turned.equals("yes") ? ", girado" : "");
    }

    @Override
    public String piecingWays(String piece) {
        return "Junto con " + piece;
    }

    @Override
    public String piecingWhole(String cloth, int n, String percent) {
        return (n == 1 ? "" + n + " trozo" : "" + n + " trozos") + ", " + cloth + ", " + percent + " % recortado.";
    }

    @Override
    public String place(String label, String place) {
        return (place.equals("hearth") ? "la pieza central" : "" + label);
    }

    @Override
    public String saidCalled(String name) {
        return "Ahora se llama " + name + ".";
    }

    @Override
    public String saidCopy() {
        return "Esta es una copia; el primero queda como estaba.";
    }

    @Override
    public String saidLacking() {
        return "No tiene bastante tela; cambie una tira o un ancho.";
    }

    @Override
    public String saidLocked() {
        return "Fijada: al planear otra vez se queda como está.";
    }

    @Override
    public String saidNothing() {
        return "No hay nada que deshacer.";
    }

    @Override
    public String saidPlanned() {
        return "Planeado otra vez con lo que hay entre sus telas.";
    }

    @Override
    public String saidRedone(String deed) {
        return "Rehecho: " + deed + ".";
    }

    @Override
    public String saidUndone(String deed) {
        return "Deshecho: " + deed + ".";
    }

    @Override
    public String saidUnlocked() {
        return "Suelta.";
    }

    @Override
    public String seamKind(String name, String seam) {
        return (seam.equals("felled") ? "sobrecargada: un margen doblado alrededor del otro y cosido" : seam.equals("ssamsol") ? "ssamsol: costura sobrecargada estrecha, como en los paños coreanos" : seam.equals("felled_and_trimmed") ? "sobrecargada y recortada: cosida a ras, un margen recortado y luego doblada" : seam.equals("lapped") ? "enganchada: dos bordes doblados metidos uno en otro" : seam.equals("french") ? "francesa: cosida dos veces, los bordes encerrados" : seam.equals("french_trimmed") ? "francesa, recortada: márgenes más anchos, recortados tras la primera línea" : seam.equals("gamchimjil") ? "gamchimjil: dos bordes doblados sobrehilados a mano" : "" + name);
    }

    @Override
    public String set() {
        return "Fijar";
    }

    @Override
    public String sewingAllowances() {
        return "Sobrecargada, estrecho + ancho";
    }

    @Override
    public String sewingCorner() {
        return "Esquina del dobladillo";
    }

    @Override
    public String sewingCorners(String corner) {
        return (corner.equals("square") ? "esquinas rectas" : "esquinas en inglete");
    }

    @Override
    public String sewingFell() {
        return "Solapas de las costuras en el";
    }

    @Override
    public String sewingHelp() {
        return "¿Qué son estrecho y ancho?";
    }

    @Override
    public String sewingHelpSays() {
        return "En una costura sobrecargada un margen es estrecho; el otro, más ancho, se dobla encima y se cose. Los dos se fijan abajo. La solapa queda en una cara y hace allí una línea. El trozo mínimo es la parte más corta que acepta unir en una tira.";
    }

    @Override
    public String sewingHem(String unit) {
        return "Dobladillo, primer + segundo doblez, " + unit;
    }

    @Override
    public String sewingJoins() {
        return "Uniones por tira, como mucho";
    }

    @Override
    public String sewingLeast(String unit) {
        return "Trozo mínimo, terminado, " + unit;
    }

    @Override
    public String sewingSeam() {
        return "Costura";
    }

    @Override
    public String sewingTitle() {
        return "Costura, dobladillo y uniones";
    }

    @Override
    public String shapeHearth(String unit) {
        return "Pieza central, cortada, " + unit;
    }

    @Override
    public String shapeHearthHeight(String unit) {
        return "Alto de la pieza central, cortada, " + unit;
    }

    @Override
    public String shapeHearthWidth(String unit) {
        return "Ancho de la pieza central, cortada, " + unit;
    }

    @Override
    public String shapeHelp() {
        return "¿Qué significan estos anchos?";
    }

    @Override
    public String shapeHelpSays() {
        return "Cada ancho es lo que se corta, con los márgenes de costura; la tira terminada es más estrecha por lo que se llevan las costuras y el dobladillo. El tamaño de arriba es el del paño terminado, con dobladillo. El orden dice cómo se cosen las tiras de una vuelta.";
    }

    @Override
    public String shapeMixed() {
        return "(distintas)";
    }

    @Override
    public String shapeOrder() {
        return "Orden";
    }

    @Override
    public String shapeRound(String round, String unit) {
        return "Vuelta " + round + ", tiras cortadas, " + unit;
    }

    @Override
    public String shapeRounds() {
        return "Vueltas";
    }

    @Override
    public String shapeSetHearth() {
        return "Fijar la pieza central";
    }

    @Override
    public String shapeTitle() {
        return "Forma";
    }

    @Override
    public String shapeWhole() {
        return "El paño entero";
    }

    @Override
    public String shortJoins(int n) {
        return (n == 1 ? "unión" : "uniones");
    }

    @Override
    public String shortLayers() {
        return "capas";
    }

    @Override
    public String shortLost() {
        return "perdido";
    }

    @Override
    public String shortSize(String kind) {
        return (kind.equals("square") ? "por lado" : "terminado");
    }

    @Override
    public String shortThread() {
        return "hilo";
    }

    @Override
    public String sinceEnough() {
        return "Vuelve a tener bastante tela.";
    }

    @Override
    public String sinceJoins(String before, String now) {
        return "Uniones " + before + ", ahora " + now + ".";
    }

    @Override
    public String sinceLacking(String why) {
        return "No hay bastante tela: " + why;
    }

    @Override
    public String sinceLost(String before, String now) {
        return "Perdido " + before + ", ahora " + now + ".";
    }

    @Override
    public String sinceSame() {
        return "Cambiado; el tamaño, las uniones y la pérdida siguen igual.";
    }

    @Override
    public String sinceSize(String before, String now) {
        return "Tamaño " + before + ", ahora " + now + ".";
    }

    @Override
    public String sizeSquare(String size) {
        return size + " por lado";
    }

    @Override
    public String staleCalled(String name) {
        return "Se llama " + name + ".";
    }

    @Override
    public String staleRenamed() {
        return "Mientras tanto, este paño ha cambiado de nombre en otra ventana. Aquí no se ha cambiado nada.";
    }

    @Override
    public String tiedAlt(String fit, String name) {
        return name + ", atado. " + fit;
    }

    @Override
    public String tiedColours() {
        return "En sus colores";
    }

    @Override
    public String tiedExample() {
        return "box 30 x 20 x 10 cm";
    }

    @Override
    public String tiedFaces() {
        return "Cara de fuera y cómo está puesto el paño";
    }

    @Override
    public String tiedGreys() {
        return "Claro y oscuro";
    }

    @Override
    public String tiedMore() {
        return "Lo que se ve y más";
    }

    @Override
    public String tiedQuarter(String turn) {
        return (turn.equals("0") ? "como está" : turn.equals("1") ? "un cuarto" : turn.equals("2") ? "media vuelta" : "tres cuartos");
    }

    @Override
    public String tiedRound() {
        return "Alrededor de qué se ata";
    }

    @Override
    public String tiedRoundWhat() {
        return "Alrededor de qué";
    }

    @Override
    public String tiedSay() {
        return "Diga alrededor de qué se va a atar.";
    }

    @Override
    public String tiedShow() {
        return "Mostrar";
    }

    @Override
    public String tiedSize() {
        return "Su tamaño";
    }

    @Override
    public String tiedTooSmall() {
        return "demasiado pequeño";
    }

    @Override
    public String tiedUnsaid(String gift) {
        return "Aún no ha dicho qué envuelve. Aquí está alrededor de " + gift + ".";
    }

    @Override
    public String tiedWhich() {
        return "En qué atado";
    }

    @Override
    public String turnCanvas() {
        return "El regalo atado. Las flechas lo giran, más y menos lo acercan o alejan, Inicio lo muestra desde una esquina.";
    }

    @Override
    public String turnGroup() {
        return "Girar el regalo";
    }

    @Override
    public String turnSaid(String way) {
        return (way.equals("left") ? "girado a la izquierda" : way.equals("right") ? "girado a la derecha" : way.equals("up") ? "inclinado hacia usted" : "inclinado hacia atrás");
    }

    @Override
    public String turnTo(String way) {
        return (way.equals("left") ? "Girar a la izquierda" : way.equals("right") ? "Girar a la derecha" : way.equals("up") ? "Inclinar hacia usted" : way.equals("down") ? "Inclinar hacia atrás" : way.equals("nearer") ? "Más cerca" : "Más lejos");
    }

    @Override
    public String warnAside(int n, String pieces) {
        return (n == 1 ? "Este paño cuenta con " + pieces + ", que usted ha apartado. Devuélvalo a sus telas o planee el paño otra vez." : "Este paño cuenta con " + pieces + ", que usted ha apartado. Devuélvalos a sus telas o planee el paño otra vez.");
    }

    @Override
    public String warnMany(String fabrics, int n) {
        return (n == 1 ? "" + n + " trozo (" + fabrics + ")" : "" + n + " trozos (" + fabrics + ")");
    }

    @Override
    public String warnMissing(int n, String pieces) {
        return (n == 1 ? "Este paño cuenta con " + pieces + ", que ya no está entre sus telas como se planeó. Así no se puede cortar; planéelo otra vez." : "Este paño cuenta con " + pieces + ", que ya no están entre sus telas como se planeó. Así no se puede cortar; planéelo otra vez.");
    }

    @Override
    public String warnPiece(String fabric, String number) {
        return number + " (" + fabric + ")";
    }

    @Override
    public String warnPieces(int n, String pieces) {
        return (n == 1 ? "el trozo " + pieces : "los trozos " + pieces);
    }

    @Override
    public String warnRuler(String begun, String ruler) {
        return (ruler.equals("metric") ? "Este paño está medido en centímetros" : "Este paño está medido en pulgadas") + (begun.equals("yes") ? ", tal como está cortado." : ", tal como se planeó. Planéelo otra vez para tenerlo en la regla que usa ahora.");
    }

    @Override
    public String warnShared(String cloth, String pieces) {
        return cloth + " también cuenta con " + pieces + ". Se lo queda el paño que se corte primero; el otro se planea otra vez.";
    }

    @Override
    public String wrongBar() {
        return "Elija antes una tira.";
    }

    @Override
    public String wrongCloth() {
        return "Así no quedaría un paño. No se cambió nada; elija otras medidas.";
    }

    @Override
    public String wrongFabric(String fabric) {
        return "Ninguna tela suya se llama «" + fabric + "».";
    }

    @Override
    public String wrongForm() {
        return "Este formulario es de otro tipo; recargue la página.";
    }

    @Override
    public String wrongIsCut() {
        return "Este paño ya está cortado. Guarde una copia para cambiar el diseño.";
    }

    @Override
    public String wrongLacking() {
        return "No tiene bastante tela para este paño; cámbielo primero.";
    }

    @Override
    public String wrongLeast() {
        return "El trozo mínimo es más que nada y como mucho 1 m.";
    }

    @Override
    public String wrongName() {
        return "Escriba un nombre de hasta 80 letras.";
    }

    @Override
    public String wrongNoBars() {
        return "Este paño no tiene tiras que cambiar. Para otros retales u otro tamaño, busque propuestas otra vez.";
    }

    @Override
    public String wrongNoOther() {
        return "No se ha encontrado otro plan de colores con estas medidas; suelte una tira o cambie un ancho.";
    }

    @Override
    public String wrongNone() {
        return "Ese paño no existe; quizá se haya quitado.";
    }

    @Override
    public String wrongOrder(String written) {
        return "«" + written + "» no es un orden.";
    }

    @Override
    public String wrongPart() {
        return "Cada parte es más que nada y como mucho 10 cm.";
    }

    @Override
    public String wrongScheme(String needs, String scheme) {
        return "«" + scheme + "» no se ha encontrado con estas medidas; hace falta " + needs + ".";
    }

    @Override
    public String wrongSeam(String written) {
        return "«" + written + "» no es una costura conocida.";
    }

    @Override
    public String wrongTiesNone() {
        return "Este paño aún no ata ningún regalo: diga qué va a envolver.";
    }

    @Override
    public String wrongTwo(String what, String written) {
        return (what.equals("hem") ? "«" + written + "» no sirve; un dobladillo tiene un primer y un segundo doblez, como 0,6 + 1,2 cm." : "«" + written + "» no sirve; una costura sobrecargada tiene un margen estrecho y otro ancho, como 0,6 + 1,2 cm.");
    }

    @Override
    public String wrongWhole(String least, String most, String written) {
        return "«" + written + "» no sirve; escriba un número entero de " + least + " a " + most + ".";
    }

    @Override
    public String wrongWide(String written) {
        return "«" + written + "» es más ancho que cualquier paño; compruebe la unidad.";
    }

    @Override
    public String wrongWrap() {
        return "El borde ancho envuelve al estrecho, así que el segundo debe ser el más ancho.";
    }
}
