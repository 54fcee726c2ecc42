package hearthcloth.cli.report;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.json.JsonMapper;

/** Reports for programs: JSON, two blanks a level; what is not there is left out. */
public final class JsonText {

    private JsonText() {}

    public static String of(Record report) {
        try {
            String json = JsonMapper.builder()
                    .defaultPropertyInclusion(
                            JsonInclude.Value.construct(JsonInclude.Include.NON_NULL, JsonInclude.Include.NON_NULL))
                    .build()
                    .writerWithDefaultPrettyPrinter()
                    .writeValueAsString(report);
            return json.replaceAll("\\p{Cs}", "\ufffd");
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("a report that cannot be written", e);
        }
    }
}
