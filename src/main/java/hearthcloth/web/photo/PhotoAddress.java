package hearthcloth.web.photo;

import hearthcloth.store.PhotoBook;
import hearthcloth.store.SavedPhoto;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;

/** Where the pages of a photograph are, and which photograph a page is asked for. */
final class PhotoAddress {

    private PhotoAddress() {}

    static SavedPhoto asked(Context context, PhotoBook book) {
        return book.find(context.pathParam("id"))
                .orElseThrow(() -> new NotFoundResponse("This photograph has been deleted; send it again."));
    }

    static String address(String id) {
        return "/stash/photo/" + id;
    }
}
