package org.crosshead.kernel.standing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class HandBrakeTableTests {

    private static final HandBrakeTable BOTH =
            new HandBrakeTable(new TreeMap<>(Map.of(3, 1, 10, 2)), new TreeMap<>(Map.of(0.01, 0.2, 0.02, 0.4)));

    @ParameterizedTest
    @CsvSource(textBlock = """
            1,  0,      1
            3,  0,      1
            4,  0,      2
            10, 0.0099, 2
            10, 0.01,   2
            6,  -0.01,  2
            10, 0.0199, 2
            10, 0.02,   4
            9,  -0.03,  4
            1,  0.03,   1
            0,  0.03,   0
            """)
    void theGreaterOfChartAndShareCounts(int vehicles, double slope, int brakes) {
        assertThat(BOTH.brakes(vehicles, slope)).hasValue(brakes);
    }

    @Test
    void longerTrainThanTheChartIsNotAnswered() {
        assertThat(BOTH.endsBefore(10)).isFalse();
        assertThat(BOTH.endsBefore(11)).isTrue();
        assertThat(BOTH.brakes(11, 0)).isEmpty();
    }

    @Test
    void noRuleIsNoAnswer() {
        HandBrakeTable none = new HandBrakeTable(new TreeMap<>(), new TreeMap<>());
        assertThat(none.isEmpty()).isTrue();
        assertThat(none.endsBefore(90)).isFalse();
        assertThat(none.brakes(30, 0.02)).isEmpty();
    }

    @Test
    void refusesWhatCannotBe() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new HandBrakeTable(new TreeMap<>(Map.of(0, 1)), new TreeMap<>()));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new HandBrakeTable(new TreeMap<>(Map.of(1, -1)), new TreeMap<>()));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new HandBrakeTable(new TreeMap<>(), new TreeMap<>(Map.of(0.3, 0.1))));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new HandBrakeTable(new TreeMap<>(), new TreeMap<>(Map.of(0.1, 1.1))));
        assertThatIllegalArgumentException().isThrownBy(() -> BOTH.brakes(-1, 0));
    }
}
