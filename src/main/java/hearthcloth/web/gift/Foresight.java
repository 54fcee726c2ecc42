package hearthcloth.web.gift;

import hearthcloth.web.kit.PageContext;
import hearthcloth.work.Purpose;

/** What is begun beside a page that shows a gift, since it will most likely be asked for next. */
@FunctionalInterface
public interface Foresight {

    /** She is shown what a cloth for this takes. */
    void of(PageContext room, Purpose purpose);
}
