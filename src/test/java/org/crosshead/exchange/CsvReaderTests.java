package org.crosshead.exchange;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static java.nio.charset.StandardCharsets.UTF_16;
import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What is taken of a file and what is refused, before anything is made of it. */
class CsvReaderTests {

    private static final String HEADER = "staff_number,name\n";

    private final ProblemList problems = new ProblemList();

    @Test
    void takesAByteOrderMarkAndWindowsLineEnds() {
        List<Line> lines = read("people.csv", "\uFEFFstaff_number,name\r\nT-1,Ida Testwell\r\n\r\nT-2,Zoë Testwell");

        assertThat(problems.first()).isEmpty();
        assertThat(lines).extracting(line -> line.text("name")).containsExactly("Ida Testwell", "Zoë Testwell");
        assertThat(lines).extracting(Line::number).containsExactly(2, 4);
    }

    @Test
    void takesQuotedCommasQuotesAndLineEnds() {
        List<Line> lines = read("people.csv", HEADER + "T-1,\"Testwell, \"\"Ida\"\"\nthe second\"\nT-2, Bo \n");

        assertThat(problems.first()).isEmpty();
        assertThat(lines).extracting(line -> line.text("name")).containsExactly("Testwell, \"Ida\"\nthe second", "Bo");
        assertThat(lines).extracting(Line::number).containsExactly(2, 4);
    }

    @Test
    void takesColumnsInAnyOrderAndAFileNameWithFolders() {
        List<Line> lines = read("C:\\data\\People.CSV", "Name,staff_number\nIda,T-1\n");

        assertThat(problems.first()).isEmpty();
        assertThat(lines.get(0).text("staff_number")).isEqualTo("T-1");
    }

    @Test
    void takesAFileWithoutAColumnWhoseCellsMayBeEmpty() {
        List<Line> lines = read("posts.csv", "staff_number,post,first_day\nT-1,DRIVER,2030-05-06\n");

        assertThat(problems.first()).isEmpty();
        assertThat(lines.get(0).textOrNull("depot")).isNull();
    }

    @Test
    void refusesAMissingAnUnknownAndARepeatedColumn() {
        read("people.csv", "name,colour,name\nIda,red,Ida\n");

        assertThat(told())
                .containsExactly(
                        "people.csv:1: column-unknown", "people.csv:1: column-twice", "people.csv:1: column-missing");
        assertThat(problems.first().get(0).args()).containsExactly("colour", "staff_number,name");
        assertThat(problems.first().get(2).args()).containsExactly("staff_number");
    }

    @Test
    void refusesAnEmptyFileAnUnknownNameARepeatedFileAndNoFile() {
        CsvReader.read(
                List.of(upload("people.csv", ""), upload("passwords.csv", "a"), upload("people.csv", HEADER)),
                problems);
        CsvReader.read(List.of(), problems);

        assertThat(told())
                .containsExactly(
                        "people.csv:1: header-missing",
                        "passwords.csv:0: file-unknown",
                        "people.csv:0: file-twice",
                        ":0: no-files");
    }

    @Test
    void refusesARowWithTooFewOrTooManyCells() {
        read("people.csv", HEADER + "T-1\nT-2,Bo\nT-3,Cy,more\n");

        assertThat(told()).containsExactly("people.csv:2: cells", "people.csv:4: cells");
    }

    @Test
    void refusesQuotesThatDoNotPair() {
        read("people.csv", HEADER + "T-1,Ida\nT-2,\"Bo\nT-3,Cy\n");

        assertThat(told()).containsExactly("people.csv:3: quotes");
    }

    @Test
    void refusesWhatIsNotUtf8WithItsLine() {
        CsvReader.read(
                List.of(Upload.of("people.csv", (HEADER + "T-1,Ida\nT-2,Zoë\n").getBytes(ISO_8859_1))), problems);
        CsvReader.read(List.of(Upload.of("people.csv", HEADER.getBytes(UTF_16))), problems);

        assertThat(told()).containsExactly("people.csv:3: not-utf-8", "people.csv:1: not-utf-8");
    }

    @Test
    void takesTheStatedNumberOfRowsAndNoMore() {
        String rows = "T-1,Ida\n".repeat(CsvReader.ROWS_MAX);
        assertThat(read("people.csv", HEADER + rows)).hasSize(5000);
        assertThat(problems.first()).isEmpty();

        read("people.csv", HEADER + rows + "T-2,Bo\n");

        assertThat(told()).containsExactly("people.csv:5002: rows-too-many");
    }

    @Test
    void refusesAFileTooLargeWithoutReadingIt() {
        Upload large = new Upload("people.csv", CsvReader.BYTES_MAX + 1, () -> {
            throw new IllegalStateException("it was read");
        });

        CsvReader.read(List.of(large), problems);

        assertThat(told()).containsExactly("people.csv:0: file-too-large");
    }

    @ParameterizedTest
    @ValueSource(strings = {"=1+1", "+1", "@SUM(A1)", "\t=1", "-A1", "-", "\" =1+1\"", "-(1)", "-=1"})
    void refusesAFormula(String cell) {
        read("people.csv", HEADER + "T-1," + cell + "\n");

        assertThat(told()).containsExactly("people.csv:2:name formula");
    }

    @ParameterizedTest
    @ValueSource(strings = {"-5", "-5.5 degrees", "-.5", "a=b", "1+1", "me@here"})
    void takesWhatOnlyResemblesAFormula(String cell) {
        assertThat(read("people.csv", HEADER + "T-1," + cell + "\n")).hasSize(1);
        assertThat(problems.first()).isEmpty();
    }

    @Test
    void refusesACharacterThatCannotBePrinted() {
        read("people.csv", HEADER + "T-1,I\u0000da\n");

        assertThat(told()).containsExactly("people.csv:2:name control-character");
    }

    @ParameterizedTest
    @CsvSource({
        "from_measure, ten, measure",
        "from_measure, 12m 80ch, measure",
        "notation, STEEP, word",
        "value, 1e2, number",
        "value, '\"1,5\"', number-comma",
        "value, 1 000, number",
        "value, NaN, number",
        "origin, '', cell-missing"
    })
    void refusesACellByItsColumn(String column, String cell, String code) {
        read("gradients.csv", gradient(column, cell));

        assertThat(told()).containsExactly("gradients.csv:2:" + column + " " + code);
    }

    @ParameterizedTest
    @CsvSource({
        "trains.csv, day, 6.5.2030, day",
        "trains.csv, day, 2030-02-30, day",
        "trains.csv, day, D0, day",
        "trains.csv, dark, 1, yes-no",
        "calls.csv, arrival, 9.05, time",
        "calls.csv, arrival, 48:00, time",
        "calls.csv, arrival, 09:60, time",
        "calls.csv, leg_number, 1.5, whole",
        "calls.csv, leg_number, 12345678901, whole"
    })
    void refusesDaysTimesAndCountsThatAreNone(String file, String column, String cell, String code) {
        read(file, oneCell(ImportFile.named(file).orElseThrow(), column, cell));

        assertThat(told()).contains(file + ":2:" + column + " " + code);
    }

    @Test
    void countsWhatItNoLongerLists() {
        read("people.csv", HEADER + ",\n".repeat(10) + "=,=\n".repeat(300));

        assertThat(problems.first()).hasSize(ProblemList.LISTED_MAX);
        assertThat(problems.total()).isEqualTo(600);
    }

    private static String gradient(String column, String cell) {
        List<String> columns =
                List.of("route_code", "from_measure", "to_measure", "notation", "value", "origin", "note");
        List<String> right = List.of("R1", "0m 0ch", "1m 0ch", "ONE_IN", "100", "SURVEYED", "");
        return ImportFile.GRADIENTS.header() + "\n"
                + Stream.of(0, 1, 2, 3, 4, 5, 6)
                        .map(i -> columns.get(i).equals(column) ? cell : right.get(i))
                        .collect(Collectors.joining(","))
                + "\n";
    }

    private static String oneCell(ImportFile file, String column, String cell) {
        return file.header() + "\n"
                + file.columns().stream()
                        .map(one -> one.name().equals(column) ? cell : "")
                        .collect(Collectors.joining(","))
                + "\n";
    }

    private List<Line> read(String fileName, String text) {
        return CsvReader.read(List.of(upload(fileName, text)), problems)
                .lines(ImportFile.named(fileName).orElseThrow());
    }

    private static Upload upload(String fileName, String text) {
        return Upload.of(fileName, text.getBytes(UTF_8));
    }

    private List<String> told() {
        return problems.first().stream()
                .map(problem -> problem.file() + ":" + problem.line() + ":" + problem.column() + " "
                        + problem.code().substring("exchange.refused.".length()))
                .toList();
    }
}
