package hearthcloth.web;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.cloth.making.Face;
import hearthcloth.measure.Length;
import hearthcloth.stash.Piece;
import hearthcloth.store.SavedCloth;
import hearthcloth.work.Project;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Two windows change the same thing: the later one is told so in words, and neither's work is lost. */
class TwoWindowsTest extends StashVisit {

    TwoWindowsTest(@TempDir Path folder) throws Exception {
        super(folder);
    }

    private SavedCloth cloth() throws Exception {
        post("/example");
        return store.cloths().all().get(0);
    }

    private SavedCloth now(SavedCloth cloth) {
        return store.cloths().find(cloth.id()).orElseThrow();
    }

    private static String onward(HttpResponse<String> response) {
        assertThat(response.statusCode()).as(response.body()).isEqualTo(303);
        return response.headers().firstValue("Location").orElse("");
    }

    @Test
    void both_designs_of_one_cloth_are_kept_side_by_side() throws Exception {
        SavedCloth seen = cloth();
        String version = String.valueOf(seen.version());
        String address = "/cloth/" + seen.id() + "/change";
        post(address, "version", version, "what", "rules", "least", "3 in", "joins", "7");
        SavedCloth first = now(seen);

        String to = onward(post(address, "version", version, "what", "fell", "fell", "front"));

        assertThat(now(seen)).isEqualTo(first);
        assertThat(to).startsWith("/cloths/compare?c=" + seen.id() + "&c=");
        SavedCloth second = store.cloths().all().stream()
                .filter(each -> !each.id().equals(seen.id()))
                .findFirst()
                .orElseThrow();
        assertThat(second.document().design().making().fell()).isEqualTo(Face.FRONT);
        assertThat(second.document().design().rules())
                .isEqualTo(seen.document().design().rules());
        assertThat(first.document().design().rules().mostJoins()).isEqualTo(7);
        assertThat(get(to).body()).contains("Both are kept", first.name(), second.name());
    }

    @Test
    void a_stale_undo_takes_nothing_back() throws Exception {
        SavedCloth seen = cloth();
        String page = get("/cloth/" + seen.id()).body();
        String version = first("name=\"version\" value=\"(\\d+)\"", page);
        String change = "/cloth/" + seen.id() + "/change";
        post(change, "version", version, "what", "fell", "fell", "front");
        HttpResponse<String> response = post("/cloth/" + seen.id() + "/undo", "version", version);
        assertThat(response.statusCode()).isEqualTo(409);
        assertThat(response.body()).contains("meanwhile been changed in another window");
        assertThat(now(seen).document().design().making().fell()).isEqualTo(Face.FRONT);
    }

    @Test
    void notes_and_a_name_written_twice_are_both_shown_and_the_later_can_be_sent_again() throws Exception {
        SavedCloth seen = cloth();
        String version = String.valueOf(seen.version());
        String life = "/made/" + seen.id() + "/slip";
        onward(post(life, "version", version, "made", "May", "wrapped", "tea", "keeper", "Mo"));
        HttpResponse<String> response =
                post(life, "version", version, "made", "June", "wrapped", "books", "keeper", "Ann");
        assertThat(response.statusCode()).isEqualTo(409);
        assertThat(response.body())
                .contains("Made May; wrapped tea; with Mo", "What you wrote", "June", "books", "Ann");
        assertThat(now(seen).document().life().made()).isEqualTo("May");

        String fresh = first("name=\"version\" value=\"(\\d+)\"", response.body());
        onward(post(life, "version", fresh, "made", "June", "wrapped", "books", "keeper", "Ann"));
        assertThat(now(seen).document().life().keeper()).isEqualTo("Ann");

        String name = "/cloth/" + seen.id() + "/name";
        onward(post(name, "was", seen.name(), "name", "Tea cloth"));
        HttpResponse<String> late = post(name, "was", seen.name(), "name", "Book cloth");
        assertThat(late.statusCode()).isEqualTo(409);
        assertThat(late.body()).contains("It is called Tea cloth.", "Book cloth", "Do it all the same");
        assertThat(now(seen).name()).isEqualTo("Tea cloth");
    }

    @Test
    void a_cloth_changed_since_is_not_removed() throws Exception {
        SavedCloth seen = cloth();
        String version = String.valueOf(seen.version());
        post("/cloth/" + seen.id() + "/change", "version", version, "what", "fell", "fell", "front");
        assertThat(post("/cloths/" + seen.id() + "/remove", "version", version).statusCode())
                .isEqualTo(409);
        assertThat(store.cloths().find(seen.id())).isPresent();
    }

    @Test
    void the_same_cut_ticked_on_two_devices_stays_ticked() throws Exception {
        SavedCloth seen = cloth();
        String page = get("/cut/" + seen.id()).body();
        String cut = first("name=\"cut\" value=\"([^\"]+)\"", page);
        assertThat(first("name=\"on\" value=\"(\\w+)\"", page)).isEqualTo("yes");
        post("/cut/" + seen.id() + "/tick", "cut", cut, "on", "yes");
        post("/cut/" + seen.id() + "/tick", "cut", cut, "on", "yes");
        assertThat(now(seen).document().bench().ticked()).containsExactly(cut);
        post("/cut/" + seen.id() + "/tick", "cut", cut, "on", "no");
        assertThat(now(seen).document().bench().ticked()).isEmpty();
    }

    @Test
    void a_cloth_replanned_elsewhere_is_not_cut_on_the_old_page() throws Exception {
        SavedCloth seen = cloth();
        String version = String.valueOf(seen.version());
        post("/cloth/" + seen.id() + "/change", "version", version, "what", "fell", "fell", "front");
        List<Piece> before = pieces();
        assertThat(post("/cut/" + seen.id() + "/done", "version", version).statusCode())
                .isEqualTo(409);
        assertThat(now(seen).document().life().stage()).isEqualTo(Project.Stage.DESIGNED);
        assertThat(pieces()).isEqualTo(before);
    }

    @Test
    void a_piece_changed_in_both_windows_shows_both_and_asks() throws Exception {
        post("/stash/line", "line", "oat linen 10 x 20 in");
        Piece piece = pieces().get(0);
        String address = "/stash/piece/" + piece.id() + "/change";
        String seen = seen(get("/stash/piece/" + piece.id()).body());
        String[] mine = {
            "seen",
            seen,
            "width",
            "9 in",
            "length",
            "20 in",
            "fabric",
            piece.fabric().name()
        };
        onward(post(
                address,
                "seen",
                seen,
                "width",
                "8 in",
                "length",
                "20 in",
                "fabric",
                piece.fabric().name()));

        HttpResponse<String> late = post(address, mine);

        assertThat(late.statusCode()).isEqualTo(409);
        assertThat(late.body())
                .contains(
                        "meanwhile been changed in another window",
                        "As it is now",
                        "8 × 20 in",
                        "What you wrote",
                        "9 in");
        assertThat(pieces().get(0).size()).isEqualTo(inches(8, 20));

        mine[1] = seen(late.body());
        onward(post(address, mine));
        assertThat(pieces().get(0).size()).isEqualTo(inches(9, 20));
    }

    @Test
    void a_piece_used_up_elsewhere_is_not_brought_back_by_an_old_page() throws Exception {
        post("/stash/line", "line", "oat linen 10 x 20 in");
        Piece piece = pieces().get(0);
        String seen = seen(get("/stash/piece/" + piece.id()).body());
        onward(post("/stash/piece/" + piece.id() + "/use", "seen", seen));
        HttpResponse<String> late = post(
                "/stash/piece/" + piece.id() + "/change",
                "seen",
                seen,
                "width",
                "9 in",
                "length",
                "20 in",
                "fabric",
                "x");
        assertThat(late.statusCode()).isEqualTo(409);
        assertThat(late.body()).contains("no longer in the stash", "9 in").doesNotContain("Do it all the same");
        assertThat(pieces()).isEmpty();
    }

    @Test
    void a_fabric_changed_in_both_windows_shows_both() throws Exception {
        post("/stash/line", "line", "oat linen 10 x 20 in");
        String name = pieces().get(0).fabric().name();
        String page = get("/stash/fabric?name=" + name.replace(" ", "+")).body();
        String seen = seen(page);
        String[] fields = {"was", name, "seen", seen, "name", name, "colour", "#112233", "faces", "SAME", "nap", "ANY"};
        onward(post("/stash/fabric", fields));
        fields[7] = "#445566";
        HttpResponse<String> late = post("/stash/fabric", fields);
        assertThat(late.statusCode()).isEqualTo(409);
        assertThat(late.body()).contains("#112233", "#445566", "Do it all the same");
        assertThat(pieces().get(0).fabric().colour().hex()).isEqualTo("#112233");
        assertThat(pieces().get(0).size().width()).isEqualTo(Length.inches(10));
    }
}
