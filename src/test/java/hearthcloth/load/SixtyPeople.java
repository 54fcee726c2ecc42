package hearthcloth.load;

import hearthcloth.RunningWorkroom;
import hearthcloth.measure.Length;
import hearthcloth.measure.Size;
import hearthcloth.stash.Piece;
import hearthcloth.store.Person;
import hearthcloth.store.studio.Studio;
import hearthcloth.store.studio.StudioAddress;
import java.io.IOException;
import java.time.Clock;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.TimeUnit;

/**
 * A studio of many people in three workrooms before one database, which is restarted twice while they work. Each adds pieces
 * of sizes of her own; afterwards every acknowledged one is there once, and of the others none twice.
 * {@code SixtyPeople ADDRESS PEOPLE SECONDS RESTART…}
 */
public final class SixtyPeople {

    private static final long SEED = 20_261_130;
    private static final String TEACHERS = "kelp and plum by lamplight";
    private static final String MAKERS = "nine buttons in a jar";
    private static final int ROOMS = 3;

    /** A person at work, until the time is over. */
    private static final class Maker implements Runnable {
        private final Caller caller;
        private final Random random;
        private final long until;
        /** By change: whether it was acknowledged. */
        private final Map<Integer, Boolean> sent = new HashMap<>();

        Maker(Caller caller, int number, long until) {
            this.caller = caller;
            this.random = new Random(SEED + number);
            this.until = until;
        }

        @Override
        public void run() {
            try {
                caller.see("page", "/stash");
                for (int change = 0; System.nanoTime() < until; change++) {
                    TimeUnit.MILLISECONDS.sleep(1_000 + random.nextInt(3_000));
                    int status = caller.post("line", "/stash/line", "line", "1 oat linen " + inches(change))
                            .statusCode();
                    sent.put(change, status == 303);
                    if (status != 303 || random.nextInt(4) == 0) {
                        caller.see("page", random.nextBoolean() ? "/stash" : "/cloths");
                    }
                }
            } catch (IOException e) {
                throw new IllegalStateException("the workroom itself gave no answer", e);
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            }
        }

        private static String inches(int change) {
            return (1 + change % 50) + " x " + (1 + change / 50) + " in";
        }

        /** What is wrong with what she has now. */
        List<String> wrong(String name, List<Piece> pieces) {
            List<String> wrong = new ArrayList<>();
            Map<Size, Integer> there = new HashMap<>();
            pieces.forEach(piece -> there.merge(piece.size(), 1, Integer::sum));
            sent.forEach((change, isAcknowledged) -> {
                Size size = new Size(Length.inches(1 + change % 50), Length.inches(1 + change / 50));
                int found = Optional.ofNullable(there.remove(size)).orElse(0);
                if (found > 1 || (isAcknowledged && found == 0)) {
                    wrong.add(name + ": change " + change + " is there " + found + " times");
                }
            });
            there.forEach((size, count) -> wrong.add(name + ": " + size + " was never sent"));
            return wrong;
        }
    }

    private SixtyPeople() {}

    public static void main(String[] words) throws Exception {
        String address = words[0];
        int people = Integer.parseInt(words[1]);
        long seconds = Long.parseLong(words[2]);
        List<String> restart = List.of(words).subList(3, words.length);
        List<RunningWorkroom> rooms = new ArrayList<>();
        boolean held;
        try {
            for (int i = 0; i < ROOMS; i++) {
                rooms.add(RunningWorkroom.opened("--data", address));
            }
            held = held(rooms, address, people, seconds, restart);
        } finally {
            rooms.forEach(RunningWorkroom::close);
        }
        System.exit(held ? 0 : 1);
    }

    private static boolean held(
            List<RunningWorkroom> rooms, String address, int people, long seconds, List<String> restart)
            throws Exception {
        Times times = new Times();
        List<Caller> callers = comeIn(rooms, people, times);
        List<Maker> makers = new ArrayList<>();
        List<Thread> threads = new ArrayList<>();
        long begun = System.nanoTime();
        for (int i = 0; i < people; i++) {
            makers.add(new Maker(callers.get(i), i, begun + TimeUnit.SECONDS.toNanos(seconds)));
            threads.add(new Thread(makers.get(i), "maker " + i));
        }
        threads.forEach(Thread::start);
        for (int i = 0; i < 2; i++) {
            TimeUnit.SECONDS.sleep(seconds / 3);
            int code = new ProcessBuilder(restart).inheritIO().start().waitFor();
            System.out.println("  the database was restarted, exit " + code);
        }
        for (Thread thread : threads) {
            thread.join();
        }
        System.out.print(times.told());
        List<String> wrong = wrong(address, makers);
        wrong.forEach(line -> System.out.println("  " + line));
        System.out.printf(
                "  seed %d, %d people, %d rooms: %d lost, doubled or strange; %d answers failed%n",
                SEED, people, rooms.size(), wrong.size(), times.failed());
        return wrong.isEmpty() && times.failed() == 0;
    }

    private static List<Caller> comeIn(List<RunningWorkroom> rooms, int people, Times times) throws IOException {
        Caller teacher = new Caller(rooms.get(0).port(), times);
        entered(teacher, "Maker 0", TEACHERS);
        List<Caller> callers = new ArrayList<>(List.of(teacher));
        for (int i = 1; i < people; i++) {
            teacher.see("page", "/people");
            int status = teacher.post(
                            "add a person", "/people", "name", "Maker " + i, "passphrase", MAKERS, "part", "maker")
                    .statusCode();
            Caller maker = new Caller(rooms.get(i % rooms.size()).port(), times);
            if (status != 303) {
                throw new IllegalStateException("maker " + i + " was not brought in: " + status);
            }
            entered(maker, "Maker " + i, MAKERS);
            callers.add(maker);
        }
        return callers;
    }

    private static void entered(Caller caller, String name, String passphrase) throws IOException {
        caller.see("entrance", "/enter");
        int status = caller.post("enter", "/enter", "name", name, "passphrase", passphrase)
                .statusCode();
        caller.see("first page", "/gift");
        if (status != 303) {
            throw new IllegalStateException(name + " could not come in: " + status);
        }
    }

    private static List<String> wrong(String address, List<Maker> makers) {
        List<String> wrong = new ArrayList<>();
        try (Studio studio = Studio.open(StudioAddress.parse(address, Optional.empty()), Clock.systemUTC())) {
            for (Person person : studio.people().all()) {
                int number = Integer.parseInt(person.name().replace("Maker ", ""));
                wrong.addAll(makers.get(number)
                        .wrong(person.name(), studio.of(person).stash().whole().pieces()));
            }
        }
        return wrong;
    }
}
