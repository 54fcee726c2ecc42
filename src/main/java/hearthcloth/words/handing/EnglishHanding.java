package hearthcloth.words.handing;

/** The room of handing in English. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class EnglishHanding implements HandingWords {

    @Override
    public String asScraps() {
        return "Your pieces give no hearth with bars; the scraps are laid together as they are.";
    }

    @Override
    public String by() {
        return "Who hands it on (if you like)";
    }

    @Override
    public String choice(String choice) {
        return (choice.equals("kept") ? "the idea: as in this cloth" : choice.equals("open") ? "only that day's: as the other heap has it" : choice.equals("share") ? "the idea: its share of the cloth's width" : choice.equals("square") ? "the largest square there" : choice.equals("strips") ? "as wide as the strips there" : choice.equals("any") ? "any fabric" : choice.equals("favourite") ? "a favourite fabric" : choice.equals("lightest") ? "the lightest fabric" : "the darkest fabric");
    }

    @Override
    public String classAfter(String cloth, String teacher) {
        return cloth + " after " + teacher;
    }

    @Override
    public String classAway() {
        return "Take it back";
    }

    @Override
    public String classAwayAbout(String cloth) {
        return "Take " + cloth + " back";
    }

    @Override
    public String classAwayAsk(String cloth) {
        return "Take " + cloth + " back?";
    }

    @Override
    public String classFitAbout(String cloth) {
        return "Fit " + cloth + " to my stash";
    }

    @Override
    public String classFits() {
        return "It fits your stash. It is yours now: change what you like.";
    }

    @Override
    public String classFrom(String size, String teacher) {
        return size + ", from " + teacher;
    }

    @Override
    public String classHand() {
        return "Hand a cloth to everybody";
    }

    @Override
    public String classHandOut() {
        return "Hand it out";
    }

    @Override
    public String classHanded(String cloth) {
        return cloth + " is handed to everybody.";
    }

    @Override
    public String classIsAway() {
        return "Withdrawn. Cloths made after it stay with those who made them.";
    }

    @Override
    public String classKeepFirst() {
        return "Keep a cloth of your own first; then you can hand it to everybody.";
    }

    @Override
    public String classLacks() {
        return "You don't have enough fabric for it; the page says what is short.";
    }

    @Override
    public String classLead() {
        return "Sizes, order and making up are your teacher's; the fabric is yours.";
    }

    @Override
    public String classNone() {
        return "No cloth has been handed out yet.";
    }

    @Override
    public String classOne() {
        return "One of your cloths";
    }

    @Override
    public String classTitle() {
        return "Guidelines";
    }

    @Override
    public String classWithdrawn() {
        return "This guideline has been withdrawn.";
    }

    @Override
    public String empty() {
        return "Your stash is empty; lay in what you have first.";
    }

    @Override
    public String field(String field) {
        return (field.equals("size") ? "The size" : field.equals("hearth") ? "The hearth" : field.equals("bars") ? "The bars" : field.equals("rounds") ? "How many rounds" : field.equals("order") ? "The order" : field.equals("colours") ? "The colours" : "In the middle");
    }

    @Override
    public String fitsAll() {
        return "It fits your stash and keeps every rule. It is yours now: change what you like.";
    }

    @Override
    public String inFavourite() {
        return "The fabric you like best (if the idea asks for one)";
    }

    @Override
    public String inFile() {
        return "The file";
    }

    @Override
    public String inFit() {
        return "Fit it to my stash";
    }

    @Override
    public String inHow() {
        return "A guideline file, or the plan file of one cloth, that somebody sent you. It is fitted to your stash; where not every rule can be kept, you get the nearest and are told what was bent.";
    }

    @Override
    public String inTitle() {
        return "Bring in an idea";
    }

    @Override
    public String is() {
        return "It is";
    }

    @Override
    public String lacks() {
        return "There is not enough fabric for this cloth yet; an idea is taken from one that can be made.";
    }

    @Override
    public String lead(String cloth) {
        return "Of each choice in " + cloth + " say whether it is the idea, or was only that day's. Seam and hem go along as they are.";
    }

    @Override
    public String name() {
        return "What the idea is called";
    }

    @Override
    public String nearest(String bent, String why) {
        return "The nearest your stash makes. " + bent + " Why: " + why;
    }

    @Override
    public String noCloth() {
        return "There is no such cloth; it may have been removed.";
    }

    @Override
    public String noneFits(String why) {
        return "Your stash makes no cloth of this idea yet. " + why;
    }

    @Override
    public String outNone() {
        return "There is no cloth with a hearth and bars yet.";
    }

    @Override
    public String outTitle() {
        return "Hand on one of yours";
    }

    @Override
    public String own(String example) {
        return "or a rule of your own, such as " + example;
    }

    @Override
    public String refused(String why) {
        return "This file cannot be used as it is. " + why;
    }

    @Override
    public String saveFile() {
        return "Save as a guideline file";
    }

    @Override
    public String savePage() {
        return "Save as a page anybody can open";
    }

    @Override
    public String scraps() {
        return "A cloth of scraps is its own heap's: only a cloth with a hearth and bars can be handed on.";
    }

    @Override
    public String title() {
        return "Hand on an idea";
    }

    @Override
    public String words() {
        return "What you want to say of it";
    }
}
