package hearthcloth.words.teaching;

/** The room of teaching in Spanish. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class SpanishTeaching implements TeachingWords {

    @Override
    public String classBegin() {
        return "Empezar la clase";
    }

    @Override
    public String classCode() {
        return "Código";
    }

    @Override
    public String classCount(int inside) {
        return (inside == 0 ? "Todavía no hay nadie." : inside == 1 ? "Hay " + inside + " persona." : "Hay " + inside + " personas.");
    }

    @Override
    public String classEnd() {
        return "Terminar la clase";
    }

    @Override
    public String classEndAsk() {
        return "¿Terminar la clase? Todas las personas salen, y lo que no hayan guardado se pierde.";
    }

    @Override
    public String classEnded() {
        return "La clase ha terminado. Todas las personas han salido.";
    }

    @Override
    public String classFile() {
        return "El archivo";
    }

    @Override
    public String classFromCloth() {
        return "Empezar con la idea de un paño";
    }

    @Override
    public String classFromFile() {
        return "Empezar con un archivo de pautas";
    }

    @Override
    public String classHidden() {
        return "todavía no muestra nada";
    }

    @Override
    public String classIntro() {
        return "Quienes aprenden entran con su teléfono y escriben sus propios retales. Cada persona recibe un paño según tu idea. La pared muestra lo que quieran mostrar.";
    }

    @Override
    public String classIsOut(String name) {
        return name + " ha salido.";
    }

    @Override
    public String classNoCloth() {
        return "Todavía no hay un paño con centro y tiras.";
    }

    @Override
    public String classNotShared() {
        return "Solo se puede entrar si el taller está abierto a la red. Ciérralo y ábrelo con ./hearthcloth --lan, en una red de confianza.";
    }

    @Override
    public String classOut(String name) {
        return "Hacer salir a " + name;
    }

    @Override
    public String classPoint() {
        return "Apunta la cámara del teléfono a la imagen, o abre la dirección y escribe el código. Deja entrar a todo el mundo mientras dura la clase.";
    }

    @Override
    public String classQr() {
        return "Código QR de la dirección con el código";
    }

    @Override
    public String classSeams(String all, String sewn) {
        return sewn + " de " + all + " costuras cosidas";
    }

    @Override
    public String classTitle() {
        return "Una clase";
    }

    @Override
    public String classWall() {
        return "La pared";
    }

    @Override
    public String classWith() {
        return "Empezar una clase con ella";
    }

    @Override
    public String comeCode() {
        return "Código de la pantalla de clase";
    }

    @Override
    public String comeFull() {
        return "La clase está completa.";
    }

    @Override
    public String comeIn() {
        return "Entrar";
    }

    @Override
    public String comeName() {
        return "Tu nombre, como lo ven los demás";
    }

    @Override
    public String comeNone() {
        return "Ahora no hay clase. Pregunta a quien enseña.";
    }

    @Override
    public String comeTitle() {
        return "Entrar en la clase";
    }

    @Override
    public String comeWait() {
        return "Demasiados códigos equivocados. Espera diez minutos.";
    }

    @Override
    public String comeWrong() {
        return "Ese código no es correcto. Mira la pantalla de clase.";
    }

    @Override
    public String cutCut() {
        return "Corte";
    }

    @Override
    public String cutFabric() {
        return "Tela";
    }

    @Override
    public String cutList() {
        return "Lista de corte";
    }

    @Override
    public String cutPatch() {
        return "Parte";
    }

    @Override
    public String cutPiece() {
        return "Pieza";
    }

    @Override
    public String ideaBack() {
        return "Reverso";
    }

    @Override
    public String ideaBy(String name) {
        return "Una idea de " + name;
    }

    @Override
    public String ideaCare(String words) {
        return "Cuidado: " + words;
    }

    @Override
    public String ideaEmpty() {
        return "No hay nada que mostrar.";
    }

    @Override
    public String ideaExample(String size) {
        return "El anverso de un ejemplo, " + size + "; sus telas son inventadas.";
    }

    @Override
    public String ideaExampleBack() {
        return "Su reverso.";
    }

    @Override
    public String ideaFirst() {
        return "Un primer paño; buscando uno mejor …";
    }

    @Override
    public String ideaFoot() {
        return "Esta página no pide nada a ninguna red y no guarda nada. Todo se planea en tu propio aparato. Hecho con Hearthcloth.";
    }

    @Override
    public String ideaFront() {
        return "Anverso";
    }

    @Override
    public String ideaGuide() {
        return "La guía entera, página por página";
    }

    @Override
    public String ideaHeapHelp() {
        return "Ancho a lo ancho, largo a lo largo del orillo. Estas líneas son un ejemplo; escribe las tuyas encima.";
    }

    @Override
    public String ideaKeep() {
        return "Guardar su plan";
    }

    @Override
    public String ideaLabel() {
        return "La idea";
    }

    @Override
    public String ideaLanguage() {
        return "Idioma";
    }

    @Override
    public String ideaMade() {
        return "Cómo se hace";
    }

    @Override
    public String ideaMadeMore() {
        return "Costura, dobladillo, atado, lavado y dónde tener cuidado";
    }

    @Override
    public String ideaNoCloth(String all, String name) {
        return "Ningún archivo ni paño tuyo se llama «" + name + "»; hay " + all + ".";
    }

    @Override
    public String ideaNoneKept(String name) {
        return "Ningún archivo ni paño tuyo se llama «" + name + "»; no hay ninguno con centro y tiras.";
    }

    @Override
    public String ideaOld() {
        return "Este navegador no puede planear; abre la página en uno más nuevo (de 2023 o después).";
    }

    @Override
    public String ideaOne() {
        return "Aquí está tu paño.";
    }

    @Override
    public String ideaOwn() {
        return "El tuyo, con tus retales";
    }

    @Override
    public String ideaPieces() {
        return "Qué cortar de cada pieza";
    }

    @Override
    public String ideaPrint() {
        return "Imprimir este paño";
    }

    @Override
    public String ideaSave() {
        return "Guardar las pautas como archivo";
    }

    @Override
    public String ideaStop() {
        return "Parar";
    }

    @Override
    public String ideaStopped() {
        return "Parado.";
    }

    @Override
    public String ideaSuchAs(String fabric) {
        return "por ejemplo " + fabric;
    }

    @Override
    public String ideaTied() {
        return "Atado.";
    }

    @Override
    public String ideaTrouble() {
        return "El planeo se detuvo. Tus líneas siguen aquí; prueba con menos piezas.";
    }

    @Override
    public String ideaTwo() {
        return "Aquí está tu paño, y otro.";
    }

    @Override
    public String ideaTying() {
        return "Cómo se ata";
    }

    @Override
    public String kitCame() {
        return "El kit está aquí: sus piezas están en tu reserva, y el paño está planeado con ellas.";
    }

    @Override
    public String kitHelp() {
        return "Un archivo de kit trae sus propias piezas.";
    }

    @Override
    public String kitRefused() {
        return "Este kit no sirve: es de un Hearthcloth más nuevo, está dañado o se cambió a mano. Pídelo de nuevo; no se ha tomado nada.";
    }

    @Override
    public String kitsAnew() {
        return "Ya no están aquí; planéalos de nuevo.";
    }

    @Override
    public String kitsAsked(String asked) {
        return "Pedido: " + asked;
    }

    @Override
    public String kitsCount() {
        return "Cuántas personas";
    }

    @Override
    public String kitsCountFault(String given, String most) {
        return "«" + given + "» no sirve como número de alumnos; escriba un número del 1 al " + most + ".";
    }

    @Override
    public String kitsEmpty() {
        return "Tu reserva no tiene ninguna pieza libre. Guarda algo primero.";
    }

    @Override
    public String kitsFair(String least, String most) {
        return "Más empalmes en un paño: " + most + ". Ningún reparto de este montón tiene menos de " + least + ".";
    }

    @Override
    public String kitsFile() {
        return "Archivo del kit";
    }

    @Override
    public String kitsForget() {
        return "Apartar este plan";
    }

    @Override
    public String kitsGoing(String all, String tried) {
        return "Buscando un reparto más justo: " + tried + " de " + all + ".";
    }

    @Override
    public String kitsGuide() {
        return "Guía para una clase";
    }

    @Override
    public String kitsHeap(int count) {
        return (count == 1 ? "Hay " + count + " pieza libre en tu reserva." : "Hay " + count + " piezas libres en tu reserva.");
    }

    @Override
    public String kitsInTurn(String joins, String lacking) {
        return "Uno tras otro, el peor tendría " + joins + ", y " + lacking + " se quedarían sin nada.";
    }

    @Override
    public String kitsIntro() {
        return "Planear muchos paños juntos de un montón: nada se promete dos veces, y a quien le va peor le va lo mejor posible.";
    }

    @Override
    public String kitsJoins(int count) {
        return (count == 0 ? "ningún empalme" : count == 1 ? "" + count + " empalme" : "" + count + " empalmes");
    }

    @Override
    public String kitsKeep() {
        return "Guardar estos paños";
    }

    @Override
    public String kitsKeepHelp() {
        return "Van a Hechos, y sus piezas les quedan prometidas en tu reserva.";
    }

    @Override
    public String kitsKept(int count) {
        return (count == 1 ? "Se ha guardado " + count + " paño." : "Se han guardado " + count + " paños.") + " Sus piezas les quedan prometidas.";
    }

    @Override
    public String kitsLines() {
        return "Un paño por línea";
    }

    @Override
    public String kitsLinesHelp() {
        return "Un nombre, luego un tamaño o un regalo. O pega una lista cuya primera línea nombre las columnas: name, size, gift, tie, fabrics.";
    }

    @Override
    public String kitsList() {
        return "Una temporada: un paño por línea";
    }

    @Override
    public String kitsMove() {
        return "Dar una pieza a otro paño";
    }

    @Override
    public String kitsMoveIt() {
        return "Darla y que los demás se acomoden";
    }

    @Override
    public String kitsMoved(String name, String piece) {
        return "La pieza " + piece + " está ahora en el paño de " + name + ". Los demás se han acomodado.";
    }

    @Override
    public String kitsNearest() {
        return "Es lo más cercano que se pudo hacer.";
    }

    @Override
    public String kitsNotMoved(String name, String piece) {
        return "No se encontró un paño para " + name + " que use la pieza " + piece + ". No se ha cambiado nada.";
    }

    @Override
    public String kitsNothing() {
        return "No se pudo hacer nada.";
    }

    @Override
    public String kitsPiece() {
        return "Pieza";
    }

    @Override
    public String kitsPlan() {
        return "Planear la clase";
    }

    @Override
    public String kitsPlanGifts() {
        return "Planear los regalos";
    }

    @Override
    public String kitsPrint() {
        return "Etiquetas, lista de compra y hoja de quien enseña";
    }

    @Override
    public String kitsSample() {
        return "Anna, 40 cm\nAbuela, box 30 x 20 x 8 cm";
    }

    @Override
    public String kitsSize() {
        return "Tamaño terminado";
    }

    @Override
    public String kitsStop() {
        return "Parar y tomar lo mejor hasta ahora";
    }

    @Override
    public String kitsStudents() {
        return "Una clase: tantos paños iguales";
    }

    @Override
    public String kitsTheList() {
        return "La lista";
    }

    @Override
    public String kitsTitle() {
        return "Kits y regalos";
    }

    @Override
    public String kitsTo() {
        return "A";
    }

    @Override
    public String mineAgain() {
        return "Planear de nuevo";
    }

    @Override
    public String mineAnother() {
        return "Mostrar el otro";
    }

    @Override
    public String mineCentimetres() {
        return "centímetros";
    }

    @Override
    public String mineFavourite() {
        return "La tela que más te gusta";
    }

    @Override
    public String mineGuide() {
        return "Guía para imprimir";
    }

    @Override
    public String mineHelp() {
        return "Una línea para cada clase: ancho por largo, cuántas, qué es. Ancho a lo ancho, largo a lo largo del orillo.";
    }

    @Override
    public String mineHide() {
        return "Quitarlo de la pared";
    }

    @Override
    public String mineInches() {
        return "pulgadas";
    }

    @Override
    public String mineKeep() {
        return "Al terminar la clase no se guarda nada. Guarda lo que quieras llevarte.";
    }

    @Override
    public String mineKeeps() {
        return "Cumple todas las reglas de la idea.";
    }

    @Override
    public String mineLeave() {
        return "Salir de la clase";
    }

    @Override
    public String mineLess() {
        return "Una costura menos";
    }

    @Override
    public String mineLooking() {
        return "Buscando tu paño …";
    }

    @Override
    public String mineMore() {
        return "Una costura más";
    }

    @Override
    public String mineNearest() {
        return "Lo más cercano que dan tus piezas.";
    }

    @Override
    public String mineNone() {
        return "Con estas piezas todavía no sale un paño.";
    }

    @Override
    public String mineOnWall() {
        return "La pared muestra su imagen, su tamaño y tu nombre.";
    }

    @Override
    public String minePlan() {
        return "Planear mi paño";
    }

    @Override
    public String minePlanFile() {
        return "Archivo del plan para guardar";
    }

    @Override
    public String mineRuler() {
        return "Regla";
    }

    @Override
    public String mineRules() {
        return "Las reglas de la idea";
    }

    @Override
    public String mineSample() {
        return "10 x 20 cm, 12 piezas, estampado verde";
    }

    @Override
    public String mineScraps() {
        return "Tus piezas";
    }

    @Override
    public String mineScrapsOnly() {
        return "Tus piezas no dan un centro con tiras alrededor. Los retales van unidos tal como son.";
    }

    @Override
    public String mineShow() {
        return "Mostrarlo en la pared";
    }

    @Override
    public String mineWhy() {
        return "Por qué";
    }
}
