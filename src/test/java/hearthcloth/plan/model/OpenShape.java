package hearthcloth.plan.model;

import java.util.List;
import java.util.Optional;

/** A wish that says nothing of the layout. */
public final class OpenShape {

    private OpenShape() {}

    public static Wish.Shape shape() {
        return new Wish.Shape(Optional.empty(), List.of(), Optional.empty(), Optional.empty());
    }
}
