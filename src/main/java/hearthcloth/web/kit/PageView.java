package hearthcloth.web.kit;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * All that one template shows, as one value: a record is the single parameter of the template it names. What a page
 * lacks is thereby found when the program is compiled, in the record's constructor or in the template that reads it.
 */
public interface PageView {

    /** The template that shows the record it stands on. */
    @Target(ElementType.TYPE)
    @Retention(RetentionPolicy.RUNTIME)
    @interface Template {

        /** Its path below {@code src/main/jte}, such as {@code part/said.jte}. */
        String value();
    }

    /**
     * Which template shows this.
     *
     * @throws IllegalStateException where the record names none
     */
    static String template(Class<? extends PageView> view) {
        Template template = view.getAnnotation(Template.class);
        if (template == null) {
            throw new IllegalStateException(view.getName() + " names no template");
        }
        return template.value();
    }
}
