package hearthcloth.web.photo;

import hearthcloth.store.PhotoBook;
import hearthcloth.store.SavedPhoto;
import hearthcloth.words.picturing.PicturingWords;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;

/** Where the pages of a photograph are, and which photograph a page is asked for. */
final class PhotoAddress {

    private PhotoAddress() {}

    static SavedPhoto asked(Context context, PhotoBook book, PicturingWords words) {
        return book.find(context.pathParam("id")).orElseThrow(() -> new NotFoundResponse(words.gone()));
    }

    static String address(String id) {
        return "/stash/photo/" + id;
    }
}
