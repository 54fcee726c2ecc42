package hearthcloth.store;

/**
 * A person of a studio.
 *
 * @param name as she is called
 */
public record Person(long id, String name, Part part) {

    /** What a person may do besides her own work. */
    public enum Part {
        /** Adds people and gives cloths as guidelines. */
        TEACHER,
        MAKER
    }

    public boolean isTeacher() {
        return part == Part.TEACHER;
    }

    /** The schema of the database that holds her own work. */
    public String schema() {
        return "person_" + id;
    }
}
