package hearthcloth.store.json;

import com.fasterxml.jackson.annotation.JsonCreator;
import com.fasterxml.jackson.annotation.JsonFormat;
import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonPropertyOrder;
import com.fasterxml.jackson.annotation.JsonSetter;
import com.fasterxml.jackson.annotation.JsonValue;
import com.fasterxml.jackson.annotation.Nulls;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JavaType;
import com.fasterxml.jackson.databind.JsonMappingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.MapperFeature;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.annotation.JsonDeserialize;
import com.fasterxml.jackson.databind.annotation.JsonSerialize;
import com.fasterxml.jackson.databind.introspect.Annotated;
import com.fasterxml.jackson.databind.introspect.AnnotatedMember;
import com.fasterxml.jackson.databind.introspect.JacksonAnnotationIntrospector;
import com.fasterxml.jackson.databind.json.JsonMapper;
import hearthcloth.cloth.making.Making;
import hearthcloth.colour.Colour;
import hearthcloth.colour.Lab;
import hearthcloth.geometry.Point;
import hearthcloth.measure.Length;
import hearthcloth.stash.Fabric;
import hearthcloth.stash.Piece;
import hearthcloth.work.BenchFact;
import hearthcloth.work.Keepsake;
import hearthcloth.work.Project;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Reads and writes what is kept as JSON, through records whose components are the fields. A length is a whole number of
 * nanometres, a colour {@code #rrggbb}, a place in a picture its two and a colour of CIELAB its three numbers. Every
 * field must be there but those whose component bears {@link JsonInclude}; a field that no component has is passed over,
 * so that what a newer program adds does not hinder.
 */
public final class Json {

    private static final ObjectMapper MAPPER = mapper();

    private Json() {}

    private static ObjectMapper mapper() {
        return JsonMapper.builder()
                .disable(MapperFeature.AUTO_DETECT_IS_GETTERS)
                .disable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES, DeserializationFeature.ACCEPT_FLOAT_AS_INT)
                .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
                .annotationIntrospector(new Required())
                .addMixIn(Length.class, OfLength.class)
                .addMixIn(Colour.class, OfColour.class)
                .addMixIn(Point.class, AsList.class)
                .addMixIn(Lab.class, AsList.class)
                .addMixIn(Piece.class, OfPiece.class)
                .addMixIn(Fabric.class, OfFabric.class)
                .addMixIn(Making.class, OfMaking.class)
                .addMixIn(Project.Life.class, OfLife.class)
                .addMixIn(Keepsake.class, OfKeepsake.class)
                .addMixIn(BenchFact.Sewn.class, OfSewn.class)
                .build();
    }

    /** The text of a record, a list of records, or a map of them by name. */
    public static String text(Object kept) {
        try {
            return MAPPER.writeValueAsString(kept);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("a record that cannot be written", e);
        }
    }

    /**
     * Reads one record.
     *
     * @throws IllegalArgumentException naming the field that is missing or does not fit
     */
    public static <T> T read(String text, Class<T> type) {
        return read(text, MAPPER.constructType(type));
    }

    /** Reads a list of records; fails as {@link #read(String, Class)}. */
    public static <T> List<T> list(String text, Class<T> type) {
        List<T> items = read(text, MAPPER.getTypeFactory().constructCollectionType(List.class, type));
        return List.copyOf(items);
    }

    /** Reads records by name, in the order they are written; fails as {@link #read(String, Class)}. */
    public static <T> Map<String, T> map(String text, Class<T> type) {
        return read(text, MAPPER.getTypeFactory().constructMapType(Map.class, String.class, type));
    }

    @SuppressWarnings("TypeParameterUnusedInFormals") // the type comes as Jackson's own, which Java cannot tie to it
    private static <T> T read(String text, JavaType type) {
        try {
            T read = MAPPER.readValue(text, type);
            if (read == null) {
                throw new IllegalArgumentException("nothing is written in the document");
            }
            return read;
        } catch (JsonProcessingException e) {
            throw unfit(e);
        }
    }

    /** The fields of a text, to be looked at before it is known what it is. */
    static JsonNode tree(String text) {
        try {
            return MAPPER.readTree(text);
        } catch (JsonProcessingException e) {
            throw unfit(e);
        }
    }

    /** The fields of a record. */
    static JsonNode tree(Record kept) {
        return MAPPER.valueToTree(kept);
    }

    static <T> T read(JsonNode tree, Class<T> type) {
        try {
            return MAPPER.treeToValue(tree, type);
        } catch (JsonProcessingException e) {
            throw unfit(e);
        }
    }

    private static IllegalArgumentException unfit(JsonProcessingException e) {
        if (e instanceof JsonMappingException unfit && !unfit.getPath().isEmpty()) {
            StringBuilder field = new StringBuilder();
            for (JsonMappingException.Reference step : unfit.getPath()) {
                String name = step.getFieldName();
                field.append(name == null ? "[" + step.getIndex() + "]" : (field.isEmpty() ? "" : ".") + name);
            }
            return new IllegalArgumentException(
                    "the document lacks \"" + field + "\", or has something else in its place", e);
        }
        return new IllegalArgumentException("the document is not whole, or not one of ours", e);
    }

    /** What bears no {@link JsonInclude} must be there and not be null. */
    private static final class Required extends JacksonAnnotationIntrospector {
        private static final long serialVersionUID = 1L;

        @Override
        public Boolean hasRequiredMarker(AnnotatedMember member) {
            return !member.hasAnnotation(JsonInclude.class);
        }

        @Override
        public JsonSetter.Value findSetterInfo(Annotated annotated) {
            return JsonSetter.Value.forValueNulls(
                    annotated.hasAnnotation(JsonInclude.class) ? Nulls.SET : Nulls.FAIL, Nulls.FAIL);
        }
    }

    /** A whole number of nanometres. */
    private abstract static class OfLength {
        @JsonCreator(mode = JsonCreator.Mode.DELEGATING)
        @SuppressWarnings("UnusedVariable") // read by Jackson, as a pattern for another class
        OfLength(long nm) {}

        @JsonValue
        abstract long nm();
    }

    /** {@code #rrggbb}. */
    private abstract static class OfColour {
        @JsonCreator(mode = JsonCreator.Mode.DELEGATING)
        static Colour parse(String text) {
            return Colour.parse(text);
        }

        @JsonValue
        abstract String hex();
    }

    /** Its fields, with the colour of its wrong side where there is one. */
    @JsonSerialize(converter = KeptFabric.IntoDocument.class)
    @JsonDeserialize(converter = KeptFabric.FromDocument.class)
    private interface OfFabric {}

    /** The numbers alone, in their order. */
    @JsonFormat(shape = JsonFormat.Shape.ARRAY)
    private interface AsList {}

    @JsonPropertyOrder({"id", "washed", "row", "fabric", "size"})
    private interface OfPiece {}

    @JsonPropertyOrder({"fell", "seam", "hem", "margins"})
    private interface OfMaking {}

    /** What a cloth lacks that was kept before cloths remembered it is left out. */
    @SuppressWarnings("UnusedMethod") // read by Jackson, as a pattern for another class
    private interface OfLife {
        @JsonInclude(JsonInclude.Include.NON_NULL)
        @Nullable
        Object purpose();

        @JsonInclude(JsonInclude.Include.NON_NULL)
        @Nullable
        Object paper();

        @JsonInclude(JsonInclude.Include.NON_NULL)
        @Nullable
        Object keepsake();
    }

    @SuppressWarnings("UnusedMethod") // read by Jackson, as a pattern for another class
    private interface OfKeepsake {
        @JsonInclude(JsonInclude.Include.NON_NULL)
        @Nullable
        Object real();
    }

    @SuppressWarnings("UnusedMethod") // read by Jackson, as a pattern for another class
    private interface OfSewn {
        @JsonInclude(JsonInclude.Include.NON_NULL)
        @Nullable
        Object at();

        @JsonInclude(JsonInclude.Include.NON_NULL)
        @Nullable
        Object measured();
    }
}
