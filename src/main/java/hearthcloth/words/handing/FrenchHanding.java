package hearthcloth.words.handing;

/** The room of handing in French. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class FrenchHanding implements HandingWords {

    @Override
    public String asScraps() {
        return "Vos morceaux ne donnent ni pièce centrale ni bandes ; les chutes sont assemblées telles quelles.";
    }

    @Override
    public String by() {
        return "Qui la transmet (si vous voulez)";
    }

    @Override
    public String choice(String choice) {
        return (choice.equals("kept") ? "l’idée : comme dans ce carré" : choice.equals("open") ? "du jour seulement : selon la réserve" : choice.equals("share") ? "l’idée : sa part de la largeur" : choice.equals("square") ? "le plus grand carré disponible" : choice.equals("strips") ? "à la largeur des bandelettes" : choice.equals("any") ? "n’importe quel tissu" : choice.equals("favourite") ? "un tissu préféré" : choice.equals("lightest") ? "le tissu le plus clair" : "le tissu le plus foncé");
    }

    @Override
    public String classAfter(String cloth, String teacher) {
        return cloth + " d’après " + teacher;
    }

    @Override
    public String classAway() {
        return "Le retirer";
    }

    @Override
    public String classAwayAbout(String cloth) {
        return "Retirer " + cloth;
    }

    @Override
    public String classAwayAsk(String cloth) {
        return "Retirer " + cloth + " ?";
    }

    @Override
    public String classFitAbout(String cloth) {
        return "Adapter " + cloth + " à ma réserve";
    }

    @Override
    public String classFits() {
        return "Il convient à votre réserve. Il est à vous : changez ce que vous voulez.";
    }

    @Override
    public String classFrom(String size, String teacher) {
        return size + ", de " + teacher;
    }

    @Override
    public String classHand() {
        return "Distribuer un carré à tous";
    }

    @Override
    public String classHandOut() {
        return "Distribuer";
    }

    @Override
    public String classHanded(String cloth) {
        return cloth + " est distribué à tous.";
    }

    @Override
    public String classIsAway() {
        return "Retiré. Les carrés faits d’après lui restent à ceux qui les ont faits.";
    }

    @Override
    public String classKeepFirst() {
        return "Gardez d’abord un carré à vous ; vous pourrez ensuite le distribuer.";
    }

    @Override
    public String classLacks() {
        return "Il n’y a pas assez de tissu ; la page dit ce qui manque.";
    }

    @Override
    public String classLead() {
        return "Tailles, ordre et montage viennent de votre professeur ; le tissu est à vous.";
    }

    @Override
    public String classNone() {
        return "Aucun carré n’a encore été distribué.";
    }

    @Override
    public String classOne() {
        return "Un de vos carrés";
    }

    @Override
    public String classTitle() {
        return "Modèles";
    }

    @Override
    public String classWithdrawn() {
        return "Ce modèle a été retiré.";
    }

    @Override
    public String empty() {
        return "Votre réserve est vide ; mettez-y d’abord ce que vous avez.";
    }

    @Override
    public String field(String field) {
        return (field.equals("size") ? "La taille" : field.equals("hearth") ? "La pièce centrale" : field.equals("bars") ? "Les bandes" : field.equals("rounds") ? "Combien de tours" : field.equals("order") ? "L’ordre" : field.equals("colours") ? "Les couleurs" : "Au milieu");
    }

    @Override
    public String fitsAll() {
        return "Il convient à votre réserve et garde toutes les règles. Il est à vous : changez ce que vous voulez.";
    }

    @Override
    public String inFavourite() {
        return "Le tissu que vous préférez (si l’idée en demande un)";
    }

    @Override
    public String inFile() {
        return "Le fichier";
    }

    @Override
    public String inFit() {
        return "L’adapter à ma réserve";
    }

    @Override
    public String inHow() {
        return "Un fichier de modèle, ou le plan d’un carré, que quelqu’un vous a envoyé. Il est adapté à votre réserve ; si toutes les règles ne tiennent pas, vous avez le plus proche et ce qui a été assoupli est dit.";
    }

    @Override
    public String inTitle() {
        return "Faire entrer une idée";
    }

    @Override
    public String is() {
        return "C’est";
    }

    @Override
    public String lacks() {
        return "Il n’y a pas encore assez de tissu pour ce carré ; une idée se prend d’un carré faisable.";
    }

    @Override
    public String lead(String cloth) {
        return "Pour chaque choix dans " + cloth + ", dites s’il fait partie de l’idée ou s’il n’était que du jour. Couture et ourlet suivent tels quels.";
    }

    @Override
    public String name() {
        return "Nom de l’idée";
    }

    @Override
    public String nearest(String bent, String why) {
        return "Le plus proche que permet votre réserve. " + bent + " Pourquoi : " + why;
    }

    @Override
    public String noCloth() {
        return "Ce carré n’existe pas ; il a peut-être été ôté.";
    }

    @Override
    public String noneFits(String why) {
        return "Votre réserve ne permet pas encore un carré de cette idée. " + why;
    }

    @Override
    public String outNone() {
        return "Il n’y a pas encore de carré avec pièce centrale et bandes.";
    }

    @Override
    public String outTitle() {
        return "Transmettre un des vôtres";
    }

    @Override
    public String own(String example) {
        return "ou une règle à vous, comme " + example;
    }

    @Override
    public String refused(String why) {
        return "Ce fichier ne peut pas servir tel quel. " + why;
    }

    @Override
    public String saveFile() {
        return "Enregistrer comme fichier de modèle";
    }

    @Override
    public String savePage() {
        return "Enregistrer comme page que tous peuvent ouvrir";
    }

    @Override
    public String scraps() {
        return "Un carré de chutes ne vaut que pour ses chutes : seul un carré avec pièce centrale et bandes se transmet.";
    }

    @Override
    public String title() {
        return "Transmettre une idée";
    }

    @Override
    public String words() {
        return "Ce que vous voulez en dire";
    }
}
