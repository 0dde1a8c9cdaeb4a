package org.crosshead.working.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.lang.reflect.RecordComponent;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.crosshead.kernel.traction.RailState;
import org.crosshead.route.TrainKind;
import org.crosshead.working.TrainDraft.EnginePosition;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Checks that whatever the pages about trains may have to say has words. */
class TrainMessagesTests {

    private static final Pattern REFUSAL = Pattern.compile("\"([a-z]+(?:-[a-z]+)+)\"");
    private static final Pattern CODE = Pattern.compile("(?:[\"']|#\\{)(train(?:\\.[a-zA-Z-]+)+)[\"'}(]");

    private static Properties messages = new Properties();

    @BeforeAll
    static void read() throws IOException {
        messages = new Properties();
        try (Reader reader = new InputStreamReader(
                Objects.requireNonNull(TrainMessagesTests.class.getResourceAsStream("/messages/working.properties")),
                StandardCharsets.UTF_8)) {
            messages.load(reader);
        }
    }

    @Test
    void everyRefusalHasWords() throws IOException {
        Set<String> codes = new TreeSet<>(Set.of("code", "title", "count", "place", "choose"));
        REFUSAL.matcher(text("src/main/java/org/crosshead/working"))
                .results()
                .forEach(found -> codes.add(found.group(1)));

        assertThat(codes).hasSizeGreaterThan(30);
        assertThat(messages.stringPropertyNames())
                .containsAll(codes.stream().map(code -> "train.refused." + code).toList());
    }

    @Test
    void everyFieldHasAName() {
        Stream<RecordComponent> fields = Stream.of(
                        NewTrainForm.class,
                        TrainForm.class,
                        TrainForm.LegRow.class,
                        TrainForm.CallRow.class,
                        TrainForm.EngineRow.class,
                        TrainForm.CrewRow.class)
                .flatMap(form -> Arrays.stream(form.getRecordComponents()));

        assertThat(messages.stringPropertyNames())
                .containsAll(fields.map(RecordComponent::getName)
                        .filter(name -> !name.equals("version"))
                        .map(name -> "train.field." + name)
                        .toList());
    }

    @Test
    void everyChoiceHasWords() {
        assertThat(messages.stringPropertyNames())
                .containsAll(names("train.kind.", TrainKind.values()))
                .containsAll(names("rail.", RailState.values()))
                .containsAll(names("engine.position.", EnginePosition.values()));
    }

    @Test
    void everyCodeOfSourcesAndTemplatesHasWords() throws IOException {
        Set<String> used = new TreeSet<>();
        CODE.matcher(text("src/main/java/org/crosshead/working/web") + text("src/main/resources/templates/working"))
                .results()
                .forEach(found -> used.add(found.group(1)));

        assertThat(used).hasSizeGreaterThan(60);
        assertThat(messages.stringPropertyNames()).containsAll(used);
    }

    private static List<String> names(String prefix, Enum<?>[] values) {
        return Arrays.stream(values).map(value -> prefix + value.name()).toList();
    }

    private static String text(String folder) throws IOException {
        StringBuilder all = new StringBuilder();
        try (Stream<Path> files = Files.walk(Path.of(folder))) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                all.append(Files.readString(file)).append('\n');
            }
        }
        return all.toString();
    }
}
