package hearthcloth.words.sewing;

/** The room of sewing in Spanish. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class SpanishSewing implements SewingWords {

    @Override
    public String about(String length) {
        return "unos " + length;
    }

    @Override
    public String beforeGrain() {
        return "Poner cada trozo con el hilo de la tela (la dirección del orillo) de arriba abajo.";
    }

    @Override
    public String beforeMeasure(String length) {
        return "Medir cada trozo. Si a alguno le faltan más de " + length + " respecto a este plan, planear de nuevo con su medida real.";
    }

    @Override
    public String beforePin() {
        return "Prender a cada pieza su etiqueta en cuanto se corta: en la cara que será el anverso del paño, con la parte de arriba hacia arriba del paño.";
    }

    @Override
    public String beforePress() {
        return "Planchar cada trozo y dejarlo enfriar. Cortar el orillo si aún lo tiene, y medir otra vez.";
    }

    @Override
    public String beforeStraight() {
        return "Cortar primero el borde izquierdo y el superior rectos y a escuadra, porque cada corte se mide desde un borde. Donde una pieza necesita el trozo hasta el borde, no quitar más de un hilo o dos.";
    }

    @Override
    public String blockBegins(String first, String last, String letters) {
        return "Empieza la sección " + letters + ". Colocar " + first + " a " + last + " como en el dibujo del anverso. No hace falta nada más.";
    }

    @Override
    public String blockDone(String letters) {
        return "La sección " + letters + " está terminada.";
    }

    @Override
    public String briefSew(String added, String part, String side, String work) {
        return "Coser " + added + " al " + (part.equals("end") ? "extremo" : "borde") + " " + (side.equals("left") ? "izquierdo" : side.equals("right") ? "derecho" : side.equals("top") ? "superior" : "inferior") + " de " + work + ", como en el paso 1.";
    }

    @Override
    public String briefSticksOut(String length, String wrapping) {
        return wrapping + " envuelve: dejar que su borde sobresalga " + length + ".";
    }

    @Override
    public String briefStitch(String top) {
        return "Coser a " + top + " del borde que está encima. Terminar como en el paso 1.";
    }

    @Override
    public String briefTurn(String added, String part, String side, String work) {
        return (side.equals("left") ? "Volver " + added + " sobre el" : side.equals("right") ? "Volver " + added + " sobre el" : side.equals("top") ? "Doblar " + added + " hacia abajo sobre el" : "Doblar " + added + " hacia arriba sobre el") + " " + (part.equals("end") ? "extremo" : "borde") + " " + (side.equals("left") ? "izquierdo" : side.equals("right") ? "derecho" : side.equals("top") ? "superior" : "inferior") + " de " + work + ".";
    }

    @Override
    public String briefWraps(String wrapping) {
        return wrapping + " envuelve.";
    }

    @Override
    public String careChildren() {
        return "Un paño anudado puede apretarse alrededor del cuello. Mantenerlo lejos de menores de tres años, sobre todo si las puntas pasan de 22 cm.";
    }

    @Override
    public String careChildrenTitle() {
        return "Niños pequeños";
    }

    @Override
    public String careCutter() {
        return "Cerrar el protector después de cada corte. Cortar hacia fuera, con la cuchilla derecha. Mantener los dedos lejos del borde de la regla y la base sin alfileres. Envolver las cuchillas viejas antes de tirarlas.";
    }

    @Override
    public String careCutterTitle() {
        return "Cúter rotatorio";
    }

    @Override
    public String careDye() {
        return "Los rojos, azules y morados intensos pueden desteñir en los primeros lavados. También si un paño húmedo está sobre algo claro.";
    }

    @Override
    public String careDyeTitle() {
        return "Tinte";
    }

    @Override
    public String careFlames() {
        return "La tela arde. Mantener un regalo envuelto al menos a 30 cm de cualquier llama.";
    }

    @Override
    public String careFlamesTitle() {
        return "Velas y cocinas";
    }

    @Override
    public String careFood() {
        return "Tener un paño aparte para los alimentos. Lavarlo a menudo y secarlo del todo. Poner antes la carne cruda en una bolsa cerrada.";
    }

    @Override
    public String careFoodTitle() {
        return "Alimentos";
    }

    @Override
    public String careIron() {
        return "Dejarla de pie donde nadie tropiece con el cable. Mantener la cara y los dedos fuera del vapor. Desenchufarla al terminar.";
    }

    @Override
    public String careIronTitle() {
        return "Plancha";
    }

    @Override
    public String careNeedle() {
        return "Quitar los alfileres antes de que lleguen al prensatelas, y no tenerlos nunca en la boca. Si se rompe una aguja, buscar todos los trozos.";
    }

    @Override
    public String careNeedleTitle() {
        return "Aguja";
    }

    @Override
    public String cutGives(String how, String patch, String size) {
        return patch + ": " + size + (how.equals("turned") ? " (cuarto de vuelta)" : how.equals("whole") ? ", el trozo entero" : how.equals("turnedWhole") ? " (cuarto de vuelta), el trozo entero" : "");
    }

    @Override
    public String cutKeep(String number, String size) {
        return "Guardar el sobrante " + number + ": " + size;
    }

    @Override
    public String cutLine(String gives, String leaves, String measure, String side, String way, String what) {
        return "Cortar " + what + " " + (way.equals("down") ? "de arriba abajo" : "de izquierda a derecha") + ", a " + measure + " de su borde " + (side.equals("left") ? "izquierdo" : side.equals("right") ? "derecho" : side.equals("top") ? "superior" : "inferior") + ". Se obtiene: " + gives + ". Queda: " + leaves + ".";
    }

    @Override
    public String cutScraps(int n) {
        return (n == 1 ? "" + n + " retal demasiado pequeño para guardarlo" : "" + n + " retales demasiado pequeños para guardarlos");
    }

    @Override
    public String cutTitle(String fabric, String piece, String size) {
        return "Trozo " + piece + ": " + fabric + ", " + size;
    }

    @Override
    public String cutTitleDone(String fabric, String piece, String size) {
        return "Trozo " + piece + ": " + fabric + ", " + size + ", ya cortado";
    }

    @Override
    public String fewClip(String length) {
        return "Cortar un triángulo de cada esquina: " + length + " por los dos bordes.";
    }

    @Override
    public String fewClipNoMore() {
        return "No más: la esquina abulta menos y queda cerrada.";
    }

    @Override
    public String fewClosePush() {
        return "Meter los hilos sueltos con el ojo de una aguja.";
    }

    @Override
    public String fewCloseSew() {
        return "Cerrar cada abertura a mano, unas puntadas pequeñas.";
    }

    @Override
    public String fewDiagonals(String length) {
        return "Medir las dos diagonales: unos " + length + " cada una.";
    }

    @Override
    public String fewFold(String under, String wrapped, String wrapping) {
        return "Planchar hacia " + wrapped + ", doblar " + under + " de " + wrapping + ", coser el doblez.";
    }

    @Override
    public String fewFoldShort(String under) {
        return "Planchar; doblar " + under + " el borde ancho, coser el doblez.";
    }

    @Override
    public String fewFrenchFold(String band) {
        return "Doblar al revés por la costura. Coser a " + band + " del doblez.";
    }

    @Override
    public String fewFrenchOpen(String wrapped) {
        return "Abrir, planchar la pestaña hacia " + wrapped + ".";
    }

    @Override
    public String fewFrenchOpenShort() {
        return "Abrir, planchar la pestaña.";
    }

    @Override
    public String fewHemFold(String edges, String face, String length) {
        return (face.equals("front") ? "Anverso" : "Reverso") + " arriba. Doblar " + length + " " + (edges.equals("topBottom") ? "arriba y abajo" : edges.equals("sides") ? "a los lados, con dobladillos" : "por los cuatro bordes") + ". Planchar.";
    }

    @Override
    public String fewHemFoldAgain(String length) {
        return "Doblar otra vez " + length + ". Planchar y prender.";
    }

    @Override
    public String fewHemFoldOnce(String edges, String face, String length) {
        return (face.equals("front") ? "Anverso" : "Reverso") + " arriba. Doblar " + length + " " + (edges.equals("topBottom") ? "arriba y abajo" : edges.equals("sides") ? "a los lados, con dobladillos" : "por los cuatro bordes") + ". Prender.";
    }

    @Override
    public String fewHemOpen() {
        return "Abrirlo otra vez. La esquina estará donde se cruzan los dobleces interiores.";
    }

    @Override
    public String fewHemPress() {
        return "Planchar.";
    }

    @Override
    public String fewHemStitch(String edge, String from) {
        return "Pespuntear a " + edge + " " + (from.equals("fold") ? "del doblez interior" : "del borde cortado") + ". Rematar en los dos extremos.";
    }

    @Override
    public String fewHemStitchRound(String edge, String from) {
        return "Pespuntear a " + edge + " " + (from.equals("fold") ? "del doblez interior" : "del borde cortado") + ", todo alrededor.";
    }

    @Override
    public String fewLappedHook(String band) {
        return "Enganchar los dobleces, " + band + " uno sobre otro. Prender.";
    }

    @Override
    public String fewLappedLay(String added, String face, String side) {
        return (face.equals("front") ? "Anverso" : "Reverso") + " arriba, " + (side.equals("left") ? "a la izquierda" : side.equals("right") ? "a la derecha" : side.equals("top") ? "encima" : "debajo") + ": " + added + ".";
    }

    @Override
    public String fewLappedLayShort(String face) {
        return (face.equals("front") ? "Anverso" : "Reverso") + " arriba, uno junto al otro.";
    }

    @Override
    public String fewLappedPress(String face, String turn, String under, String wrapping) {
        return "Planchar " + turn + " de " + wrapping + " hacia el " + (face.equals("front") ? "reverso" : "anverso") + ", " + under + " del otro hacia el " + (face.equals("front") ? "anverso" : "reverso") + ".";
    }

    @Override
    public String fewLappedPressShort() {
        return "Doblar los dos bordes como en el dibujo de la costura.";
    }

    @Override
    public String fewLappedStitch() {
        return "Coser los dos dobleces, uno por cada lado. Planchar.";
    }

    @Override
    public String fewLay(String added, String face, String part, String side) {
        return (face.equals("front") ? "Anverso" : "Reverso") + " arriba. Volver encima " + added + ", " + (side.equals("left") ? "a la izquierda" : side.equals("right") ? "a la derecha" : side.equals("top") ? "arriba" : "abajo") + (part.equals("end") ? ", al extremo" : "") + ".";
    }

    @Override
    public String fewLayLook() {
        return "Mirar de lejos. Dos del mismo tamaño aún se pueden cambiar.";
    }

    @Override
    public String fewLayOut(int n) {
        return (n == 1 ? "Colocar la pieza como en el dibujo, con su etiqueta." : "Colocar las " + n + " como en el dibujo, cada una con su etiqueta.");
    }

    @Override
    public String fewLayShort(String added, String face, String part, String side) {
        return (face.equals("front") ? "Anverso" : "Reverso") + " arriba. Volver " + (side.equals("left") ? "a la izquierda" : side.equals("right") ? "a la derecha" : side.equals("top") ? "arriba" : "abajo") + (part.equals("end") ? ", al extremo" : "") + ": " + added + ".";
    }

    @Override
    public String fewLayStack() {
        return "Apilarlas en orden, la primera encima.";
    }

    @Override
    public String fewLevel(String end, String length, String start) {
        return "Igualar " + (start.equals("left") ? "a la izquierda" : start.equals("right") ? "a la derecha" : start.equals("top") ? "arriba" : "abajo") + "; " + length + " sobresale " + (end.equals("left") ? "a la izquierda" : end.equals("right") ? "a la derecha" : end.equals("top") ? "arriba" : "abajo") + ".";
    }

    @Override
    public String fewMitreFold(String face) {
        return "Doblar la esquina por la mitad, " + (face.equals("front") ? "anverso" : "reverso") + " dentro, bordes juntos.";
    }

    @Override
    public String fewMitreMark(String length) {
        return "Marcar los dos bordes a " + length + " de la punta.";
    }

    @Override
    public String fewMitreRule() {
        return "Desde la marca, trazar una línea a escuadra con el doblez.";
    }

    @Override
    public String fewMitreStitch(String about) {
        return "Coser por ella desde el doblez, " + about + ". Rematar en los dos extremos.";
    }

    @Override
    public String fewMitreStitchOut() {
        return "Coser por ella del doblez al borde. Rematar en los dos extremos.";
    }

    @Override
    public String fewMitreTrim(String about) {
        return "Cortar la punta a " + about + " al lado. Abrir con la plancha, volver.";
    }

    @Override
    public String fewPress(String wrapped) {
        return "Planchar los dos bordes hacia " + wrapped + ".";
    }

    @Override
    public String fewPressShort() {
        return "Planchar los dos bordes hacia un lado.";
    }

    @Override
    public String fewPull() {
        return "Si difieren, estirar la corta y planchar otra vez.";
    }

    @Override
    public String fewRoundCorner() {
        return "En la esquina: aguja clavada, prensatelas arriba, girar el paño.";
    }

    @Override
    public String fewRoundEnd() {
        return "Al final, coser sobre las primeras puntadas. Planchar.";
    }

    @Override
    public String fewRoundFold() {
        return "Doblar el dobladillo por sus marcas, esquinas vivas. Planchar y prender.";
    }

    @Override
    public String fewRoundStart() {
        return "Empezar en medio de un lado.";
    }

    @Override
    public String fewSides() {
        return "Lados de la tela como en el dibujo.";
    }

    @Override
    public String fewSquare(String face) {
        return "Planchar todo el paño, " + (face.equals("front") ? "anverso" : "reverso") + " arriba.";
    }

    @Override
    public String fewSticksOut(String length, String wrapping) {
        return wrapping + ": que sobresalga " + length + ", envolverá. Prender.";
    }

    @Override
    public String fewSticksOutShort(String length) {
        return "El borde que envuelve sobresale " + length + ". Prender.";
    }

    @Override
    public String fewStitch(String top) {
        return "Coser a " + top + " del borde de encima. Rematar en los dos extremos.";
    }

    @Override
    public String fewTrialCut(String side) {
        return "Cortar dos retales de " + side + " de lado. Coserlos como la primera costura.";
    }

    @Override
    public String fewTrialLength(String stitch) {
        return "Poner el largo de puntada en " + stitch + ".";
    }

    @Override
    public String fewTrialMeasure() {
        return "Medir después de cada paso.";
    }

    @Override
    public String fewTrialNarrow() {
        return "¿Estrecho? Coser un hilo más cerca del borde.";
    }

    @Override
    public String fewTrialWide() {
        return "¿Ancho? Coser un hilo más adentro.";
    }

    @Override
    public String fewTrimBoth(String length) {
        return "Recortar el extremo, y el borde " + length + ".";
    }

    @Override
    public String fewTrimEdge(String length) {
        return "Recortar el borde " + length + ".";
    }

    @Override
    public String fewTrimEdges() {
        return "Recortar los bordes solo donde no estén rectos.";
    }

    @Override
    public String fewTrimEnd() {
        return "Recortar el extremo al ras.";
    }

    @Override
    public String fewWhipOpen() {
        return "Abrir y planchar.";
    }

    @Override
    public String fewWhipPress(String face, String narrow, String wide, String wrapping) {
        return "Planchar " + wide + " de " + wrapping + ", " + narrow + " del otro, hacia el " + (face.equals("front") ? "anverso" : "reverso") + ".";
    }

    @Override
    public String fewWhipPressShort(String face) {
        return "Planchar los dos bordes hacia el " + (face.equals("front") ? "anverso" : "reverso") + ".";
    }

    @Override
    public String fewWhipSew() {
        return "Igualar los dobleces. Coser a mano por encima, cada 1 mm.";
    }

    @Override
    public String frenchOpen(String face, String wrapped) {
        return "Abrir la costura, con el " + (face.equals("front") ? "anverso" : "reverso") + " arriba. Planchar la pestaña hacia " + wrapped + ".";
    }

    @Override
    public String frenchOther(String face) {
        return "Planchar la costura y doblar por ella al revés, " + (face.equals("front") ? "anverso con anverso" : "reverso con reverso") + ".";
    }

    @Override
    public String frenchSecond(String band) {
        return "Coser a " + band + " del doblez. Rematar en los dos extremos. Los bordes cortados quedan encerrados.";
    }

    @Override
    public String frenchSharp() {
        return "Marcar bien el doblez con la plancha.";
    }

    @Override
    public String frenchSnip() {
        return "Cortar los hilos sueltos para que no se vea ninguno.";
    }

    @Override
    public String frenchTrim(String length) {
        return "Recortar los dos márgenes a " + length + ".";
    }

    @Override
    public String hemCheck(String size) {
        return "El paño debe medir ahora " + size + ", ancho × alto, anverso arriba.";
    }

    @Override
    public String hemClip(String length) {
        return "Cortar un triangulito de cada esquina: " + length + " por los dos bordes y no más. Así la esquina del dobladillo abulta menos.";
    }

    @Override
    public String hemClipTitle() {
        return "Recortar las cuatro esquinas";
    }

    @Override
    public String hemClosePush() {
        return "Cada dobladillo lateral está abierto en los dos extremos. Meter los hilos sueltos con el ojo de una aguja.";
    }

    @Override
    public String hemCloseSew() {
        return "Cerrar cada abertura a mano con unas puntadas pequeñas.";
    }

    @Override
    public String hemCloseTitle() {
        return "Cerrar las cuatro esquinas";
    }

    @Override
    public String hemCreases() {
        return "Abrir otra vez el dobladillo. En cada esquina se cruzan los dobleces. La esquina terminada estará donde se cruzan los interiores.";
    }

    @Override
    public String hemFold(String edges, String length) {
        return "Doblar " + length + " " + (edges.equals("topBottom") ? "por el borde superior y el inferior" : edges.equals("sides") ? "por el borde izquierdo y el derecho, con los extremos de los dobladillos ya cosidos" : "por los cuatro bordes") + ". Planchar.";
    }

    @Override
    public String hemFoldAgain(String length) {
        return "Doblar otra vez " + length + ", para que el borde cortado quede dentro. Planchar y prender.";
    }

    @Override
    public String hemFoldOnce(String edges, String length) {
        return "Doblar " + length + " " + (edges.equals("topBottom") ? "por el borde superior y el inferior" : edges.equals("sides") ? "por el borde izquierdo y el derecho, con los extremos de los dobladillos ya cosidos" : "por los cuatro bordes") + ". Planchar y prender. El borde cortado queda a la vista.";
    }

    @Override
    public String hemLay(String face) {
        return "Poner el paño con el " + (face.equals("front") ? "anverso" : "reverso") + " arriba. El dobladillo se dobla hacia el " + (face.equals("front") ? "anverso" : "reverso") + ".";
    }

    @Override
    public String hemMitreFold(String face) {
        return "Doblar la esquina por la mitad, " + (face.equals("front") ? "anverso con anverso" : "reverso con reverso") + ", para que sus dos bordes cortados coincidan.";
    }

    @Override
    public String hemMitreMark(String length) {
        return "Marcar los bordes cortados a " + length + " de la punta. Desde esa marca, trazar una línea a escuadra con el doblez diagonal. Llega al doblez donde se cruzan los dobleces interiores.";
    }

    @Override
    public String hemMitreStitch(String about) {
        return "Coser por la línea desde el doblez hasta la marca exterior, " + about + ". Rematar en los dos extremos. Dejar abierto el resto hasta el borde: quedará metido.";
    }

    @Override
    public String hemMitreStitchOut() {
        return "Coser por la línea desde el doblez hasta el borde cortado. Rematar en los dos extremos.";
    }

    @Override
    public String hemMitreTitle() {
        return "Las cuatro esquinas a inglete, una tras otra";
    }

    @Override
    public String hemMitreTrim(String about) {
        return "Cortar la punta junto a la línea, empezando a " + about + " por cada borde. Abrir con la plancha la costurita y volver la esquina.";
    }

    @Override
    public String hemPressTitle() {
        return "Planchar el dobladillo";
    }

    @Override
    public String hemRoundCorner() {
        return "En cada esquina, parar con la aguja clavada, levantar el prensatelas y girar el paño. Al final, coser sobre las primeras puntadas. Planchar.";
    }

    @Override
    public String hemRoundFold() {
        return "Doblar otra vez el dobladillo por sus marcas y sacar bien las esquinas. Planchar y prender.";
    }

    @Override
    public String hemRoundStitch(String edge, String from) {
        return "Pespuntear todo alrededor, a " + edge + " " + (from.equals("fold") ? "del doblez interior" : "del borde cortado") + ". Empezar en medio de un lado.";
    }

    @Override
    public String hemRoundTitle() {
        return "Coser el dobladillo";
    }

    @Override
    public String hemSidesTitle() {
        return "Hacer el dobladillo de los dos lados";
    }

    @Override
    public String hemSquareDiagonals(String length) {
        return "Medir las dos diagonales. Cada una debe medir unos " + length + ". Si difieren, estirar con cuidado la más corta y planchar otra vez.";
    }

    @Override
    public String hemSquarePress(String face) {
        return "Planchar todo el paño con el " + (face.equals("front") ? "anverso" : "reverso") + " arriba.";
    }

    @Override
    public String hemSquareTitle() {
        return "Poner a escuadra";
    }

    @Override
    public String hemSquareTrim() {
        return "Recortar los cuatro bordes solo donde no estén rectos.";
    }

    @Override
    public String hemStitch(String edge, String from, String stitch) {
        return "Pespuntear a " + edge + " " + (from.equals("fold") ? "del doblez interior" : "del borde cortado") + ", con puntadas de " + stitch + ". Rematar en los dos extremos. Planchar.";
    }

    @Override
    public String hemThick(String places, String plies, String side) {
        return "Grueso en el borde " + (side.equals("left") ? "izquierdo" : side.equals("right") ? "derecho" : side.equals("top") ? "superior" : "inferior") + ", a unos " + places + " " + (side.equals("left") ? "desde arriba" : side.equals("right") ? "desde arriba" : "desde la izquierda") + " (visto por el anverso). Ahí entran costuras en el dobladillo: hasta " + plies + " capas.";
    }

    @Override
    public String hemThickCorners(String plies) {
        return "Grueso en cada esquina: hasta " + plies + " capas. Empezar un poco más adentro y coser la esquina al final. Girar ahí el volante.";
    }

    @Override
    public String hemTopBottomTitle() {
        return "Hacer el dobladillo de arriba y de abajo";
    }

    @Override
    public String lappedHook(String band, String wrapping) {
        return "Enganchar los dobleces uno en otro, " + wrapping + " encima, hasta que se solapen " + band + " y los bordes cortados se toquen por dentro. Prender con alfileres.";
    }

    @Override
    public String lappedLay(String added, String face, String side, String work) {
        return "Poner " + work + " con el " + (face.equals("front") ? "anverso" : "reverso") + " arriba. Poner " + added + " al lado, igual, " + (side.equals("left") ? "a la izquierda" : side.equals("right") ? "a la derecha" : side.equals("top") ? "arriba" : "abajo") + ".";
    }

    @Override
    public String lappedPress(String face, String turn, String under, String wrapped, String wrapping) {
        return "Planchar " + turn + " por el borde de " + wrapping + " hacia el " + (face.equals("front") ? "reverso" : "anverso") + ", y " + under + " por el borde de " + wrapped + " hacia el " + (face.equals("front") ? "anverso" : "reverso") + ".";
    }

    @Override
    public String lappedStitch(String edge, String stitch) {
        return "Pespuntear al borde, a " + edge + " del doblez visible, con puntadas de " + stitch + ". Dar la vuelta y pespuntear el otro doblez. Rematar en los dos extremos. Planchar.";
    }

    @Override
    public String layAll(int n) {
        return (n == 1 ? "Colocar la pieza como en el dibujo del anverso, con su etiqueta." : "Colocar las " + n + " piezas como en el dibujo del anverso, cada una con su etiqueta.");
    }

    @Override
    public String layBars() {
        return "La pieza central está en el centro. Una tira se nombra por su vuelta y su turno: 2C es la tercera tira de la segunda vuelta. 2C·1 es la primera parte de esa tira.";
    }

    @Override
    public String layLetters() {
        return "Una letra es una tarea pequeña. Coser primero toda la A, después toda la B y así sucesivamente, en el orden de los números. Guardar cada letra en su montón.";
    }

    @Override
    public String layLook() {
        return "Alejarse y mirar. Es el último momento para intercambiar dos piezas del mismo tamaño.";
    }

    @Override
    public String layStack() {
        return "Apilar las piezas en el orden de costura, la primera arriba.";
    }

    @Override
    public String layTitle() {
        return "Colocarlo todo";
    }

    @Override
    public String layWork() {
        return "En los pasos, «la labor» es todo lo que ya está cosido.";
    }

    @Override
    public String lessThan(String length) {
        return "menos de " + length;
    }

    @Override
    public String nameBar(String label) {
        return "la tira " + label;
    }

    @Override
    public String nameBlock(String letters) {
        return "la sección " + letters;
    }

    @Override
    public String nameFree(String label) {
        return "la pieza " + label;
    }

    @Override
    public String nameHearth() {
        return "la pieza central";
    }

    @Override
    public String nameJoined(String label) {
        return "la tira " + label + " ya unida";
    }

    @Override
    public String nameOffcut(String number) {
        return "el sobrante " + number;
    }

    @Override
    public String namePair(String from, String to) {
        return "la pareja " + from + " y " + to;
    }

    @Override
    public String namePart(String label) {
        return "la parte " + label;
    }

    @Override
    public String namePartTo(String from, String to) {
        return "la parte " + from + " a " + to;
    }

    @Override
    public String namePatch(String label) {
        return "la pieza " + label;
    }

    @Override
    public String namePiece(String label) {
        return "el trozo " + label;
    }

    @Override
    public String nameScrap() {
        return "un retal demasiado pequeño para guardarlo";
    }

    @Override
    public String nameStepBlock(String step) {
        return "la sección del paso " + step;
    }

    @Override
    public String nameStrip(String label) {
        return "la banda " + label;
    }

    @Override
    public String nameThePiece() {
        return "el trozo";
    }

    @Override
    public String nameWork() {
        return "la labor";
    }

    @Override
    public String nameWorkTo(String from, String to) {
        return "la labor " + from + " a " + to;
    }

    @Override
    public String needPiece(String piece, String size) {
        return "trozo " + piece + ", " + size;
    }

    @Override
    public String needPieceDone(String piece, String size) {
        return "trozo " + piece + ", " + size + ", ya cortado";
    }

    @Override
    public String seamCheck(String size, String what) {
        return (what.equals("bar") ? "La tira" : "La labor") + " debe medir ahora " + size + ", ancho × alto, anverso arriba.";
    }

    @Override
    public String seamEdgestitch(String edge, int plies) {
        return "Pespuntear al borde, a " + edge + " del doblez, por las " + (plies == 4 ? "cuatro" : "" + plies) + " capas. Rematar en los dos extremos. Planchar.";
    }

    @Override
    public String seamEven() {
        return "Igualar los dos bordes. Prender con alfileres.";
    }

    @Override
    public String seamFold(String band, String under, String wrapped, String wrapping) {
        return "Doblar hacia dentro " + under + " el borde cortado de " + wrapping + ", para que envuelva el borde cortado de " + wrapped + ". El doblez queda a " + band + " de la costura. Planchar y prender.";
    }

    @Override
    public String seamLay(String added, String face, String part, String side, String work) {
        return "Poner " + work + " con el " + (face.equals("front") ? "anverso" : "reverso") + " hacia arriba. " + (side.equals("left") ? "Volver " + added + " encima como una página" : side.equals("right") ? "Volver " + added + " encima como una página" : side.equals("top") ? "Doblar " + added + " encima hacia abajo" : "Doblar " + added + " encima hacia arriba") + ", con el " + (face.equals("front") ? "anverso" : "reverso") + " hacia abajo, por el " + (part.equals("end") ? "extremo" : "borde") + " " + (side.equals("left") ? "izquierdo" : side.equals("right") ? "derecho" : side.equals("top") ? "superior" : "inferior") + " de " + work + ".";
    }

    @Override
    public String seamLevel(String start) {
        return "Igualar los extremos " + (start.equals("left") ? "a la izquierda" : start.equals("right") ? "a la derecha" : start.equals("top") ? "arriba" : "abajo") + ".";
    }

    @Override
    public String seamOffset(String length, String wrapped, String wrapping) {
        return "Dejar que el borde de " + wrapping + " sobresalga " + length + " del borde de " + wrapped + ". Este margen más ancho envolverá al otro. Prender con alfileres.";
    }

    @Override
    public String seamOpen(String face, String wrapped, String wrapping) {
        return "Abrir la costura, con el " + (face.equals("front") ? "anverso" : "reverso") + " arriba. Planchar los dos márgenes hacia " + wrapped + "; el más ancho, de " + wrapping + ", queda encima.";
    }

    @Override
    public String seamOpenEven(String face, String wrapped, String wrapping) {
        return "Abrir la costura, con el " + (face.equals("front") ? "anverso" : "reverso") + " arriba. Planchar los dos márgenes hacia " + wrapped + "; el de " + wrapping + " queda encima.";
    }

    @Override
    public String seamRunsPast(String added, String end, String length) {
        return added + " se ha cortado " + length + " más larga y sobresale " + (end.equals("left") ? "a la izquierda" : end.equals("right") ? "a la derecha" : end.equals("top") ? "arriba" : "abajo") + ".";
    }

    @Override
    public String seamStitch(String added, String stitch, String top) {
        return "Coser a " + top + " del borde de " + added + ", que está encima, con puntadas de " + stitch + ". Rematar en los dos extremos.";
    }

    @Override
    public String seamStitchBoth(String added, String below, String stitch, String top, String work) {
        return "Coser a " + top + " del borde de " + added + ", que está encima, con puntadas de " + stitch + ". Son " + below + " desde el borde de " + work + ", debajo. Rematar en los dos extremos.";
    }

    @Override
    public String seamThickAt(String end, String places) {
        return places + " " + (end.equals("top") ? "desde arriba" : "desde la izquierda");
    }

    @Override
    public String seamTrimAllowance(String length, String wrapped) {
        return "Recortar el margen de costura de " + wrapped + " a " + length + ".";
    }

    @Override
    public String seamTrimEdge(String across, String added, String length, String way) {
        return "Recortar recto el borde exterior de " + added + ", " + length + ". La labor mide entonces " + across + " de " + (way.equals("wide") ? "ancho" : "alto") + ".";
    }

    @Override
    public String seamTrimEnd(String added, String work) {
        return "Recortar el extremo de " + added + " al ras de " + work + ".";
    }

    @Override
    public String seamWarning(String end, String places, String plies) {
        return "Grueso a unos " + places + " " + (end.equals("top") ? "del extremo superior" : "del extremo izquierdo (visto por el anverso)") + ": esta costura cruza otra, hasta " + plies + " capas. Ir despacio o girar el volante.";
    }

    @Override
    public String thickAt(String places) {
        return "Grueso a " + places;
    }

    @Override
    public String thickBand(String plies) {
        return "Un tramo normal de costura tiene " + plies + " capas.";
    }

    @Override
    public String thickFoot() {
        return "Al llegar, poner un retal doblado detrás del prensatelas para que quede nivelado. Alargar un poco la puntada y girar el volante. No empujar ni tirar nunca de la tela; eso dobla la aguja.";
    }

    @Override
    public String thickHem() {
        return "Grueso donde entran costuras";
    }

    @Override
    public String thickPlace(String height, int n, String plies) {
        return (n == 1 ? "Hasta " + plies + " capas en " + n + " sitio, unos " + height + " de grueso." : "Hasta " + plies + " capas en " + n + " sitios, unos " + height + " de grueso.");
    }

    @Override
    public String thickPress() {
        return "Antes de coser sobre un sitio grueso, plancharlo bien con vapor. O ponerle un retal encima y aplanarlo con un martillo.";
    }

    @Override
    public String threadHand(String percent, String ply, String stitch, String tail, String total) {
        return "Unos " + total + " en total. Poner el largo de puntada en " + stitch + ". Calculado para tela de " + ply + " de grueso, " + tail + " de hilo en los dos extremos de cada fila y un " + percent + " más.";
    }

    @Override
    public String threadMachine(String each, String percent, String ply, String stitch, String tail, String total) {
        return "Unos " + total + " en total; enrollar la mitad, " + each + ", en canillas. Poner el largo de puntada en " + stitch + ". Calculado para tela de " + ply + " de grueso, " + tail + " de hilo en los dos extremos de cada fila y un " + percent + " más.";
    }

    @Override
    public String titleJoin(String added, String work) {
        return "Unir " + added + " y " + work;
    }

    @Override
    public String titleSeam(String added, String side, String work) {
        return added + " " + (side.equals("left") ? "a la izquierda de" : side.equals("right") ? "a la derecha de" : side.equals("top") ? "encima de" : "debajo de") + " " + work;
    }

    @Override
    public String toolCutter() {
        return "Cúter rotatorio, regla y base de corte, o tijeras, regla y jaboncillo";
    }

    @Override
    public String toolHand() {
        return "Agujas finas de coser a mano y máquina de coser para el dobladillo";
    }

    @Override
    public String toolIron() {
        return "Plancha y tabla, un poco de agua o un pulverizador";
    }

    @Override
    public String toolMachine(String needle) {
        return "Máquina de coser con aguja nueva, número " + needle;
    }

    @Override
    public String toolPins() {
        return "Alfileres o pinzas, abreojales, tijeras pequeñas";
    }

    @Override
    public String toolSlips() {
        return "Las etiquetas de las piezas, o papelitos, y un alfiler para cada una";
    }

    @Override
    public String toolThread() {
        return "Hilo, véase «Hilo» en esta guía";
    }

    @Override
    public String touchBoth(String added, String ofAdded, String ofWork, String work) {
        return "El " + (ofAdded.equals("right") ? "derecho" : "revés") + " de " + added + " contra el " + (ofWork.equals("right") ? "derecho" : "revés") + " de " + work + ".";
    }

    @Override
    public String touchFacing(String one, String other, String side) {
        return "El " + (side.equals("right") ? "derecho" : "revés") + " de " + one + " contra " + other + ".";
    }

    @Override
    public String touchLayBoth(String added, String ofAdded, String ofWork, String work) {
        return "El " + (ofAdded.equals("right") ? "derecho" : "revés") + " de " + added + " contra el " + (ofWork.equals("right") ? "derecho" : "revés") + " de " + work + ".";
    }

    @Override
    public String touchLayFacing(String one, String other, String side) {
        return "El " + (side.equals("right") ? "derecho" : "revés") + " de " + one + " contra " + other + ".";
    }

    @Override
    public String touchLayMixed() {
        return "Unas piezas con el derecho por dentro y otras con el revés, como en el dibujo.";
    }

    @Override
    public String touchLayTogether(String side) {
        return (side.equals("right") ? "Derecho con derecho." : "Revés con revés.");
    }

    @Override
    public String touchMixed() {
        return "Unas piezas con el derecho por dentro y otras con el revés, como en el dibujo.";
    }

    @Override
    public String touchTogether(String side) {
        return (side.equals("right") ? "Derecho con derecho." : "Revés con revés.");
    }

    @Override
    public String trialCheck(String size) {
        return "Juntos deben medir ahora " + size + ". Medir primero a través de la costura.";
    }

    @Override
    public String trialCut(String side) {
        return "Cortar dos retales cuadrados de " + side + " y coserlos como en la primera costura de abajo.";
    }

    @Override
    public String trialFells(String fells) {
        return "Todas las costuras se planchan hacia el " + (fells.equals("front") ? "anverso" : "reverso") + "; el " + (fells.equals("front") ? "reverso" : "anverso") + " queda liso. Así se distinguen las dos caras.";
    }

    @Override
    public String trialFree() {
        return "Medir después de cada paso. Aquí no se corta nada de más. Si una parte se desvía más de un hilo o dos, ya no casa con la vecina.";
    }

    @Override
    public String trialLeeway(String leeway) {
        return "Medir después de cada paso. Cada tira se corta " + leeway + " más larga, así que una pequeña diferencia no importa. Si es mayor, descoser.";
    }

    @Override
    public String trialLength(String loss, String narrow, String stitch, String wide) {
        return "Poner el largo de puntada en " + stitch + ". La costura gasta " + narrow + " de un borde y " + wide + " del otro: " + loss + " en total.";
    }

    @Override
    public String trialTitle() {
        return "Probar la costura en dos retales";
    }

    @Override
    public String trialWidth() {
        return "Si la prueba queda estrecha, coser un hilo más cerca del borde. Si queda ancha, coser un hilo más adentro.";
    }

    @Override
    public String washAll() {
        return "Todas las telas están lavadas.";
    }

    @Override
    public String washDye(String fabrics) {
        return "Los colores intensos pueden desteñir sobre los claros. Remojar una esquina de " + fabrics + " media hora en agua tibia con jabón y apretarla mojada sobre tela blanca. Si mancha, lavar esa tela sola hasta que no manche, o prescindir de ella.";
    }

    @Override
    public String washMixed(String pieces, String which) {
        return "Hay trozos lavados y sin lavar. " + (which.equals("washed") ? "Lavados" : "Sin lavar") + ": " + pieces + ".";
    }

    @Override
    public String washMixedThen(String length) {
        return "Lavar primero los que están sin lavar y medirlos otra vez. A lo largo de este paño podrían encoger unos " + length + " más que los otros, y el paño se arrugaría.";
    }

    @Override
    public String washNone() {
        return "No se ha lavado nada. Lavarlo todo ahora como se lavará el paño terminado, y medir otra vez. Si ha encogido, planear de nuevo. O no lavar nada.";
    }

    @Override
    public String washNoneSaid() {
        return "Según la lista de telas, no se ha lavado nada. Lavarlo todo ahora como se lavará el paño terminado, y medir otra vez. Si ha encogido, planear de nuevo. O no lavar nada.";
    }

    @Override
    public String washSomeUnknown(int n, String pieces) {
        return (n == 1 ? "La lista de telas no dice si está lavado: " + pieces + ". En caso de duda, lavar." : "La lista de telas no dice si están lavados: " + pieces + ". En caso de duda, lavar.");
    }

    @Override
    public String washUnknown() {
        return "La lista de telas no dice qué se ha lavado. Lavarlo todo como se lavará el paño terminado, y medir otra vez. Si ha encogido, planear de nuevo. O no lavar nada.";
    }

    @Override
    public String washingAlone() {
        return "Lavar el paño terminado solo la primera vez, con el cuidado que pida su tela más delicada. En caso de duda, a mano con agua fresca.";
    }

    @Override
    public String washingSquare(String face) {
        return "Estirarlo a escuadra húmedo y secarlo plano. Plancharlo por el " + (face.equals("front") ? "anverso" : "reverso") + " antes de que se seque del todo.";
    }

    @Override
    public String whipOpen(String face) {
        return "Abrir la costura y plancharla. Los bordes cortados quedan en el " + (face.equals("front") ? "anverso" : "reverso") + ".";
    }

    @Override
    public String whipPress(String face, String narrow, String wide, String wrapped, String wrapping) {
        return "Planchar " + wide + " por el borde de " + wrapping + " y " + narrow + " por el borde de " + wrapped + " hacia el " + (face.equals("front") ? "anverso" : "reverso") + ".";
    }

    @Override
    public String whipSew() {
        return "Igualar los dos dobleces. Coserlos a mano a punto por encima, cada 1 mm más o menos. Cada puntada toma un hilo o dos de ambos dobleces.";
    }
}
