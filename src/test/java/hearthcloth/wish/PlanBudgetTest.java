package hearthcloth.wish;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hearthcloth.measure.MeasureException;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class PlanBudgetTest {

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "2s | 2000",
                "500ms | 500",
                "1.5 s | 1500",
                "1,5 sec | 1500",
                "10 min | 600000",
                "50MS | 50",
                "1ms | 1"
            })
    void reads_times_as_people_write_them(String written, long milliseconds) {
        assertThat(PlanBudget.parse(written).milliseconds()).isEqualTo(milliseconds);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "2", "-2s", "s", "2h", "0ms", "0.9ms", "601s", "99999999999999s", "1e3s"})
    void refuses_others(String written) {
        assertThatThrownBy(() -> PlanBudget.parse(written)).isInstanceOf(MeasureException.class);
    }
}
