package hearthcloth.words.making;

/** The room of making in Spanish. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class SpanishMaking implements MakingWords {

    @Override
    public String amissBar(String bar) {
        return "La tira " + bar + " es corta: largo, con los extremos";
    }

    @Override
    public String amissBarNoWay(String told) {
        return told + " Con lo que hay no se encontró cómo seguir: añada tela, o descosa la última tira y cosa otra.";
    }

    @Override
    public String amissBarPage() {
        return "La tira es corta";
    }

    @Override
    public String amissBarSewn(String bar) {
        return "La tira " + bar + " ya está cosida; descósala primero.";
    }

    @Override
    public String amissBarTold(String bar, String measured, String planned) {
        return "La tira " + bar + " mide " + measured + "; estaban previstos " + planned + ".";
    }

    @Override
    public String amissRedo() {
        return "Tengo que repetir este paso";
    }

    @Override
    public String amissTitle() {
        return "Algo salió mal";
    }

    @Override
    public String back() {
        return "Atrás";
    }

    @Override
    public String care() {
        return "Cuidado";
    }

    @Override
    public String caution(String topic, String words) {
        return topic + ": " + words;
    }

    @Override
    public String cutAgain() {
        return "Sus trozos están otra vez en la lista de telas, con sus cortes marcados.";
    }

    @Override
    public String cutAlready() {
        return "Este paño ya está cortado.";
    }

    @Override
    public String cutAmiss() {
        return "No se puede cortar como está previsto: abajo se ve por qué.";
    }

    @Override
    public String cutChanged() {
        return "Algo cambió desde que se cortó: deshágalo primero con Deshacer, en la página del paño.";
    }

    @Override
    public String cutGone() {
        return "Este corte ya no está en el plan; cargue la página otra vez.";
    }

    @Override
    public String cutIsCut(int n) {
        return (n == 1 ? "Cortado. " + n + " sobrante ha vuelto a la lista de telas." : "Cortado. " + n + " sobrantes han vuelto a la lista de telas.");
    }

    @Override
    public String cutNone() {
        return "No existe ese corte.";
    }

    @Override
    public String cutPieceGone() {
        return "Este trozo ya no está en el plan; cargue la página otra vez.";
    }

    @Override
    public String cutTicked(int n) {
        return (n == 1 ? "Un corte está marcado." : "" + n + " cortes están marcados.");
    }

    @Override
    public String cutTitle(String cloth) {
        return "Cortar: " + cloth;
    }

    @Override
    public String cutWhich() {
        return "¿Qué paño va a cortar?";
    }

    @Override
    public String done() {
        return "Hecho";
    }

    @Override
    public String height() {
        return "Alto";
    }

    @Override
    public String keys() {
        return "Espacio o Av Pág: hecho. Re Pág: atrás. Un pedal envía estas teclas.";
    }

    @Override
    public String length() {
        return "Largo";
    }

    @Override
    public String listed(String before, String last) {
        return before + " y " + last;
    }

    @Override
    public String lookAgain() {
        return "Mire otra vez";
    }

    @Override
    public String matAll() {
        return "Todos los trozos";
    }

    @Override
    public String matAllAreCut() {
        return "Todos los trozos están cortados.";
    }

    @Override
    public String matAllDone(int n) {
        return (n == 2 ? "Los dos cortes, hechos" : n == 1 ? "El corte, hecho" : "Los " + n + " cortes, hechos");
    }

    @Override
    public String matAllIsCut() {
        return "Todo está cortado";
    }

    @Override
    public String matAsItIs() {
        return "Se usa tal cual; no hay nada que cortar.";
    }

    @Override
    public String matClothIsCut() {
        return "Este paño está cortado.";
    }

    @Override
    public String matCount(String all, String done) {
        return done + " de " + all;
    }

    @Override
    public String matCounted() {
        return "trozos cortados";
    }

    @Override
    public String matCutOf(String all, String n) {
        return "Corte " + n + " de " + all;
    }

    @Override
    public String matDescribed(String fabric, String size) {
        return fabric + ", " + size;
    }

    @Override
    public String matGives(String gives) {
        return "Da: " + gives + ".";
    }

    @Override
    public String matLeave() {
        return "Los trozos salen de la lista de telas y los sobrantes vuelven.";
    }

    @Override
    public String matMore() {
        return "¿Salió mal? Más";
    }

    @Override
    public String matNextPiece() {
        return "Trozo siguiente";
    }

    @Override
    public String matNow(String measure, String n) {
        return "Corte " + n + ": " + measure + ".";
    }

    @Override
    public String matOff(String side) {
        return "fuera por " + (side.equals("left") ? "la izquierda" : side.equals("right") ? "la derecha" : side.equals("top") ? "arriba" : "abajo");
    }

    @Override
    public String matPicture() {
        return "Dibujo del corte";
    }

    @Override
    public String matPiece(String done, String n, String words) {
        return "Trozo " + n + ", " + words + (done.equals("yes") ? ", cortado" : "");
    }

    @Override
    public String matPieceIsCut() {
        return "Este trozo está cortado.";
    }

    @Override
    public String matPin() {
        return "Prenda su etiqueta.";
    }

    @Override
    public String matPrintSlips() {
        return "Imprimir todas las etiquetas";
    }

    @Override
    public String matProgress(String all, String done, String n) {
        return "Trozo " + n + " de " + all + "; " + done + " hechos.";
    }

    @Override
    public String matSew() {
        return "Coserlo";
    }

    @Override
    public String matShown(String n, String words) {
        return "Trozo " + n + ": " + words;
    }

    @Override
    public String measureAgain() {
        return "Atrás, mediré otra vez";
    }

    @Override
    public String measuredBefore() {
        return "Los pasos anteriores aún no están hechos.";
    }

    @Override
    public String measuredCrooked(String by, String trim) {
        return "Un extremo es " + by + " más largo que el otro: póngalo antes a escuadra y recórtelo a " + trim + "; después mida otra vez.";
    }

    @Override
    public String measuredFar(String planned, String written) {
        return written + " está lejos de los " + planned + " previstos; mida otra vez.";
    }

    @Override
    public String measuredFarMeant(String meant, String planned, String written) {
        return written + " está lejos de los " + planned + " previstos; ¿son " + meant + "?";
    }

    @Override
    public String measuredIsIt(String meant) {
        return "¿Son " + meant + "?";
    }

    @Override
    public String measuredIsRight() {
        return "¿Es correcto?";
    }

    @Override
    public String measuredOtherStep() {
        return "Mida después de coser una tira; este paso es otro.";
    }

    @Override
    public String measuredScraps() {
        return "Un paño de retales no tiene tiras que cortar de nuevo: descosa una costura que se desvíe más de un hilo o dos.";
    }

    @Override
    public String measuredSquare() {
        return "Póngalo antes a escuadra";
    }

    @Override
    public String measuredSwapped() {
        return "¿Es al revés?";
    }

    @Override
    public String measuredSwappedHow(String planned, String size) {
        return size + " está al revés: debería ser unos " + planned + ", primero el ancho, anverso arriba.";
    }

    @Override
    public String measuredTitle() {
        return "Su medida";
    }

    @Override
    public String measuredTold(String across, String both, String height, String size, String up, String width) {
        return "Mide " + size + ": " + (across.equals("less") ? "" + width + " más estrecho" : across.equals("more") ? "" + width + " más ancho" : "") + (both.equals("yes") ? " y " : "") + (up.equals("less") ? "" + height + " más bajo" : up.equals("more") ? "" + height + " más alto" : "") + " de lo previsto.";
    }

    @Override
    public String measuredTooMany(String written) {
        return "«" + written + "» son más de dos medidas; escriba una, o los dos extremos.";
    }

    @Override
    public String more() {
        return "Más";
    }

    @Override
    public String printGuide() {
        return "La guía completa para imprimir";
    }

    @Override
    public String printPage() {
        return "Imprimir esta página";
    }

    @Override
    public String sewAsPlanned() {
        return "Como estaba previsto. Siga cosiendo.";
    }

    @Override
    public String sewAsleep() {
        return "Este aparato puede dormirse mientras tanto: ajuste la pantalla para que siga encendida.";
    }

    @Override
    public String sewBackToCut() {
        return "Volver al corte";
    }

    @Override
    public String sewDiffers() {
        return "El mío no";
    }

    @Override
    public String sewFinish() {
        return "Cosido. Su foto y su etiqueta";
    }

    @Override
    public String sewFollows() {
        return "Ver qué pasa";
    }

    @Override
    public String sewHours(String hours, String minutes) {
        return hours + " h " + minutes + " min";
    }

    @Override
    public String sewHow() {
        return "¿Cómo?";
    }

    @Override
    public String sewHowLabel() {
        return "Cómo se hace";
    }

    @Override
    public String sewLookOnly() {
        return "Solo para mirar, hasta que todo esté cortado.";
    }

    @Override
    public String sewMeasureHow(String unit) {
        return "Después de la costura. Basta un número; mida con los bordes cortados. Si los dos extremos difieren, escriba los dos, como " + (unit.equals("in") ? "12 1/8 y 12 3/8" : "31,2 y 31,7") + ".";
    }

    @Override
    public String sewMeasures() {
        return "Ahora debe medir";
    }

    @Override
    public String sewMeasuresHow() {
        return "ancho × alto, anverso arriba";
    }

    @Override
    public String sewMinutes(String minutes) {
        return minutes + " min";
    }

    @Override
    public String sewNext() {
        return "Siguiente";
    }

    @Override
    public String sewNoStep() {
        return "No existe ese paso; cargue la página otra vez.";
    }

    @Override
    public String sewNotCut() {
        return "Este paño aún no está todo cortado. Marque primero sus cortes y después «Todo está cortado».";
    }

    @Override
    public String sewPace(String time) {
        return "A su ritmo faltan unos " + time + ".";
    }

    @Override
    public String sewPlanned() {
        return "Planeado otra vez. Siga cosiendo.";
    }

    @Override
    public String sewPlannedCut() {
        return "Planeado otra vez. Corte primero esto y siga cosiendo.";
    }

    @Override
    public String sewProgress(String all, String done, String n) {
        return "Paso " + n + " de " + all + (done.equals("yes") ? ", hecho" : "");
    }

    @Override
    public String sewRead() {
        return "Leérmelo";
    }

    @Override
    public String sewSaid(String progress, String title) {
        return progress + ". " + title;
    }

    @Override
    public String sewThick(String where) {
        return where + ": vaya despacio ahí.";
    }

    @Override
    public String sewTitle(String cloth) {
        return "Coser: " + cloth;
    }

    @Override
    public String sewToCut() {
        return "Al corte";
    }

    @Override
    public String sewToNow() {
        return "Al paso en que está";
    }

    @Override
    public String sewWhich() {
        return "¿Qué paño va a coser?";
    }

    @Override
    public String sewWhole(String all, String done) {
        return "El paño entero: " + done + " de " + all + " pasos hechos";
    }

    @Override
    public String sewYes() {
        return "Sí, eso es";
    }

    @Override
    public String showWays() {
        return "Ver cómo seguir";
    }

    @Override
    public String sideAlike() {
        return "Los dos lados de su tela son iguales. Siga cosiendo.";
    }

    @Override
    public String sideCannot() {
        return "No puede ser: las tiras que faltan, como están cortadas, ya no encajarían en la labor.";
    }

    @Override
    public String sideFrayed() {
        return "Al descoser, los bordes se deshilachan y pierden un poco; mida otra vez después de la costura.";
    }

    @Override
    public String sideGoBack() {
        return "Descoser y volver";
    }

    @Override
    public String sideLead(String bar, String wrong) {
        return "La tira " + bar + " está " + (wrong.equals("face") ? "con el revés arriba" : "en el lado equivocado de la labor") + ". ¿Qué hacer?";
    }

    @Override
    public String sideLeave() {
        return "Dejarla así";
    }

    @Override
    public String sideLeft() {
        return "Desde ahora los dibujos lo muestran así.";
    }

    @Override
    public String sideLooks() {
        return "El anverso queda así; no hay que cortar ni descoser nada.";
    }

    @Override
    public String sideNoBar() {
        return "En este paso no se cose ninguna tira; elija el paso de la tira.";
    }

    @Override
    public String sideNoFit() {
        return "Las tiras que faltan no encajarían así; descósala.";
    }

    @Override
    public String sideNotSewn() {
        return "Este paso aún no está cosido.";
    }

    @Override
    public String sidePage() {
        return "Mal cosida";
    }

    @Override
    public String sidePicture(String bar, String wrong) {
        return "Anverso, con la tira " + bar + " " + (wrong.equals("face") ? "por la otra cara" : "al otro lado de la labor");
    }

    @Override
    public String sideRight() {
        return "Atrás, está bien";
    }

    @Override
    public String sideSteps(int n) {
        return (n == 1 ? "Para llegar a la tira se deshace un paso y se hace otra vez:" : "Para llegar a la tira se deshacen " + n + " pasos y se hacen otra vez, el último primero:");
    }

    @Override
    public String sideUnpick() {
        return "Descoser";
    }

    @Override
    public String sideWrong(String bar, String wrong) {
        return "La tira " + bar + " está " + (wrong.equals("face") ? "con el revés arriba" : "en el lado equivocado de la labor");
    }

    @Override
    public String smallAcross() {
        return "De lado a lado";
    }

    @Override
    public String smallAllCut() {
        return "Todas las piezas de este trozo están cortadas; quite la marca del corte que salió mal.";
    }

    @Override
    public String smallDown() {
        return "De arriba abajo";
    }

    @Override
    public String smallHow() {
        return "De este trozo, marque los cortes que están bien. ¿Cuánto mide la pieza siguiente, tal como está en el dibujo?";
    }

    @Override
    public String smallLarger() {
        return "Lo que queda no puede ser mayor que el trozo; compruebe los dos lados.";
    }

    @Override
    public String smallNoWay() {
        return "Con lo que hay no se encontró cómo seguir.";
    }

    @Override
    public String smallPage() {
        return "Salió pequeña";
    }

    @Override
    public String smallTitle() {
        return "La pieza salió pequeña";
    }

    @Override
    public String smallWrite() {
        return "Escriba cuánto mide ahora la pieza, a lo ancho y a lo largo.";
    }

    @Override
    public String waysAfterCut(String way) {
        return (way.equals("WIDER_NEIGHBOURS") ? "Usarla tal cual y cortar más anchas las tiras de al lado" : way.equals("ANOTHER_PIECE") ? "Cortarla otra vez" : way.equals("JOINED_STRIP") ? "Añadirle una tira" : "Usarla tal cual; el paño será más pequeño");
    }

    @Override
    public String waysCut(String told) {
        return told + " Lo cortado queda como está. ¿Cómo seguir?";
    }

    @Override
    public String waysGone() {
        return "Esa manera no existe; mida otra vez.";
    }

    @Override
    public String waysLacking() {
        return "No queda bastante tela.";
    }

    @Override
    public String waysMeasured(String way) {
        return (way.equals("accept") ? "Seguir así" : way.equals("keep") ? "Mantener el tamaño: cortar de nuevo las tiras que faltan" : "Añadir una vuelta estrecha");
    }

    @Override
    public String waysNoCut() {
        return "Todas las tiras ya cortadas son bastante largas: nada que cortar, solo un poco más o menos que recortar.";
    }

    @Override
    public String waysPicture(String size) {
        return "El paño entonces, " + size;
    }

    @Override
    public String waysSewn(String told) {
        return told + " Lo cosido queda como está. ¿Cómo seguir?";
    }

    @Override
    public String waysShortBar(String way) {
        return (way.equals("JOINED_STRIP") ? "Añadirle una tira" : way.equals("ANEW") ? "Hacer la tira de nuevo" : way.equals("PIECED") ? "Hacer la tira de nuevo, en partes" : "Usarla tal cual y recortar la labor");
    }

    @Override
    public String waysSize(String size) {
        return "El paño medirá " + size + ".";
    }

    @Override
    public String waysSizeLabel() {
        return "Tamaño del paño";
    }

    @Override
    public String waysThis() {
        return "Elegir esto";
    }

    @Override
    public String waysTies(String gift, String tie) {
        return "Con «" + tie + "» sirve para " + gift + ".";
    }

    @Override
    public String waysToCut(String bars, int n, int pieces) {
        return "Para cortar ahora: " + (n == 1 ? "la tira" : "las tiras") + " " + bars + ", de " + (pieces == 1 ? "un trozo" : "" + pieces + " trozos") + ".";
    }

    @Override
    public String width() {
        return "Ancho";
    }

    @Override
    public String wrongAllUsed() {
        return "Todas las piezas ya cortadas se usan tal cual.";
    }

    @Override
    public String wrongChange() {
        return "Cambie una tira o un ancho.";
    }

    @Override
    public String wrongFewerJoins(int n) {
        return "Lleva " + (n == 1 ? "" + n + " unión menos" : "" + n + " uniones menos") + ".";
    }

    @Override
    public String wrongHow() {
        return "Quite la marca de lo que se estropeó. Las piezas con los cortes marcados quedan como están; lo demás se planea otra vez. ¿Cuánto mide la parte más grande de este trozo que falta por cortar? Deje los dos vacíos si no queda nada.";
    }

    @Override
    public String wrongLateLacking(String why) {
        return "No queda bastante tela para lo que falta por cortar. " + why + " Añada tela y dígalo aquí otra vez.";
    }

    @Override
    public String wrongLatePlanned() {
        return "Planeado otra vez con lo que queda. Lo cosido y lo cortado queda como está.";
    }

    @Override
    public String wrongMoreJoins(int n) {
        return "Lleva " + (n == 1 ? "" + n + " unión más" : "" + n + " uniones más") + ".";
    }

    @Override
    public String wrongPlan() {
        return "Planear otra vez lo demás";
    }

    @Override
    public String wrongPlanned() {
        return "Planeado otra vez con lo que queda.";
    }

    @Override
    public String wrongSameJoins() {
        return "Lleva tantas uniones como antes.";
    }

    @Override
    public String wrongScraps() {
        return "Un paño de retales no se planea otra vez tras un error: corte la pieza de otro retal al menos igual de grande, o busque propuestas con lo que queda.";
    }

    @Override
    public String wrongSomeUsed(int n, int used) {
        return "De " + (n == 1 ? "" + n + " pieza ya cortada" : "" + n + " piezas ya cortadas") + ", " + (used == 1 ? "se usa " + used + " tal cual" : "se usan " + used + " tal cual") + ".";
    }

    @Override
    public String wrongTitle() {
        return "Lo he cortado mal";
    }
}
