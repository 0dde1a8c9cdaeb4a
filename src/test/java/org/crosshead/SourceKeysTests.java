package org.crosshead;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Every source that the kernel and its tests name must be found in docs/sources.md. */
class SourceKeysTests {

    private static final Pattern COMMENT_LINE = Pattern.compile("^\\s*/?\\*.*", Pattern.MULTILINE);
    private static final Pattern KEY = Pattern.compile("\\[([A-Z][A-Z0-9]+(?:-[A-Z0-9]+)*)]");
    private static final Pattern LISTED = Pattern.compile("^\\| ([A-Z][A-Z0-9-]+) \\|", Pattern.MULTILINE);

    @Test
    void everyKeyIsListed() {
        Set<String> listed = found(LISTED, read(Path.of("docs/sources.md")));
        Set<String> named = new TreeSet<>();
        for (Path file : javaFilesOfKernel()) {
            String comments = COMMENT_LINE
                    .matcher(read(file))
                    .results()
                    .map(MatchResult::group)
                    .collect(Collectors.joining("\n"));
            named.addAll(found(KEY, comments));
        }
        assertThat(named).hasSizeGreaterThan(20);
        assertThat(listed).containsAll(named);
    }

    private static Set<String> found(Pattern pattern, String text) {
        return pattern.matcher(text)
                .results()
                .map(match -> match.group(1))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static Set<Path> javaFilesOfKernel() {
        Set<Path> files = new TreeSet<>();
        for (String root : List.of("src/main/java/org/crosshead/kernel", "src/test/java/org/crosshead/kernel")) {
            try (Stream<Path> below = Files.walk(Path.of(root))) {
                below.filter(file -> file.toString().endsWith(".java")).forEach(files::add);
            } catch (IOException ex) {
                throw new UncheckedIOException(ex);
            }
        }
        return files;
    }

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException ex) {
            throw new UncheckedIOException(ex);
        }
    }
}
