package hearthcloth.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** No class that speaks through the catalogues holds a sentence of its own. The list grows as rooms are brought in. */
class BareSentenceTest {

    private static final Path MAIN = Path.of("src", "main", "java", "hearthcloth");

    private static final List<String> HELD = List.of(
            "wrap/Fit wrap/GiftWords wrap/PublishedRule wrap/TradeFit wrap/Tail wrap/Corner wrap/tie/Wrapped",
            "plan/propose/ProposalStrengths plan/propose/ProposalSelection plan/propose/LargestCloth plan/propose/Remedy plan/propose/Shortfall plan/propose/Planner",
            "plan/propose/Drafts plan/propose/TrialColours plan/propose/LayoutCandidates plan/propose/VisibleFabricSchemes plan/propose/GoodAt",
            "plan/colour/ColourFigures plan/colour/TiedColours plan/ready/ReadyLayouts plan/fit/CutJob plan/patchwork/BlockPlanning",
            "plan/patchwork/FreePlanning plan/patchwork/Meetings plan/patchwork/PatchworkPlans plan/patchwork/PatchworkPlanner",
            "plan/patchwork/ScrapChoice plan/patchwork/SeveralFreeCloths cli/report/PlanReport cli/report/KitsReport cli/report/SizeReport",
            "wrap/tying/Tying wrap/tying/TyingLines wrap/tying/WhatShows",
            "sew/Advice sew/CuttingOut sew/FewWords sew/Gathering sew/Guide sew/MakerWords sew/Meeting sew/SeamTasks sew/SeamWords",
            "sew/SmallTasks sew/machine/AtTheMachine",
            "draw/GuidePages draw/NetSheet draw/TiedSheet draw/cloth/CutPicture draw/cloth/DrawingScale draw/cloth/FacePicture",
            "draw/cloth/FaceSheet draw/cloth/Legend draw/cloth/PatchName draw/cloth/StepPicture draw/tied/Eye",
            "draw/guide/ClassGuide draw/guide/CutCells draw/guide/Flow draw/guide/JoinedSeams draw/guide/PatchSlips",
            "draw/guide/SeamTable draw/guide/TaskBlock draw/guide/TiedPages",
            "sew/Hemming sew/TrialSeam draw/cloth/MatPicture",
            "web/made/MadePage web/made/MadeSheet web/made/MadeShown web/made/SlipForm",
            "web/make/AskedBack web/make/CutPage web/make/CutSheet web/make/CutShown web/make/CutSlip",
            "web/make/CutTicks web/make/LateSlip web/make/OwnPace web/make/SewBar web/make/SewMeasure",
            "web/make/SewPage web/make/SewSheet web/make/SewSide web/make/SewWays web/make/SewnSoFar",
            "web/photo/PhotoAddress web/photo/PhotoChanges web/photo/PhotoChosen web/photo/PhotoPage",
            "web/photo/PhotoScreens web/photo/PhotoTaking web/photo/PhotoView web/photo/SortingView",
            "web/photo/TappedCorners",
            "web/tie/TieView web/tie/TiedPage web/tie/TiedView",
            "web/door/Devices web/door/RequestGuard web/door/RequestMeasure",
            "web/house/ClosingPage web/house/EntrancePage web/house/GuidelinesPage web/house/PeoplePage",
            "web/house/SafetyPage");

    /** Two words in small letters after each other: a piece of a sentence. */
    private static final Pattern PIECE = Pattern.compile("\"[^\"\\n]*\\b[a-z]{2,} [a-z]{2,}\\b[^\"\\n]*\"");

    private static final Pattern COMMENT = Pattern.compile(
            "(?s:/\\*.*?\\*/)|(?m://.*$)|(?m:^.*(?:IllegalArgument|IllegalState|UncheckedIO|Assertion)\\w*\\(.*$)");

    /** Texts that nobody reads: names in the first scene, and what is written so that it can be read back. */
    private static final List<String> UNSAID =
            List.of("drawn/BenchDrawing gift/GiftShape home/FirstRun house/HandOnPage stash/StashFields tie/TiePage");

    private static final Path PAGES = MAIN.resolve("web");

    /** Marks of a drawing or a page. */
    private static final Pattern MARKS = Pattern.compile("<|=\\\\\"|\\\\\">");

    private static List<String> names(List<String> lines) {
        return lines.stream().flatMap(line -> Stream.of(line.split(" ", -1))).toList();
    }

    /** The classes of pages with a sentence of their own, and which. */
    private static Map<String, List<String>> speaking() throws IOException {
        Map<String, List<String>> found = new TreeMap<>();
        try (Stream<Path> all = Files.walk(PAGES)) {
            for (Path file : all.filter(one -> one.toString().endsWith(".java")).toList()) {
                List<String> said = pieces(Files.readString(file)).stream()
                        .filter(piece -> !MARKS.matcher(piece).find())
                        .toList();
                String name =
                        PAGES.relativize(file).toString().replace('\\', '/').replace(".java", "");
                if (!said.isEmpty() && !names(UNSAID).contains(name)) {
                    found.put(name, said);
                }
            }
        }
        return found;
    }

    @Test
    void a_class_of_a_page_says_nothing_of_its_own() throws IOException {
        Map<String, List<String>> speaking = speaking();
        assertThat(speaking).isEmpty();
    }

    static List<String> held() {
        List<String> all = new ArrayList<>();
        HELD.forEach(line -> all.addAll(List.of(line.split(" ", -1))));
        return all;
    }

    private static List<String> pieces(String source) {
        return PIECE.matcher(COMMENT.matcher(source).replaceAll(""))
                .results()
                .map(found -> found.group())
                .toList();
    }

    @ParameterizedTest
    @MethodSource("held")
    void a_class_that_speaks_by_the_catalogues_has_no_sentence_of_its_own(String file) throws IOException {
        assertThat(pieces(Files.readString(MAIN.resolve(file + ".java")))).isEmpty();
    }

    @Test
    void a_sentence_is_found_and_a_comment_is_not() {
        assertThat(pieces("lines.add(\"Press the seam.\"); // \"press the seam\""))
                .containsExactly("\"Press the seam.\"");
        assertThat(pieces("words.equals(\"bottom\")")).isEmpty();
    }
}
