package org.crosshead.stock.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.crosshead.kernel.resistance.ResistanceFamily;
import org.crosshead.kernel.traction.ValveFamily;
import org.crosshead.platform.Origin;
import org.crosshead.stock.Bearing;
import org.crosshead.stock.BrakeKind;
import org.crosshead.stock.LocomotiveClassDraft.NoteTopic;
import org.crosshead.stock.figure.ClassFigure;
import org.crosshead.stock.figure.FigureUnit;
import org.crosshead.stock.figure.Need;
import org.crosshead.stock.figure.VehicleFigure;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Checks that whatever the stock pages may have to say has words, and that no words stand about unused. */
class StockMessagesTests {

    private static final Path SOURCES = Path.of("src/main/java/org/crosshead/stock");
    private static final Path TEMPLATES = Path.of("src/main/resources/templates/stock");
    /** Calls that name a refusal by the last part of its code. */
    private static final List<Pattern> REFUSALS = Stream.of(
                    "refused\\([^,;]+, \"([a-z-]+)\"",
                    "add\\(figure, \"([a-z-]+)\"",
                    "(?:notAbove|atMost|atLeast)\\(\\s*known,\\s[^\";]+,\\s+\"([a-z-]+)\"",
                    "within\\([^\";]+, \"([a-z-]+)\"",
                    "problem\\([^,;]+, \"([a-z-]+)\"",
                    "\"stock\\.refused\\.([a-z-]+)\"")
            .map(Pattern::compile)
            .toList();

    private static final Pattern WHOLE_CODE = Pattern.compile("[\"'{(]\\s*(stock(?:\\.[a-zA-Z-]+)+)[\"'}(]");

    private static Properties messages = new Properties();

    @BeforeAll
    static void read() throws IOException {
        messages = new Properties();
        try (Reader reader = new InputStreamReader(
                Objects.requireNonNull(StockMessagesTests.class.getResourceAsStream("/messages/stock.properties")),
                StandardCharsets.UTF_8)) {
            messages.load(reader);
        }
    }

    @Test
    void everyFigureUnitNeedAndChoiceHasWords() {
        assertThat(messages.stringPropertyNames())
                .containsAll(codes("stock.figure.", ClassFigure.values(), ClassFigure::key))
                .containsAll(codes("stock.figure.", VehicleFigure.values(), VehicleFigure::key))
                .containsAll(codes("stock.unit.", FigureUnit.values(), FigureUnit::name))
                .containsAll(codes("stock.need.", Need.values(), Need::name))
                .containsAll(codes("stock.origin.", Origin.values(), Origin::name))
                .containsAll(codes("stock.brake.", BrakeKind.values(), BrakeKind::name))
                .containsAll(codes("stock.bearing.", Bearing.values(), Bearing::name))
                .containsAll(codes("stock.valve.", ValveFamily.values(), ValveFamily::name))
                .containsAll(codes("stock.topic.", NoteTopic.values(), NoteTopic::name))
                .containsAll(codes("stock.family.", vehicleFamilies(), ResistanceFamily::name));
    }

    @Test
    void everyRefusalOfTheSourcesHasWords() throws IOException {
        Set<String> refused = new TreeSet<>();
        for (String source : texts(SOURCES, ".java")) {
            REFUSALS.forEach(call ->
                    call.matcher(source).results().forEach(match -> refused.add("stock.refused." + match.group(1))));
        }

        assertThat(refused)
                .containsExactlyInAnyOrderElementsOf(messages.stringPropertyNames().stream()
                        .filter(code -> code.startsWith("stock.refused."))
                        .toList());
    }

    @Test
    void everyCodeOfSourcesAndTemplatesHasWords() throws IOException {
        Set<String> used = new TreeSet<>();
        for (String text : Stream.concat(texts(SOURCES, ".java").stream(), texts(TEMPLATES, ".html").stream())
                .toList()) {
            WHOLE_CODE.matcher(text).results().forEach(match -> used.add(match.group(1)));
        }

        assertThat(used).hasSizeGreaterThan(80);
        assertThat(messages.stringPropertyNames()).containsAll(used);
    }

    private static <E> List<String> codes(String prefix, E[] values, Function<E, String> name) {
        return Arrays.stream(values).map(value -> prefix + name.apply(value)).toList();
    }

    private static ResistanceFamily[] vehicleFamilies() {
        return Arrays.stream(ResistanceFamily.values())
                .filter(family -> family != ResistanceFamily.LOCOMOTIVE && family != ResistanceFamily.TENDER)
                .toArray(ResistanceFamily[]::new);
    }

    private static List<String> texts(Path folder, String ending) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            List<Path> paths =
                    files.filter(path -> path.toString().endsWith(ending)).collect(Collectors.toList());
            StringBuilder all = new StringBuilder();
            for (Path path : paths) {
                all.append(Files.readString(path)).append('\n');
            }
            return List.of(all.toString());
        }
    }
}
