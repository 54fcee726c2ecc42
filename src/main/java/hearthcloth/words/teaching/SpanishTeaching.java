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
