package hearthcloth.words.storing;

/** The room of storing in French. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class FrenchStoring implements StoringWords {

    @Override
    public String again() {
        return "Rien n’a changé ; réessayez.";
    }

    @Override
    public String archive(String why) {
        return (why.equals("DAMAGED") ? "Cette archive est abîmée ; rien n’en a été pris." : why.equals("LARGE") ? "Cette archive contient plus qu’un atelier ne peut tenir ; rien n’en a été pris." : why.equals("NONE") ? "Ce fichier n’est pas une archive de Hearthcloth." : why.equals("NEWER") ? "Cette archive vient d’un Hearthcloth plus récent ; rien n’en a été pris." : why.equals("PIECES") ? "Cette archive contient plus de morceaux qu’une réserve ; rien n’en a été pris." : why.equals("CHOOSE") ? "Choisissez d’abord une archive." : why.equals("WHOLE") ? "Le fichier n’est pas arrivé entier ; réessayez." : why.equals("BUSY") ? "Une autre archive est en train d’entrer ; réessayez dans un instant." : why.equals("MEMORY") ? "Cette archive est trop grande pour la mémoire de cette machine ; rien n’en a été pris." : "L’archive n’a pas pu être écrite.");
    }

    @Override
    public String archiveIn() {
        return "archive reprise";
    }

    @Override
    public String archiveLacks(String name) {
        return "Ce fichier n’est pas une archive entière de Hearthcloth : il lui manque " + name + ".";
    }

    @Override
    public String archivePass(String most) {
        return "Avec eux la réserve dépasserait " + most + " morceaux. Rien n’a été pris de l’archive.";
    }

    @Override
    public String changed(String name, String what) {
        return (what.equals("CLOTH") ? "Ce carré a été modifié entre-temps dans une autre fenêtre. Rien n’a changé ; regardez à nouveau." : what.equals("PHOTO") ? "Cette photo a été modifiée entre-temps dans une autre fenêtre. Rien n’a changé ; regardez à nouveau." : "" + name + " a été modifié ou utilisé entre-temps. Rien n’a changé ; regardez à nouveau.");
    }

    @Override
    public String copy(String path, String why) {
        return (why.equals("FOLDER") ? "Le dossier des copies de sûreté, " + path + ", ne peut pas être lu." : why.equals("MAKE") ? "Aucune copie de sûreté n’a pu être faite dans " + path + "." : why.equals("FULL") ? "Le dossier ne peut pas être écrit, ou son disque est plein." : why.equals("BACK") ? "La copie n’a pas pu être remise ; l’atelier est comme avant." : why.equals("DAMAGED") ? "La copie " + path + " est abîmée ou illisible. Rien n’a changé ; choisissez-en une autre." : "La copie n’a pas pu être remise : le dossier de " + path + " ne peut pas être écrit.");
    }

    @Override
    public String copyWhole() {
        return "La copie n’était pas entière.";
    }

    @Override
    public String example() {
        return "L’exemple manque dans cette version ; construisez Hearthcloth à nouveau.";
    }

    @Override
    public String gone(String what) {
        return (what.equals("CLOTH") ? "Ce carré a été supprimé dans une autre fenêtre." : what.equals("PHOTO") ? "Cette photo a été supprimée dans une autre fenêtre." : "Cette copie n’existe plus. Rien n’a changé.");
    }

    @Override
    public String journal() {
        return "La trace de ce qui a été fait ne peut pas être lue.";
    }

    @Override
    public String lacking() {
        return "Il n’y a pas assez de tissu pour ce carré ; modifiez-le d’abord.";
    }

    @Override
    public String misfit() {
        return "La trace de ce changement ne correspond pas à ce qui est gardé. Rien n’a changé.";
    }

    @Override
    public String misfitAt(String what) {
        return "La trace de ce qui a été fait ne correspond pas à ce qui est gardé, à « " + what + " ». Rien ne change dans ce fichier tant que ce n’est pas réparé : regardez tout, sortez-le en archive, ou remettez une copie de sûreté.";
    }

    @Override
    public String missing(String name, String path) {
        return "Il n’y a pas de copie de sûreté " + (name.equals("last") ? "" : "« " + name + " » ") + "dans " + path + ". Rien n’a changé.";
    }

    @Override
    public String openAlready(String address) {
        return (address.equals("none") ? "L’atelier est déjà ouvert" : "L’atelier est déjà ouvert à l’adresse " + address);
    }

    @Override
    public String openAt(String address) {
        return "L’atelier est ouvert à l’adresse " + address;
    }

    @Override
    public String openCamera(String address) {
        return "Un téléphone qui ouvre ceci dans les dix minutes est devant son appareil photo : " + address;
    }

    @Override
    public String openClose(String address) {
        return (address.equals("none") ? "L’atelier est déjà ouvert ; fermez-le d’abord, puis recommencez." : "L’atelier est déjà ouvert à l’adresse " + address + " ; fermez-le d’abord, puis recommencez.");
    }

    @Override
    public String openCode(String code) {
        return "Le code à y taper : " + code;
    }

    @Override
    public String openFolder(String file) {
        return "Le dossier de " + file + " ne peut pas être créé ; choisissez un autre fichier avec --data.";
    }

    @Override
    public String openKept(String file) {
        return "Votre travail est gardé dans " + file + ". Ctrl-C pour fermer.";
    }

    @Override
    public String openLan(String address) {
        return "Les autres appareils de ce réseau entrent par " + address;
    }

    @Override
    public String openRestoreStudio() {
        return "La base d’un atelier partagé est restaurée par la personne qui la tient ; docs/studio.md dit comment.";
    }

    @Override
    public String openRestored(String made) {
        return "Remise en place : la copie de sécurité du " + made;
    }

    @Override
    public String openStudio(String address) {
        return "Le travail de l’atelier est gardé dans " + address + ". Ctrl-C pour fermer.";
    }

    @Override
    public String openedDamaged(String copy, String name) {
        return (copy.equals("none") ? "Le fichier " + name + " est abîmé et reste tel quel. Il n’en existe pas encore de copie de sûreté ; une archive que vous avez sortie peut être reprise dans un nouveau." : "Le fichier " + name + " est abîmé et reste tel quel. La dernière copie de sûreté date du " + copy + " ; démarrez avec « --restore last » pour la mettre à sa place. Le fichier abîmé est gardé à côté.");
    }

    @Override
    public String openedFile(String name, String why) {
        return (why.equals("FOLDER") ? "Le fichier " + name + " est un dossier. Il reste tel quel ; choisissez-en un autre avec --data." : why.equals("UNREAD") ? "Le fichier " + name + " ne peut pas être lu. Il reste tel quel ; choisissez-en un autre avec --data." : why.equals("FOREIGN") ? "Le fichier " + name + " appartient à un autre programme. Il reste tel quel ; choisissez-en un autre avec --data." : why.equals("NEWER") ? "Le fichier " + name + " a été écrit par un Hearthcloth plus récent, qui l’ouvre. Il reste tel quel ; choisissez-en un autre avec --data." : "Le fichier " + name + " reste tel quel ; choisissez-en un autre avec --data.");
    }

    @Override
    public String openedGone(String copy, String path) {
        return (copy.equals("none") ? "Votre travail se trouvait dans " + path + " et n’y est plus. Remettez le fichier, ou commencez-y un atelier vide avec --new." : "Votre travail se trouvait dans " + path + " et n’y est plus. Remettez le fichier, démarrez avec « --restore last » pour prendre la copie de sûreté du " + copy + ", ou commencez-y un atelier vide avec --new.");
    }

    @Override
    public String openedOlder(String name, String why) {
        return "Le fichier " + name + " vient d’un Hearthcloth plus ancien et doit être mis à jour, mais cela n’a pas pu se faire. " + why + " Il reste tel quel.";
    }

    @Override
    public String person(String most, String why) {
        return (why.equals("BEGUN") ? "Quelqu’un vient de commencer cet atelier ; demandez-lui de vous faire entrer." : why.equals("NAME") ? "Écrivez un nom de " + most + " lettres au plus." : why.equals("PASSPHRASE") ? "Une phrase secrète a au moins " + most + " lettres et ne contient pas le nom ; trois ou quatre mots sans rapport conviennent bien." : why.equals("TAKEN") ? "Quelqu’un porte déjà ce nom ; ajoutez un second nom." : why.equals("WRONG") ? "Trop de phrases secrètes fausses pour ce nom ; réessayez dans une minute." : why.equals("BUSY") ? "Beaucoup entrent en ce moment ; réessayez dans quelques secondes." : "Seule la personne qui enseigne distribue les modèles et les reprend.");
    }

    @Override
    public String photoUnread() {
        return "Ce qui a été lu sur cette photo ne peut plus être lu.";
    }

    @Override
    public String photosFull() {
        return "Les photos commencées remplissent la place prévue. Prenez leurs morceaux, ou rangez-en une, puis renvoyez celle-ci.";
    }

    @Override
    public String piece(String fabric, String piece) {
        return "Le morceau " + piece + " de " + fabric;
    }

    @Override
    public String placeArriving(String path) {
        return "Aucun dossier pour les fichiers qui arrivent ne peut être créé dans " + path + ".";
    }

    @Override
    public String placeNoPort(String port) {
        return "Aucun port n’est libre à partir de " + port + " ; choisissez-en un autre avec --port.";
    }

    @Override
    public String proxy() {
        return "L’adresse du proxy ne peut pas être lue ; écrivez-la comme https://studio.example.";
    }

    @Override
    public String record(String what, String why) {
        return "La trace de " + (what.equals("none") ? "ce changement" : "« " + what + " »") + " ne peut pas être lue" + (why.equals("none") ? "." : " : " + why + ".");
    }

    @Override
    public String studio(String address, String why) {
        return (why.equals("OPEN") ? "L’atelier " + address + " ne peut pas s’ouvrir ; voyez s’il tourne, et vérifiez --data." : why.equals("NEWER") ? "Cet atelier est d’un Hearthcloth plus récent. Il reste tel quel ; mettez celui-ci à jour." : why.equals("LEFT") ? "L’atelier reste tel quel." : "L’adresse de l’atelier est illisible ; écrivez postgresql://NAME@HOST/DATABASE, avec %40 ou %2F pour @ ou / dans un mot de passe.");
    }

    @Override
    public String teacher() {
        return "Seule la personne qui enseigne fait cela.";
    }

    @Override
    public String trouble(String why) {
        return (why.equals("QUICKER") ? "Une autre fenêtre a été plus rapide sous le même numéro." : why.equals("SILENT") ? "La base de données de l’atelier ne répond pas." : why.equals("HELD") ? "Un autre programme tient le fichier depuis trop longtemps." : why.equals("UNWRITABLE") ? "Le fichier, ou son dossier, ne peut pas être écrit." : why.equals("DISK") ? "Le disque n’a pas lu ou écrit comme il faut." : why.equals("DAMAGED") ? "Le fichier est abîmé." : why.equals("FULL") ? "Le disque est plein." : why.equals("UNOPENED") ? "Le fichier ne peut être ni ouvert ni créé dans son dossier." : why.equals("FOREIGN") ? "Le fichier n’a pas été écrit par Hearthcloth." : why.equals("REFUSED") ? "La base de données de l’atelier refuse ce nom ou ce mot de passe." : why.equals("WORK") ? "Un autre poste tient ce travail depuis trop longtemps." : why.equals("NONE") ? "Il n’y a pas de base de données de ce nom." : why.equals("STUDIO_FULL") ? "Le disque de la base de données de l’atelier est plein." : why.equals("STUDIO_BUSY") ? "La base de données de l’atelier est occupée." : why.equals("STUDIO_UNWRITABLE") ? "La base de données de l’atelier ne peut pas être écrite sous ce nom." : why.equals("STUDIO") ? "La base de données de l’atelier ne fait pas ce qu’elle doit." : "Le fichier ne fait pas ce qu’il doit.");
    }

    @Override
    public String troubleGone(String path) {
        return "Votre travail n’est plus à sa place : " + path + " a été déplacé ou supprimé. Rien n’a changé.";
    }

    @Override
    public String work(String path, String why) {
        return (why.equals("OPEN") ? "L’atelier ne peut pas s’ouvrir." : why.equals("PLACE") ? "Votre travail est à sa place. Rien n’a changé." : why.equals("OTHER") ? "Un autre fichier est maintenant à " + path + ". Déplacez-le d’abord ; rien n’a changé." : "Votre travail n’a pas pu être écrit dans " + path + ".");
    }
}
