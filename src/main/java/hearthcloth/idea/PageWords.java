package hearthcloth.idea;

import hearthcloth.json.JsonValue;
import hearthcloth.json.JsonWriter;
import hearthcloth.words.Language;
import hearthcloth.words.teaching.TeachingWords;

/**
 * What an idea page says, in each language, as a script of it reads: what is filled in later stands in braces, as {@code
 * {size}}.
 */
final class PageWords {

    private PageWords() {}

    /** An object for each language by its tag; no sign in it ends the element it stands in. */
    static String json() {
        JsonValue.Building all = JsonValue.object();
        for (Language language : Language.values()) {
            TeachingWords words = TeachingWords.in(language);
            all = all.with(
                    language.tag(), said(read(JsonValue.object(), words), words).done());
        }
        return JsonWriter.tight(all.done()).replace("<", "\\u003c");
    }

    /** What stands on the page before anything is asked. */
    private static JsonValue.Building read(JsonValue.Building one, TeachingWords words) {
        return one.with("ideaLabel", words.ideaLabel())
                .with("ideaBy", words.ideaBy("{name}"))
                .with("mineRules", words.mineRules())
                .with("ideaOwn", words.ideaOwn())
                .with("mineScraps", words.mineScraps())
                .with("mineHelp", words.mineHelp())
                .with("ideaHeapHelp", words.ideaHeapHelp())
                .with("mineFavourite", words.mineFavourite())
                .with("ideaSuchAs", words.ideaSuchAs("{fabric}"))
                .with("mineRuler", words.mineRuler())
                .with("mineInches", words.mineInches())
                .with("mineCentimetres", words.mineCentimetres())
                .with("minePlan", words.minePlan())
                .with("ideaStop", words.ideaStop())
                .with("ideaMade", words.ideaMade())
                .with("ideaMadeMore", words.ideaMadeMore())
                .with("ideaFoot", words.ideaFoot())
                .with("ideaSave", words.ideaSave())
                .with("ideaLanguage", words.ideaLanguage())
                .with("ideaOld", words.ideaOld())
                .with("ideaFirst", words.ideaFirst())
                .with("ideaTrouble", words.ideaTrouble())
                .with("mineLooking", words.mineLooking());
    }

    /** What is said of what was asked. */
    private static JsonValue.Building said(JsonValue.Building one, TeachingWords words) {
        return one.with("ideaStopped", words.ideaStopped())
                .with("ideaEmpty", words.ideaEmpty())
                .with("ideaOne", words.ideaOne())
                .with("ideaTwo", words.ideaTwo())
                .with("mineNone", words.mineNone())
                .with("mineNearest", words.mineNearest())
                .with("mineScrapsOnly", words.mineScrapsOnly())
                .with("mineWhy", words.mineWhy())
                .with("ideaFront", words.ideaFront())
                .with("ideaBack", words.ideaBack())
                .with("ideaCare", words.ideaCare("{words}"))
                .with("cutList", words.cutList())
                .with("cutPatch", words.cutPatch())
                .with("cutCut", words.cutCut())
                .with("cutFabric", words.cutFabric())
                .with("cutPiece", words.cutPiece())
                .with("ideaPieces", words.ideaPieces())
                .with("ideaGuide", words.ideaGuide())
                .with("ideaPrint", words.ideaPrint())
                .with("ideaKeep", words.ideaKeep())
                .with("ideaExample", words.ideaExample("{size}"))
                .with("ideaExampleBack", words.ideaExampleBack())
                .with("ideaTied", words.ideaTied());
    }

    /** The languages to choose from, each called as it calls itself. */
    static String choices() {
        StringBuilder out = new StringBuilder();
        for (Language language : Language.values()) {
            out.append("<option value=\"")
                    .append(language.tag())
                    .append("\" lang=\"")
                    .append(language.tag())
                    .append("\">")
                    .append(language.ownName())
                    .append("</option>");
        }
        return out.toString();
    }
}
