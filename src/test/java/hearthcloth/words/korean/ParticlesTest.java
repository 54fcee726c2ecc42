package hearthcloth.words.korean;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** docs/sources.md#particles: which form stands after which sound. */
class ParticlesTest {

    @ParameterizedTest
    @CsvSource(textBlock = """
            띠 1A을(를) 편다, 띠 1A를 편다
            띠 2C·1을(를) 편다, 띠 2C·1을 편다
            띠 2C·2을(를) 편다, 띠 2C·2를 편다
            중심 조각을(를) 편다, 중심 조각을 편다
            천이(가) 있다, 천이 있다
            보자기이(가) 있다, 보자기가 있다
            조각 L은(는) 위에, 조각 L은 위에
            조각 B은(는) 위에, 조각 B는 위에
            2.5 cm을(를) 접는다, 2.5 cm를 접는다
            ¼ in을(를) 접는다, ¼ in를 접는다
            조각 3과(와) 조각 2과(와) 조각, 조각 3과 조각 2와 조각
            조각 1(으)로 간다, 조각 1로 간다
            조각 3(으)로 간다, 조각 3으로 간다
            조각 2(으)로 간다, 조각 2로 간다
            앞면(으)로 접는다, 앞면으로 접는다
            '"바늘"을(를) 본다', '"바늘"을 본다'
            """)
    void the_form_follows_the_last_sound(String both, String fitted) {
        assertThat(Particles.fitted(both)).isEqualTo(fitted);
    }
}
