package hearthcloth.wish;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hearthcloth.measure.Length;
import hearthcloth.measure.Ruler;
import hearthcloth.measure.Size;
import hearthcloth.plan.propose.Stashes;
import hearthcloth.words.Language;
import hearthcloth.words.speech.Voice;
import java.util.List;
import org.junit.jupiter.api.Test;

/** {@link WishList}: a line a cloth; every fault of a list is told at once, by line and column. */
class WishListTest {

    private static WishList list(WishWords common) {
        return new WishList(common, Stashes.scraps(20, 3), Ruler.EIGHTHS);
    }

    private static List<String> faults(String text) {
        BadInputException[] caught = new BadInputException[1];
        assertThatThrownBy(() -> list(WishWords.NOTHING).read(text, "list.csv"))
                .isInstanceOfSatisfying(BadInputException.class, e -> caught[0] = e);
        return caught[0].in(Language.ENGLISH);
    }

    @Test
    void each_line_is_a_cloth_of_its_own() {
        List<WishList.Line> lines = list(WishWords.NOTHING)
                .read("name,size,gift,free\nAda,16 in,,\nBea,,box 8 x 6 x 3 in,\nCleo,12 in,,yes\n", "list.csv");
        assertThat(lines).extracting(WishList.Line::name).containsExactly("Ada", "Bea", "Cleo");
        assertThat(lines.get(0).wish().target().size()).contains(Size.square(Length.inches(16)));
        assertThat(lines.get(1).gift()).isPresent();
        assertThat(lines.get(1).asked(Voice.english(Ruler.EIGHTHS))).contains("8", "6", "3");
        assertThat(lines.get(0).patchwork()).isEmpty();
        assertThat(lines.get(2).patchwork()).isPresent();
        assertThat(lines.get(0).asked(Voice.english(Ruler.EIGHTHS))).startsWith("16");
    }

    @Test
    void what_is_wished_for_all_holds_until_a_line_says_otherwise() {
        WishWords common = WishWords.NOTHING.with(WishField.SIZE, "14 in");
        List<WishList.Line> lines = list(common).read("name,size\nAda,\nBea,18 in\n", "list.csv");
        assertThat(lines.get(0).wish().target().size()).contains(Size.square(Length.inches(14)));
        assertThat(lines.get(1).wish().target().size()).contains(Size.square(Length.inches(18)));
        List<WishList.Line> students = list(common).students(3, Door.SHELL, Voice.english(Ruler.EIGHTHS));
        assertThat(students).extracting(WishList.Line::name).containsExactly("Student 1", "Student 2", "Student 3");
        assertThat(students).allMatch(line -> line.wish().equals(students.get(0).wish()));
    }

    @Test
    void every_fault_is_told_at_once_by_its_line() {
        assertThat(faults("name,size\n,16 in\nAda,wide\nada,12 in\nBea,\n"))
                .hasSize(4)
                .satisfiesExactlyInAnyOrder(
                        one -> assertThat(one).startsWith("list.csv, line 2, name: a name is missing"),
                        two -> assertThat(two).startsWith("list.csv, line 3, size: "),
                        three ->
                                assertThat(three).startsWith("list.csv, line 4, name: another cloth is called \"ada\""),
                        four -> assertThat(four).startsWith("list.csv, line 5, size: how large is not said"));
    }

    @Test
    void a_list_whose_columns_are_not_known_names_those_that_are() {
        assertThat(faults("name,sise\nAda,16 in\n").get(0))
                .startsWith("list.csv, line 1: no wish is called \"sise\"; there are name, ")
                .contains("size", "gift");
        assertThat(faults("size\n16 in\n").get(0)).contains("no column is called name");
        assertThat(faults("name,size,size\nAda,16 in,12 in\n").get(0)).contains("two columns have this name");
        assertThat(faults("name,size\n").get(0)).contains("names no cloth");
    }

    @Test
    void more_cloths_than_two_digits_name_are_refused() {
        StringBuilder many = new StringBuilder("name,size\n");
        for (int i = 0; i < 100; i++) {
            many.append("Student ").append(i).append(",16 in\n");
        }
        assertThat(faults(many.toString()).get(0)).isEqualTo("list.csv has more than 99 cloths; split it.");
    }
}
