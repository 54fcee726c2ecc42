package hearthcloth.words.entering;

/** The room of entering in French. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class FrenchEntering implements EnteringWords {

    @Override
    public String awayAgain() {
        return "Réessayer la page";
    }

    @Override
    public String awayAnew() {
        return "Le réécrire";
    }

    @Override
    public String awayAnewHow() {
        return "Remettez le fichier à sa place, ou faites-y réécrire tout votre travail, tel qu’à votre dernier changement.";
    }

    @Override
    public String awayHeading() {
        return "Votre travail est hors de portée";
    }

    @Override
    public String awaySend() {
        return "Renvoyer";
    }

    @Override
    public String awayTitle() {
        return "Hors de portée";
    }

    @Override
    public String awayWrote() {
        return "Ce que vous avez écrit est gardé sur cette page :";
    }

    @Override
    public String bothAgain() {
        return "Le faire quand même";
    }

    @Override
    public String bothLook() {
        return "Regarder et laisser ainsi";
    }

    @Override
    public String bothNow() {
        return "Tel que c’est maintenant";
    }

    @Override
    public String bothWrote() {
        return "Ce que vous avez écrit";
    }

    @Override
    public String closeClosed() {
        return "L’atelier est fermé. Votre travail est gardé ; cette page peut se fermer aussi.";
    }

    @Override
    public String closeElsewhere() {
        return "L’atelier tourne sur une autre machine. Il se ferme là-bas.";
    }

    @Override
    public String closeKept() {
        return "Votre travail est gardé à chaque changement. Fermer ne fait rien perdre.";
    }

    @Override
    public String closeOpen() {
        return "Rouvrez-le comme aujourd’hui : depuis le menu, ou avec la commande.";
    }

    @Override
    public String closeOthers() {
        return "Les téléphones et tablettes qui utilisent cet atelier s’arrêtent jusqu’à sa réouverture.";
    }

    @Override
    public String closeTitle() {
        return "Fermer l’atelier";
    }

    @Override
    public String copiesAlone() {
        return "Ce qui n’est qu’à vous se sort en un fichier sous Faits.";
    }

    @Override
    public String copiesAnew() {
        return "Votre travail est de nouveau à sa place, tel qu’à votre dernier changement.";
    }

    @Override
    public String copiesBack() {
        return "Remettre";
    }

    @Override
    public String copiesBackAbout(String made) {
        return "Remettre la copie du " + made;
    }

    @Override
    public String copiesBackAsk(String made) {
        return "Revenir à votre travail tel qu’il était le " + made + " ? L’état actuel est copié d’abord.";
    }

    @Override
    public String copiesIsBack(String made) {
        return "Votre travail est tel qu’il était le " + made + ". Ce que vous aviez avant est la copie la plus récente de cette liste.";
    }

    @Override
    public String copiesIsMade(String size) {
        return "Copié : " + size + ".";
    }

    @Override
    public String copiesKeeper() {
        return "Dans un atelier, la base entière est copiée par qui la tient.";
    }

    @Override
    public String copiesLead() {
        return "Chacune est tout votre travail tel qu’il était alors. En remettre une copie d’abord l’état actuel : essayer ne fait rien perdre.";
    }

    @Override
    public String copiesLie(String folder) {
        return "Elles sont dans " + folder + ". Mettez ce dossier de temps en temps sur un autre disque : une copie à côté n’aide pas quand le disque casse.";
    }

    @Override
    public String copiesMade() {
        return "Faite le";
    }

    @Override
    public String copiesNone() {
        return "Il n’y en a pas encore. Une est faite à la première ouverture de chaque jour.";
    }

    @Override
    public String copiesNow() {
        return "Faire une copie maintenant";
    }

    @Override
    public String copiesReason(String reason) {
        return (reason.equals("DAILY") ? "première ouverture du jour" : reason.equals("UPDATE") ? "avant la reprise par un Hearthcloth plus récent" : reason.equals("RESTORE") ? "avant de remettre une copie plus ancienne" : "demandée");
    }

    @Override
    public String copiesSize() {
        return "Taille";
    }

    @Override
    public String copiesStudio() {
        return "Votre travail est dans la base de l’atelier. Qui la tient la copie en entier ; demandez-y un état plus ancien.";
    }

    @Override
    public String copiesTime(String day, String month, String time, String year) {
        return day + " " + (month.equals("m1") ? "janvier" : month.equals("m2") ? "février" : month.equals("m3") ? "mars" : month.equals("m4") ? "avril" : month.equals("m5") ? "mai" : month.equals("m6") ? "juin" : month.equals("m7") ? "juillet" : month.equals("m8") ? "août" : month.equals("m9") ? "septembre" : month.equals("m10") ? "octobre" : month.equals("m11") ? "novembre" : "décembre") + " " + year + ", " + time;
    }

    @Override
    public String copiesTitle() {
        return "Copies de sûreté";
    }

    @Override
    public String copiesTo() {
        return "Vers Faits";
    }

    @Override
    public String copiesWhy() {
        return "Pourquoi";
    }

    @Override
    public String copiesWrongClock(String made) {
        return made + ", selon une horloge fausse alors ou maintenant";
    }

    @Override
    public String devicesAsks(String address, String mark, String name) {
        return "Un appareil portant la marque " + mark + " demande à entrer : " + name + ", depuis " + address + ". N’acceptez que si vous voyez cette marque sur le vôtre.";
    }

    @Override
    public String devicesAtMachine() {
        return "Les appareils entrent et sortent depuis la machine elle-même.";
    }

    @Override
    public String devicesCode() {
        return "Code :";
    }

    @Override
    public String devicesComes(String yes) {
        return (yes.equals("yes") ? "Il entre dans quelques secondes." : "Cet appareil reste dehors.");
    }

    @Override
    public String devicesHere() {
        return "L’atelier ne répond qu’à cette machine.";
    }

    @Override
    public String devicesInside() {
        return "Appareils entrés";
    }

    @Override
    public String devicesIsOut() {
        return "Cet appareil est sorti.";
    }

    @Override
    public String devicesKeepOut(String mark) {
        return "Ne pas laisser entrer " + mark;
    }

    @Override
    public String devicesLet() {
        return "Laisser entrer";
    }

    @Override
    public String devicesLetAbout(String mark) {
        return "Laisser entrer " + mark;
    }

    @Override
    public String devicesNo() {
        return "Non";
    }

    @Override
    public String devicesNone() {
        return "Aucun.";
    }

    @Override
    public String devicesNotShared() {
        return "Cet atelier n’est pas partagé. Lancez-le avec --lan pour l’utiliser depuis d’autres appareils.";
    }

    @Override
    public String devicesOnce() {
        return "Il laisse entrer un appareil, une fois, dans les dix minutes. Seulement sur un réseau de confiance : ce qui y passe peut être lu par d’autres.";
    }

    @Override
    public String devicesOut() {
        return "Faire sortir";
    }

    @Override
    public String devicesOutAbout(String name) {
        return "Faire sortir " + name;
    }

    @Override
    public String devicesPhotograph() {
        return "Pour photographier des chutes";
    }

    @Override
    public String devicesPicture() {
        return "Code QR de l’adresse avec le code";
    }

    @Override
    public String devicesPoint() {
        return "Visez l’image avec l’appareil photo de l’autre appareil, ou ouvrez-y l’adresse et tapez le code.";
    }

    @Override
    public String devicesSew() {
        return "Pour coudre";
    }

    @Override
    public String devicesSince(String name, String since) {
        return name + ", depuis " + since;
    }

    @Override
    public String devicesStart() {
        return "Pour l’utiliser depuis un téléphone ou une tablette du même réseau, fermez-le et relancez-le ainsi :";
    }

    @Override
    public String devicesTitle() {
        return "Sur un autre appareil";
    }

    @Override
    public String devicesTooMany() {
        return "Trop d’appareils demandent à entrer. Réessayez plus tard.";
    }

    @Override
    public String devicesTrust() {
        return "Seulement sur un réseau de confiance : ce qui y passe peut être lu par d’autres.";
    }

    @Override
    public String devicesWait() {
        return "Trop de codes faux. Attendez dix minutes, ou demandez à entrer et acceptez sur l’autre écran.";
    }

    @Override
    public String devicesWrongCode() {
        return "Ce code n’est pas le bon, ou ne l’est plus. Regardez le code actuel sur l’autre écran.";
    }

    @Override
    public String doorBefore() {
        return "C’est plus que ce qui est lu avant d’entrer.";
    }

    @Override
    public String doorBusy() {
        return "L’atelier est occupé par d’autres gros fichiers. Rien n’a changé ; renvoyez.";
    }

    @Override
    public String doorCharset() {
        return "Ce qui est envoyé n’est pas écrit en lettres connues ici.";
    }

    @Override
    public String doorClosing() {
        return "L’atelier est en train de fermer.";
    }

    @Override
    public String doorEarlier() {
        return "Cette page date d’un lancement précédent de l’atelier. Rechargez-la.";
    }

    @Override
    public String doorLarge(String most) {
        return "C’est plus de " + most + " Mo ; envoyez moins à la fois.";
    }

    @Override
    public String doorLargePhotograph() {
        return "La photo dépasse 80 Mo ; envoyez-la telle que le téléphone l’a prise, ou une plus petite.";
    }

    @Override
    public String doorLetters() {
        return "Il s’y trouve quelque chose qui n’est pas une lettre ; tapez-le de nouveau.";
    }

    @Override
    public String doorNotIn() {
        return "Cet appareil n’est pas entré, ou plus. Ouvrez /join et tapez le code.";
    }

    @Override
    public String doorNotOurs() {
        return "Ce changement ne vient pas d’une page de l’atelier.";
    }

    @Override
    public String doorOwnAddress() {
        return "Cet atelier ne répond qu’à sa propre adresse sur cette machine.";
    }

    @Override
    public String enterAtMachine() {
        return "Un atelier se commence sur la machine où il tourne ; entrez d’abord là.";
    }

    @Override
    public String enterBegin() {
        return "Commencer";
    }

    @Override
    public String enterBusy() {
        return "Quelqu’un entre justement depuis votre machine ; réessayez dans quelques secondes.";
    }

    @Override
    public String enterFirst() {
        return "Personne n’appartient encore à cet atelier. Qui entre en premier en est le professeur et fait entrer les autres.";
    }

    @Override
    public String enterForgotten() {
        return "Phrase oubliée ? Un professeur vous en donne une autre.";
    }

    @Override
    public String enterIn() {
        return "Entrer";
    }

    @Override
    public String enterLeft() {
        return "Vous êtes sorti. Personne ne voit plus votre travail ici.";
    }

    @Override
    public String enterLong() {
        return "Au moins 12 lettres ; trois ou quatre mots sans rapport conviennent bien. Personne ne peut la retrouver pour vous.";
    }

    @Override
    public String enterName() {
        return "Nom";
    }

    @Override
    public String enterOwn() {
        return "Votre réserve et vos carrés ne sont ici qu’à vous.";
    }

    @Override
    public String enterPassphrase() {
        return "Phrase secrète";
    }

    @Override
    public String enterTitle(String first) {
        return (first.equals("yes") ? "Commencer un atelier" : "Entrer");
    }

    @Override
    public String enterWrong() {
        return "Le nom ou la phrase secrète est faux. Réessayez.";
    }

    @Override
    public String joinAsk() {
        return "Demander à entrer";
    }

    @Override
    public String joinAsks() {
        return "Cet appareil demande à entrer. Sa marque :";
    }

    @Override
    public String joinCode() {
        return "Code sur l’autre écran";
    }

    @Override
    public String joinHeading() {
        return "Entrer dans l’atelier";
    }

    @Override
    public String joinLook() {
        return "Cherchez cette marque sur la machine, sous Tiroir → Sur un autre appareil, et acceptez. Cette page continue d’elle-même.";
    }

    @Override
    public String joinName() {
        return "Comment vous appelez cet appareil";
    }

    @Override
    public String joinNoCode() {
        return "Pas de code sous la main ? Demandez, et acceptez sur la machine.";
    }

    @Override
    public String joinTablet() {
        return "ma tablette";
    }

    @Override
    public String joinTitle() {
        return "Entrer";
    }

    @Override
    public String peopleAs() {
        return "Comme";
    }

    @Override
    public String peopleBring() {
        return "Faire entrer quelqu’un";
    }

    @Override
    public String peopleBringIn() {
        return "Faire entrer";
    }

    @Override
    public String peopleCanCome(String name) {
        return name + " peut entrer maintenant. Dites-lui la phrase secrète ; elle se change ici.";
    }

    @Override
    public String peopleChange() {
        return "La changer";
    }

    @Override
    public String peopleChanged() {
        return "Votre phrase secrète est changée ; sur les autres appareils, entrez de nouveau.";
    }

    @Override
    public String peopleCurrent() {
        return "Phrase secrète actuelle";
    }

    @Override
    public String peopleFirstPassphrase() {
        return "Première phrase secrète";
    }

    @Override
    public String peopleGive() {
        return "La donner";
    }

    @Override
    public String peopleHasNew(String name) {
        return name + " a une nouvelle phrase secrète. Dites-la-lui ; elle se change ici.";
    }

    @Override
    public String peopleNew() {
        return "Nouvelle phrase secrète";
    }

    @Override
    public String peopleNewFor(String name) {
        return "Nouvelle phrase secrète pour " + name;
    }

    @Override
    public String peopleNewPassphrase() {
        return "Une nouvelle phrase secrète";
    }

    @Override
    public String peopleNobody() {
        return "Personne n’a ce numéro.";
    }

    @Override
    public String peopleNotYours() {
        return "Ce n’est pas votre phrase secrète. Rien n’a changé.";
    }

    @Override
    public String peoplePart(String part) {
        return (part.equals("teacher") ? "professeur" : "participant");
    }

    @Override
    public String peopleTeacherOnly() {
        return "Seul un professeur fait cela.";
    }

    @Override
    public String peopleTitle() {
        return "Les gens de cet atelier";
    }

    @Override
    public String peopleYours() {
        return "Votre phrase secrète";
    }

    @Override
    public String troubleBack() {
        return "Retour où vous étiez";
    }
}
