package hearthcloth.store.json;

import com.fasterxml.jackson.annotation.JsonInclude;
import hearthcloth.plan.model.Plan;
import hearthcloth.words.sentence.Sentence;
import hearthcloth.words.sentence.SentenceNotation;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * What is said of a plan, as it is kept: in English, as every version has kept it and reads it, and beside it in
 * {@link SentenceNotation}, so that it can be said in any language. Where that is missing, as in what earlier versions kept
 * and in what is kept of it again, or is not known here, the English says itself.
 */
record KeptStory(
        String title,
        String goodAt,
        List<String> chosen,
        List<String> cautions,
        @JsonInclude(JsonInclude.Include.NON_NULL) @Nullable Said said) {

    /** The same in the notation. */
    record Said(String title, String goodAt, List<String> chosen, List<String> cautions) {}

    static KeptStory of(Plan.Story story) {
        return new KeptStory(
                story.title().english(),
                story.goodAt().english(),
                english(story.chosen()),
                english(story.cautions()),
                sentences(story).allMatch(KeptStory::saysItself)
                        ? null
                        : new Said(
                                SentenceNotation.print(story.title()),
                                SentenceNotation.print(story.goodAt()),
                                written(story.chosen()),
                                written(story.cautions())));
    }

    private static Stream<Sentence> sentences(Plan.Story story) {
        return Stream.of(List.of(story.title(), story.goodAt()), story.chosen(), story.cautions())
                .flatMap(List::stream);
    }

    /** Whether its English is all there is of it, as of what an earlier version kept. */
    private static boolean saysItself(Sentence sentence) {
        return sentence.equals(Sentence.itself(sentence.english()));
    }

    Plan.Story story() {
        return said == null
                ? new Plan.Story(
                        Sentence.itself(title), Sentence.itself(goodAt), read(null, chosen), read(null, cautions))
                : new Plan.Story(
                        read(said.title, title),
                        read(said.goodAt, goodAt),
                        read(said.chosen, chosen),
                        read(said.cautions, cautions));
    }

    static List<String> english(List<Sentence> sentences) {
        return sentences.stream().map(Sentence::english).toList();
    }

    /** What is kept beside the English; nothing where that is all there is. */
    static @Nullable List<String> beside(List<Sentence> sentences) {
        return sentences.stream().allMatch(KeptStory::saysItself) ? null : written(sentences);
    }

    private static List<String> written(List<Sentence> sentences) {
        return sentences.stream().map(SentenceNotation::print).toList();
    }

    /** The sentences as they were written; each that is missing or not known says its English. */
    static List<Sentence> read(@Nullable List<String> written, List<String> english) {
        List<Sentence> read = new ArrayList<>();
        for (int i = 0; i < english.size(); i++) {
            String one = written == null || i >= written.size() ? "" : written.get(i);
            read.add(read(one, english.get(i)));
        }
        return read;
    }

    private static Sentence read(String written, String english) {
        return SentenceNotation.parse(written).orElseGet(() -> Sentence.itself(english));
    }
}
