package org.crosshead.exchange.web;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;

import java.util.stream.Stream;
import org.crosshead.exchange.ImportFile;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.webmvc.test.autoconfigure.AutoConfigureMockMvc;
import org.springframework.mock.web.MockMultipartFile;
import org.springframework.security.test.context.support.WithMockUser;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import org.springframework.test.web.servlet.assertj.MvcTestResult;

/** The import page as a browser gets it. */
@SpringBootTest(properties = "spring.datasource.url=jdbc:h2:mem:importer;DB_CLOSE_DELAY=-1")
@AutoConfigureMockMvc
@WithMockUser(roles = "MANAGER")
class ImportPageTests {

    @Autowired
    private MockMvcTester mvc;

    @Test
    void describesEveryColumnOfEveryFile() {
        String page = body(mvc.get().uri("/import").exchange());

        Stream.of(ImportFile.values()).forEach(file -> assertThat(page).contains(file.fileName(), file.header()));
        assertThat(page).doesNotContain("??").contains("one of SHORT_TRAVEL, LONG_TRAVEL");
    }

    @Test
    void saysWhatIsWrongWithFileLineAndColumn() {
        MvcTestResult result =
                post("people.csv", "staff_number,name\nT-1,\"@<script>alert(1)</script>\"\n", "new staff");

        assertThat(result).hasStatus(422);
        assertThat(body(result))
                .contains("Nothing was imported.", "people.csv", ">2<", ">name<")
                .contains("The cell begins as a formula would.")
                .contains("value=\"new staff\"")
                .doesNotContain("<script>alert");
    }

    @Test
    void asksForFilesAndAReason() {
        assertThat(body(mvc.post()
                        .uri("/import")
                        .with(csrf())
                        .param("reason", "test")
                        .exchange()))
                .contains("No file was chosen.");
        assertThat(body(post("people.csv", "staff_number,name\n", " "))).contains("The reason is missing");
    }

    @Test
    void tellsWhatWasImportedAfterGoingBack() {
        MvcTestResult result = post("people.csv", "staff_number,name\nT-77,Una Testwell\n", "new staff");

        assertThat(result).hasStatus(303).redirectedUrl().isEqualTo("/import");
        assertThat(result).flash().containsKeys("imported", "done");
    }

    private MvcTestResult post(String name, String text, String reason) {
        return mvc.post()
                .uri("/import")
                .multipart()
                .file(new MockMultipartFile("files", name, "text/csv", text.getBytes(UTF_8)))
                .with(csrf())
                .param("reason", reason)
                .exchange();
    }

    private static String body(MvcTestResult result) {
        return new String(result.getResponse().getContentAsByteArray(), UTF_8);
    }
}
