package hearthcloth.draw.fabric;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FabricWeightTest {

    @ParameterizedTest
    @CsvSource({
        "Indigo denim, HEAVY",
        "white lawn, LIGHT",
        "Madder check, MIDDLING",
        "kelp linen, MIDDLING",
        "jean bleu, HEAVY",
        "lawnmower print, MIDDLING"
    })
    void a_fabric_is_as_heavy_as_its_words_say(String name, FabricWeight weight) {
        assertThat(FabricWeight.named(name)).isEqualTo(weight);
    }
}
