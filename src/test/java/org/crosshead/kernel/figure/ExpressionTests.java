package org.crosshead.kernel.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Checks the evaluator by which figures are worked out again. */
class ExpressionTests {

    private static final Map<String, Double> SYMBOLS = Map.of("v", 3.0, "massKg", 8.0, "x_1", -2.0);

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            1 + 2 * 3               | 7
            (1 + 2) * 3             | 9
            8 - 3 - 2               | 3
            16 / 4 / 2              | 2
            2 ^ 3 ^ 2               | 512
            -2 ^ 2                  | -4
            2 ^ -1                  | 0.5
            2 * -3                  | -6
            - -v                    | 3
            1.5e3 + 2E-1            | 1500.2
            .5 * v                  | 1.5
            sqrt(massKg * 2)        | 4
            min(v, massKg, 2)       | 2
            max(x_1, v)             | 3
            ceil(7 / 2) - floor(7/2)| 1
            max(0, v - sqrt(v ^ 2)) | 0
            """)
    void worksOut(String text, double expected) {
        assertThat(Expression.value(text, SYMBOLS)).isCloseTo(expected, within(1e-12));
    }

    @Test
    void namesTheSymbolsItUses() {
        assertThat(Expression.symbols("v * massKg + v", SYMBOLS)).containsExactly("massKg", "v");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "1 +", "1 2", "(1", "sqrt(1, 2)", "min(1)", "speed * 2", "v %% 2", "1)", "max(1, 2"})
    void refuses(String text) {
        assertThatThrownBy(() -> Expression.value(text, SYMBOLS)).isInstanceOf(IllegalArgumentException.class);
    }
}
