package org.crosshead.route.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.function.BiFunction;
import java.util.function.Function;
import org.crosshead.platform.Origin;
import org.crosshead.route.GradientNotation;
import org.crosshead.route.MeasureUnit;
import org.crosshead.route.RouteDraft;
import org.crosshead.route.RouteDraft.GradientLength;
import org.crosshead.route.RouteFixtures;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Checks that a list written as text is read back as it was, and that what can't be read is named. */
class TypedListsTests {

    @Test
    void readsBackWhatItWrites() {
        RouteDraft draft = RouteFixtures.mainLine();

        assertSame(draft.gradients(), TypedLists::line, TypedLists.GRADIENT_FIELDS, TypedLists::gradient);
        assertSame(draft.curves(), TypedLists::line, TypedLists.CURVE_FIELDS, TypedLists::curve);
        assertSame(draft.limits(), TypedLists::line, TypedLists.LIMIT_FIELDS, TypedLists::limit);
        assertSame(draft.features(), TypedLists::line, TypedLists.FEATURE_FIELDS, TypedLists::feature);
    }

    @Test
    void writesOneLineAnEntry() {
        RouteDraft draft = RouteFixtures.mainLine();

        assertThat(TypedLists.line(draft.gradients().get(2), MeasureUnit.CHAINS))
                .isEqualTo("6m 0ch; 10m 0ch; fall 1 in 200; surveyed;");
        assertThat(TypedLists.line(draft.limits().get(1), MeasureUnit.CHAINS))
                .isEqualTo("0m 0ch; 10m 0ch; 45 mph; both; unfitted goods; any; published;");
        assertThat(TypedLists.line(draft.features().get(1), MeasureUnit.CHAINS))
                .isEqualTo("signal; 1m 70ch; ; Home; rising; Down Main; ; ; ; day; surveyed;");
    }

    @ParameterizedTest
    @CsvSource({
        "rise 1 in 100, ONE_IN, 100",
        "fall 1 in 80.5, ONE_IN, -80.5",
        "rise 8.3 per mille, PER_MILLE, 8.3",
        "fall 8 per mille, PER_MILLE, -8",
        "level, LEVEL, 0",
        "rise 1 in 0, ONE_IN, 0"
    })
    void readsGradients(String text, GradientNotation notation, double value) {
        Entry entry = new Entry("0; 5; " + text, TypedLists.GRADIENT_FIELDS, MeasureUnit.KILOMETRES);

        assertThat(TypedLists.gradient(entry)).isEqualTo(new GradientLength(0, 5, notation, value, Origin.UNKNOWN, ""));
        assertThat(entry.problems()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "0",
                "x; 5; level",
                "0; 5; 1 in 100",
                "0; 5; rise 1 in",
                "0; 5; rise 1 in -3",
                "0; 5; level; guessed",
                "0; 5; up; surveyed",
                "0; ; level"
            })
    void namesWhatItCannotRead(String line) {
        Entry entry = new Entry(line, TypedLists.GRADIENT_FIELDS, MeasureUnit.KILOMETRES);

        TypedLists.gradient(entry);

        assertThat(entry.problems()).isNotEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "bridge; 1; ; ; up",
                "wall; 1",
                "bridge; ; ",
                "bridge; 1; x",
                "signal; 1; ; S; both; all; ; 300",
                "signal; 1; ; S; both; all; ; 300 yards; 90 feet",
                "signal; 1; ; S; both; all; ; ; ; dusk"
            })
    void namesWhatItCannotReadOfAFeature(String line) {
        Entry entry = new Entry(line, TypedLists.FEATURE_FIELDS, MeasureUnit.KILOMETRES);

        TypedLists.feature(entry);

        assertThat(entry.problems()).hasSize(1);
    }

    @Test
    void leavesSemicolonsInARemark() {
        Entry entry = new Entry("0; 5; level; surveyed; by chain; twice", 5, MeasureUnit.KILOMETRES);

        assertThat(TypedLists.gradient(entry).note()).isEqualTo("by chain; twice");
    }

    private static <T> void assertSame(
            List<T> entries, BiFunction<T, MeasureUnit, String> line, int fieldCount, Function<Entry, T> read) {
        for (T entry : entries) {
            Entry typed = new Entry(line.apply(entry, MeasureUnit.CHAINS), fieldCount, MeasureUnit.CHAINS);
            assertThat(read.apply(typed)).isEqualTo(entry);
            assertThat(typed.problems()).isEmpty();
        }
    }
}
