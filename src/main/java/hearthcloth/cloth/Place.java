package hearthcloth.cloth;

/**
 * Where a patch belongs in the cloth: its name in words, pictures and files. It says nothing of sizes. A joined bar has
 * parts 1, 2 and so on; a bar of one piece has part 0.
 */
public sealed interface Place {

    /** Short and unique within a cloth: {@code hearth}, {@code 1A}, {@code 1A.2}, {@code patch7}. */
    String id();

    /** As written on pictures: {@code 1A·2}. */
    default String label() {
        return id().replace('.', '·');
    }

    /** The same place seen from the other face. */
    default Place turnedOver() {
        return this;
    }

    /** The middle of the cloth, from which the rounds grow. */
    record Hearth() implements Place {
        @Override
        public String id() {
            return "hearth";
        }
    }

    /**
     * A bar or a part of one.
     *
     * @param round from 1, counted outwards
     * @param order from 0 within its round, in the order sewn: 0 is A
     * @param side of the work it is sewn to
     * @param part from 1 along a joined bar (left to right, top to bottom), 0 for a bar in one piece
     */
    record Bar(int round, int order, Side side, int part) implements Place {

        public Bar {
            if (round < 1 || order < 0 || part < 0) {
                throw new IllegalArgumentException("bar " + round + "/" + order + "/" + part + " cannot be");
            }
        }

        /** The name of the whole bar, without its part: {@code 2C}. */
        public String bar() {
            return round + Place.letters(order);
        }

        @Override
        public String id() {
            return part == 0 ? bar() : bar() + "." + part;
        }

        /** The same bar, as part {@code number} of it. */
        public Bar part(int number) {
            return new Bar(round, order, side, number);
        }

        @Override
        public Place turnedOver() {
            return new Bar(round, order, side.turnedOver(), part);
        }
    }

    /**
     * A patch of free patchwork, named in sewing order by its task and its number in it: {@code A1}, {@code A2}, {@code B1}.
     *
     * @param task from 1, the small task in which it is sewn: 1 is A; 0 where the cloth is not parted into tasks, and the
     *     name is then {@code patch7}
     * @param number from 1 within its task
     */
    record Free(int task, int number) implements Place {

        public Free {
            if (task < 0 || number < 1) {
                throw new IllegalArgumentException("patch " + task + "/" + number + " cannot be");
            }
        }

        /** A patch of a cloth that is not parted into tasks. */
        public Free(int number) {
            this(0, number);
        }

        /** The letters of its task, empty where there is none. */
        public String letters() {
            return task == 0 ? "" : Place.letters(task - 1);
        }

        @Override
        public String id() {
            return task == 0 ? "patch" + number : letters() + number;
        }
    }

    /** A, B … Z, AA, AB … for 0, 1 and so on. */
    private static String letters(int order) {
        String last = String.valueOf((char) ('A' + order % 26));
        return order < 26 ? last : letters(order / 26 - 1) + last;
    }

    /** The number from 0 of such letters. */
    static int order(String letters) {
        int order = 0;
        for (char c : letters.toCharArray()) {
            order = order * 26 + (c - 'A' + 1);
        }
        return order - 1;
    }
}
