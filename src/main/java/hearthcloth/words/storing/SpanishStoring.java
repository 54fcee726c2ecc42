package hearthcloth.words.storing;

/** The room of storing in Spanish. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class SpanishStoring implements StoringWords {

    @Override
    public String again() {
        return "No se cambió nada; vuelva a intentarlo.";
    }

    @Override
    public String archive(String why) {
        return (why.equals("DAMAGED") ? "Este archivo está dañado; no se tomó nada de él." : why.equals("LARGE") ? "Este archivo contiene más de lo que cabe en un taller; no se tomó nada de él." : why.equals("NONE") ? "Este no es un archivo de Hearthcloth." : why.equals("NEWER") ? "Este archivo es de un Hearthcloth más nuevo; no se tomó nada de él." : why.equals("PIECES") ? "Este archivo contiene más trozos de los que caben; no se tomó nada de él." : why.equals("CHOOSE") ? "Elija primero un archivo." : why.equals("WHOLE") ? "El archivo no llegó entero; vuelva a intentarlo." : why.equals("BUSY") ? "Se está incorporando otro archivo; vuelva a intentarlo en un momento." : why.equals("MEMORY") ? "Este archivo es demasiado grande para la memoria de este equipo; no se tomó nada de él." : "No se pudo escribir el archivo.");
    }

    @Override
    public String archiveIn() {
        return "archivo incorporado";
    }

    @Override
    public String archiveLacks(String name) {
        return "Este archivo de Hearthcloth no está entero: le falta " + name + ".";
    }

    @Override
    public String archivePass(String most) {
        return "Con estos las telas pasarían de " + most + " trozos. No se tomó nada del archivo.";
    }

    @Override
    public String changed(String name, String what) {
        return (what.equals("CLOTH") ? "Este paño se cambió mientras tanto en otra ventana. No se cambió nada; mire otra vez." : what.equals("PHOTO") ? "Esta foto se cambió mientras tanto en otra ventana. No se cambió nada; mire otra vez." : "" + name + " se cambió o se usó mientras tanto. No se cambió nada; mire otra vez.");
    }

    @Override
    public String copy(String path, String why) {
        return (why.equals("FOLDER") ? "La carpeta de copias de seguridad, " + path + ", no se puede leer." : why.equals("MAKE") ? "No se pudo hacer una copia de seguridad en " + path + "." : why.equals("FULL") ? "No se puede escribir en la carpeta, o su disco está lleno." : why.equals("BACK") ? "No se pudo reponer la copia; el taller está como estaba." : why.equals("DAMAGED") ? "La copia " + path + " está dañada o no se puede leer. No se cambió nada; elija otra." : "No se pudo reponer la copia: no se puede escribir en la carpeta de " + path + ".");
    }

    @Override
    public String copyWhole() {
        return "La copia no estaba entera.";
    }

    @Override
    public String example() {
        return "Falta el ejemplo en este programa; construya Hearthcloth de nuevo.";
    }

    @Override
    public String gone(String what) {
        return (what.equals("CLOTH") ? "Este paño se eliminó en otra ventana." : what.equals("PHOTO") ? "Esta foto se borró en otra ventana." : "Esa copia ya no existe. No se cambió nada.");
    }

    @Override
    public String journal() {
        return "El registro de lo hecho no se puede leer.";
    }

    @Override
    public String lacking() {
        return "No hay bastante tela para este paño; cámbielo antes.";
    }

    @Override
    public String misfit() {
        return "El registro de este cambio no encaja con lo guardado. No se cambió nada.";
    }

    @Override
    public String misfitAt(String what) {
        return "El registro de lo hecho no encaja con lo guardado, en «" + what + "». No se cambia nada en este archivo hasta arreglarlo: mire todo, sáquelo como archivo, o reponga una copia de seguridad.";
    }

    @Override
    public String missing(String name, String path) {
        return "No hay copia de seguridad " + (name.equals("last") ? "" : "«" + name + "» ") + "en " + path + ". No se cambió nada.";
    }

    @Override
    public String openAlready(String address) {
        return (address.equals("none") ? "El taller ya está abierto" : "El taller ya está abierto en " + address);
    }

    @Override
    public String openAt(String address) {
        return "El taller está abierto en " + address;
    }

    @Override
    public String openCamera(String address) {
        return "Un móvil que abra esto en diez minutos estará en su cámara: " + address;
    }

    @Override
    public String openClose(String address) {
        return (address.equals("none") ? "El taller ya está abierto; ciérrelo primero y repita esto." : "El taller ya está abierto en " + address + "; ciérrelo primero y repita esto.");
    }

    @Override
    public String openCode(String code) {
        return "El código que hay que escribir allí: " + code;
    }

    @Override
    public String openFolder(String file) {
        return "No se puede crear la carpeta de " + file + "; elija otro archivo con --data.";
    }

    @Override
    public String openKept(String file) {
        return "Su trabajo se guarda en " + file + ". Pulse Ctrl-C para cerrar.";
    }

    @Override
    public String openLan(String address) {
        return "Los demás aparatos de esta red entran por " + address;
    }

    @Override
    public String openRestoreStudio() {
        return "La base de datos de un taller compartido la restaura quien la lleva; docs/studio.md dice cómo.";
    }

    @Override
    public String openRestored(String made) {
        return "Repuesta: la copia de seguridad del " + made;
    }

    @Override
    public String openStudio(String address) {
        return "El trabajo del taller se guarda en " + address + ". Pulse Ctrl-C para cerrar.";
    }

    @Override
    public String openedDamaged(String copy, String name) {
        return (copy.equals("none") ? "El archivo " + name + " está dañado y se queda como está. Aún no hay copia de seguridad; un archivo que haya sacado se puede traer a uno nuevo." : "El archivo " + name + " está dañado y se queda como está. La última copia de seguridad es del " + copy + "; empiece con «--restore last» para ponerla en su lugar. El archivo dañado se guarda al lado.");
    }

    @Override
    public String openedFile(String name, String why) {
        return (why.equals("FOLDER") ? "El archivo " + name + " es una carpeta. Se queda como está; elija otro con --data." : why.equals("UNREAD") ? "El archivo " + name + " no se puede leer. Se queda como está; elija otro con --data." : why.equals("FOREIGN") ? "El archivo " + name + " es de otro programa. Se queda como está; elija otro con --data." : why.equals("NEWER") ? "El archivo " + name + " lo escribió un Hearthcloth más nuevo, que lo abre. Se queda como está; elija otro con --data." : "El archivo " + name + " se queda como está; elija otro con --data.");
    }

    @Override
    public String openedGone(String copy, String path) {
        return (copy.equals("none") ? "Su trabajo estaba en " + path + " y ya no está allí. Devuelva el archivo, o empiece allí un taller vacío con --new." : "Su trabajo estaba en " + path + " y ya no está allí. Devuelva el archivo, empiece con «--restore last» para tomar la copia de seguridad del " + copy + ", o empiece allí un taller vacío con --new.");
    }

    @Override
    public String openedOlder(String name, String why) {
        return "El archivo " + name + " es de un Hearthcloth más antiguo y hay que ponerlo al día, pero no se pudo. " + why + " Se queda como está.";
    }

    @Override
    public String person(String most, String why) {
        return (why.equals("BEGUN") ? "Alguien acaba de empezar este taller; pídale que le deje entrar." : why.equals("NAME") ? "Escriba un nombre de hasta " + most + " letras." : why.equals("PASSPHRASE") ? "Una frase de paso tiene al menos " + most + " letras y no contiene el nombre; tres o cuatro palabras sin relación van bien." : why.equals("TAKEN") ? "Ya hay alguien con ese nombre; añada un segundo nombre." : why.equals("WRONG") ? "Demasiadas frases de paso equivocadas para este nombre; vuelva a intentarlo en un minuto." : why.equals("BUSY") ? "Ahora entran muchos; vuelva a intentarlo en unos segundos." : "Solo quien enseña reparte modelos y los retira.");
    }

    @Override
    public String photoUnread() {
        return "Lo que se leyó de esta foto ya no se puede leer.";
    }

    @Override
    public String photosFull() {
        return "Las fotos empezadas llenan el sitio que hay. Incorpore sus trozos, o guarde una, y envíe esta otra vez.";
    }

    @Override
    public String piece(String fabric, String piece) {
        return "El trozo " + piece + " de " + fabric;
    }

    @Override
    public String placeArriving(String path) {
        return "No se puede crear en " + path + " una carpeta para los archivos que llegan.";
    }

    @Override
    public String placeNoPort(String port) {
        return "No hay ningún puerto libre desde " + port + "; elija otro con --port.";
    }

    @Override
    public String proxy() {
        return "La dirección del proxy no se puede leer; escríbala como https://studio.example.";
    }

    @Override
    public String record(String what, String why) {
        return "El registro de " + (what.equals("none") ? "este cambio" : "«" + what + "»") + " no se puede leer" + (why.equals("none") ? "." : ": " + why + ".");
    }

    @Override
    public String studio(String address, String why) {
        return (why.equals("OPEN") ? "El taller " + address + " no se puede abrir; vea si funciona y compruebe --data." : why.equals("NEWER") ? "Este taller es de un Hearthcloth más nuevo. Queda como está; actualice este." : why.equals("LEFT") ? "El taller queda como está." : "La dirección del taller no se puede leer; escríbala como postgresql://NAME@HOST/DATABASE, con %40 o %2F por @ o / en una contraseña.");
    }

    @Override
    public String teacher() {
        return "Esto solo lo hace quien enseña.";
    }

    @Override
    public String trouble(String why) {
        return (why.equals("QUICKER") ? "Otra ventana fue más rápida con el mismo número." : why.equals("SILENT") ? "La base de datos del taller no contesta." : why.equals("HELD") ? "Otro programa retiene el archivo demasiado tiempo." : why.equals("UNWRITABLE") ? "No se puede escribir en el archivo o en su carpeta." : why.equals("DISK") ? "El disco no leyó o no escribió como debe." : why.equals("DAMAGED") ? "El archivo está dañado." : why.equals("FULL") ? "El disco está lleno." : why.equals("UNOPENED") ? "El archivo no se puede abrir ni crear en su carpeta." : why.equals("FOREIGN") ? "El archivo no lo escribió Hearthcloth." : why.equals("REFUSED") ? "La base de datos del taller rechaza este nombre o contraseña." : why.equals("WORK") ? "Otro taller retiene este trabajo demasiado tiempo." : why.equals("NONE") ? "No hay ninguna base de datos con ese nombre." : why.equals("STUDIO_FULL") ? "El disco de la base de datos del taller está lleno." : why.equals("STUDIO_BUSY") ? "La base de datos del taller está ocupada." : why.equals("STUDIO_UNWRITABLE") ? "Con este nombre no se puede escribir en la base de datos del taller." : why.equals("STUDIO") ? "La base de datos del taller no hace lo que debe." : "El archivo no hace lo que debe.");
    }

    @Override
    public String troubleGone(String path) {
        return "Su trabajo ya no está en su sitio: " + path + " se movió o se borró. No se cambió nada.";
    }

    @Override
    public String work(String path, String why) {
        return (why.equals("OPEN") ? "El taller no se puede abrir." : why.equals("PLACE") ? "Su trabajo está en su sitio. No se cambió nada." : why.equals("OTHER") ? "En " + path + " hay ahora otro archivo. Muévalo antes; no se cambió nada." : "No se pudo escribir su trabajo en " + path + ".");
    }
}
