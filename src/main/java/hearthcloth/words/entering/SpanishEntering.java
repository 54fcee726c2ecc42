package hearthcloth.words.entering;

/** The room of entering in Spanish. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class SpanishEntering implements EnteringWords {

    @Override
    public String awayAgain() {
        return "Probar la página otra vez";
    }

    @Override
    public String awayAnew() {
        return "Escribirlo de nuevo";
    }

    @Override
    public String awayAnewHow() {
        return "Devuelva el archivo a su sitio, o haga que se escriba allí de nuevo todo su trabajo, como en su último cambio.";
    }

    @Override
    public String awayHeading() {
        return "Su trabajo está fuera de alcance";
    }

    @Override
    public String awaySend() {
        return "Enviar otra vez";
    }

    @Override
    public String awayTitle() {
        return "Fuera de alcance";
    }

    @Override
    public String awayWrote() {
        return "Lo que escribió está en esta página:";
    }

    @Override
    public String bothAgain() {
        return "Hacerlo de todos modos";
    }

    @Override
    public String bothLook() {
        return "Mirarlo y dejarlo así";
    }

    @Override
    public String bothNow() {
        return "Como está ahora";
    }

    @Override
    public String bothWrote() {
        return "Lo que escribió";
    }

    @Override
    public String closeClosed() {
        return "El taller está cerrado. Su trabajo está guardado; esta página también se puede cerrar.";
    }

    @Override
    public String closeElsewhere() {
        return "El taller funciona en otro equipo. Se cierra allí.";
    }

    @Override
    public String closeKept() {
        return "Su trabajo se guarda con cada cambio. Cerrar no pierde nada.";
    }

    @Override
    public String closeOpen() {
        return "Ábralo otra vez como hoy: desde el menú o con la orden.";
    }

    @Override
    public String closeOthers() {
        return "Los teléfonos y tabletas que usan este taller no pueden seguir hasta que lo abra otra vez.";
    }

    @Override
    public String closeTitle() {
        return "Cerrar el taller";
    }

    @Override
    public String copiesAlone() {
        return "Lo que es solo suyo se saca en un archivo en Hechos.";
    }

    @Override
    public String copiesAnew() {
        return "Su trabajo está otra vez en su sitio, como en su último cambio.";
    }

    @Override
    public String copiesBack() {
        return "Recuperar";
    }

    @Override
    public String copiesBackAbout(String made) {
        return "Recuperar la copia del " + made;
    }

    @Override
    public String copiesBackAsk(String made) {
        return "¿Volver a su trabajo como era el " + made + "? Antes se copia lo de ahora.";
    }

    @Override
    public String copiesIsBack(String made) {
        return "Su trabajo está como era el " + made + ". Lo que tenía antes es la copia más nueva de esta lista.";
    }

    @Override
    public String copiesIsMade(String size) {
        return "Copiado: " + size + ".";
    }

    @Override
    public String copiesKeeper() {
        return "En un taller la base de datos entera la copia quien la lleva.";
    }

    @Override
    public String copiesLead() {
        return "Cada una es todo su trabajo como era entonces. Al recuperar una se copia antes lo de ahora, así que probar no pierde nada.";
    }

    @Override
    public String copiesLie(String folder) {
        return "Están en " + folder + ". Ponga esa carpeta de vez en cuando en otro disco: una copia al lado no sirve si el disco se rompe.";
    }

    @Override
    public String copiesMade() {
        return "Hecha el";
    }

    @Override
    public String copiesNone() {
        return "Aún no hay ninguna. Se hace una la primera vez que se abre cada día.";
    }

    @Override
    public String copiesNow() {
        return "Hacer una copia ahora";
    }

    @Override
    public String copiesReason(String reason) {
        return (reason.equals("DAILY") ? "primera apertura del día" : reason.equals("UPDATE") ? "antes de pasar a un Hearthcloth más nuevo" : reason.equals("RESTORE") ? "antes de recuperar una copia anterior" : "pedida");
    }

    @Override
    public String copiesSize() {
        return "Tamaño";
    }

    @Override
    public String copiesStudio() {
        return "Su trabajo está en la base de datos del taller. Quien la lleva la copia entera; pida allí un estado anterior.";
    }

    @Override
    public String copiesTime(String day, String month, String time, String year) {
        return day + " de " + (month.equals("m1") ? "enero" : month.equals("m2") ? "febrero" : month.equals("m3") ? "marzo" : month.equals("m4") ? "abril" : month.equals("m5") ? "mayo" : month.equals("m6") ? "junio" : month.equals("m7") ? "julio" : month.equals("m8") ? "agosto" : month.equals("m9") ? "septiembre" : month.equals("m10") ? "octubre" : month.equals("m11") ? "noviembre" : "diciembre") + " de " + year + ", " + time;
    }

    @Override
    public String copiesTitle() {
        return "Copias de seguridad";
    }

    @Override
    public String copiesTo() {
        return "A Hechos";
    }

    @Override
    public String copiesWhy() {
        return "Por qué";
    }

    @Override
    public String copiesWrongClock(String made) {
        return made + ", según un reloj que iba o va mal";
    }

    @Override
    public String devicesAsks(String address, String mark, String name) {
        return "Un aparato con la marca " + mark + " pide entrar: " + name + ", desde " + address + ". Diga que sí solo si ve esa marca en el suyo.";
    }

    @Override
    public String devicesAtMachine() {
        return "Los aparatos entran y salen desde el propio equipo.";
    }

    @Override
    public String devicesCode() {
        return "Código:";
    }

    @Override
    public String devicesComes(String yes) {
        return (yes.equals("yes") ? "Entra en unos segundos." : "Ese aparato se queda fuera.");
    }

    @Override
    public String devicesHere() {
        return "El taller responde solo a este equipo.";
    }

    @Override
    public String devicesInside() {
        return "Aparatos que están dentro";
    }

    @Override
    public String devicesIsOut() {
        return "Ese aparato está fuera.";
    }

    @Override
    public String devicesKeepOut(String mark) {
        return "No dejar entrar a " + mark;
    }

    @Override
    public String devicesLet() {
        return "Dejar entrar";
    }

    @Override
    public String devicesLetAbout(String mark) {
        return "Dejar entrar a " + mark;
    }

    @Override
    public String devicesNo() {
        return "No";
    }

    @Override
    public String devicesNone() {
        return "Ninguno.";
    }

    @Override
    public String devicesNotShared() {
        return "Este taller no está compartido. Arránquelo con --lan para usarlo desde otros aparatos.";
    }

    @Override
    public String devicesOnce() {
        return "Deja entrar un aparato, una vez, en diez minutos. Solo en una red de confianza: otros en ella pueden leer lo que pasa.";
    }

    @Override
    public String devicesOut() {
        return "Sacar";
    }

    @Override
    public String devicesOutAbout(String name) {
        return "Sacar " + name;
    }

    @Override
    public String devicesPhotograph() {
        return "Para fotografiar retales";
    }

    @Override
    public String devicesPicture() {
        return "Código QR de la dirección con el código";
    }

    @Override
    public String devicesPoint() {
        return "Apunte la cámara del otro aparato al dibujo, o abra allí la dirección y escriba el código.";
    }

    @Override
    public String devicesSew() {
        return "Para coser";
    }

    @Override
    public String devicesSince(String name, String since) {
        return name + ", desde " + since;
    }

    @Override
    public String devicesStart() {
        return "Para usarlo desde un teléfono o una tableta de la misma red, ciérrelo y arránquelo así:";
    }

    @Override
    public String devicesTitle() {
        return "En otro aparato";
    }

    @Override
    public String devicesTooMany() {
        return "Demasiados aparatos piden entrar ahora. Pruebe más tarde.";
    }

    @Override
    public String devicesTrust() {
        return "Solo en una red de confianza: otros en ella pueden leer lo que pasa.";
    }

    @Override
    public String devicesWait() {
        return "Demasiados códigos equivocados. Espere diez minutos, o pida entrar y acepte en la otra pantalla.";
    }

    @Override
    public String devicesWrongCode() {
        return "Ese código no es correcto, o ya no. Mire el de ahora en la otra pantalla.";
    }

    @Override
    public String doorBefore() {
        return "Es más de lo que se lee antes de entrar.";
    }

    @Override
    public String doorBusy() {
        return "El taller está ocupado con otros archivos grandes. No cambió nada; envíelo otra vez.";
    }

    @Override
    public String doorCharset() {
        return "Lo enviado no está escrito en letras conocidas aquí.";
    }

    @Override
    public String doorClosing() {
        return "El taller se está cerrando.";
    }

    @Override
    public String doorEarlier() {
        return "Esta página es de un arranque anterior del taller. Cárguela otra vez.";
    }

    @Override
    public String doorLarge(String most) {
        return "Es más de " + most + " MB; envíe menos de una vez.";
    }

    @Override
    public String doorLargePhotograph() {
        return "La foto pasa de 80 MB; envíela como la hizo el teléfono, o una más pequeña.";
    }

    @Override
    public String doorLetters() {
        return "Hay algo que no es una letra; escríbalo de nuevo.";
    }

    @Override
    public String doorNotIn() {
        return "Este aparato no está dentro, o ya no. Abra /join y escriba el código.";
    }

    @Override
    public String doorNotOurs() {
        return "Este cambio no vino de una página del taller.";
    }

    @Override
    public String doorOwnAddress() {
        return "Este taller responde solo en su propia dirección en este equipo.";
    }

    @Override
    public String enterAtMachine() {
        return "Un taller se empieza en el equipo donde funciona; entre primero allí.";
    }

    @Override
    public String enterBegin() {
        return "Empezar";
    }

    @Override
    public String enterBusy() {
        return "Alguien está entrando desde su equipo; pruebe otra vez en unos segundos.";
    }

    @Override
    public String enterFirst() {
        return "Aún no hay nadie en este taller. Quien entra primero es el profesor y trae a los demás.";
    }

    @Override
    public String enterForgotten() {
        return "¿Olvidó la contraseña? Un profesor le da una nueva.";
    }

    @Override
    public String enterIn() {
        return "Entrar";
    }

    @Override
    public String enterLeft() {
        return "Ha salido. Ahora nadie ve aquí su trabajo.";
    }

    @Override
    public String enterLong() {
        return "Al menos 12 letras; van bien tres o cuatro palabras sin relación. Nadie puede buscarla por usted.";
    }

    @Override
    public String enterName() {
        return "Nombre";
    }

    @Override
    public String enterOwn() {
        return "Sus telas y sus paños son aquí solo suyos.";
    }

    @Override
    public String enterPassphrase() {
        return "Contraseña";
    }

    @Override
    public String enterTitle(String first) {
        return (first.equals("yes") ? "Empezar un taller" : "Entrar");
    }

    @Override
    public String enterWrong() {
        return "El nombre o la contraseña no es correcto. Pruebe otra vez.";
    }

    @Override
    public String joinAsk() {
        return "Pedir entrar";
    }

    @Override
    public String joinAsks() {
        return "Este aparato pide entrar. Su marca:";
    }

    @Override
    public String joinCode() {
        return "Código de la otra pantalla";
    }

    @Override
    public String joinHeading() {
        return "Entrar en el taller";
    }

    @Override
    public String joinLook() {
        return "Busque esa marca en el equipo, en Cajón → En otro aparato, y acepte allí. Esta página sigue sola.";
    }

    @Override
    public String joinName() {
        return "Cómo llama a este aparato";
    }

    @Override
    public String joinNoCode() {
        return "¿No tiene el código? Pida entrar y acepte en el equipo.";
    }

    @Override
    public String joinTablet() {
        return "mi tableta";
    }

    @Override
    public String joinTitle() {
        return "Entrar";
    }

    @Override
    public String peopleAs() {
        return "Como";
    }

    @Override
    public String peopleBring() {
        return "Traer a alguien";
    }

    @Override
    public String peopleBringIn() {
        return "Traer";
    }

    @Override
    public String peopleCanCome(String name) {
        return name + " ya puede entrar. Dígale la contraseña; puede cambiarla aquí.";
    }

    @Override
    public String peopleChange() {
        return "Cambiarla";
    }

    @Override
    public String peopleChanged() {
        return "Su contraseña ha cambiado; en otros aparatos entre de nuevo.";
    }

    @Override
    public String peopleCurrent() {
        return "Contraseña actual";
    }

    @Override
    public String peopleFirstPassphrase() {
        return "Primera contraseña";
    }

    @Override
    public String peopleGive() {
        return "Darla";
    }

    @Override
    public String peopleHasNew(String name) {
        return name + " tiene una contraseña nueva. Dígasela; puede cambiarla aquí.";
    }

    @Override
    public String peopleNew() {
        return "Contraseña nueva";
    }

    @Override
    public String peopleNewFor(String name) {
        return "Contraseña nueva para " + name;
    }

    @Override
    public String peopleNewPassphrase() {
        return "Una contraseña nueva";
    }

    @Override
    public String peopleNobody() {
        return "No hay nadie con este número.";
    }

    @Override
    public String peopleNotYours() {
        return "Esa no es su contraseña. No cambió nada.";
    }

    @Override
    public String peoplePart(String part) {
        return (part.equals("teacher") ? "profesor" : "participante");
    }

    @Override
    public String peopleTeacherOnly() {
        return "Esto lo hace solo un profesor.";
    }

    @Override
    public String peopleTitle() {
        return "Personas de este taller";
    }

    @Override
    public String peopleYours() {
        return "Su contraseña";
    }

    @Override
    public String troubleBack() {
        return "Volver a donde estaba";
    }
}
