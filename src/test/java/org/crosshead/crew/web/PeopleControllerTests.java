package org.crosshead.crew.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.mockito.ArgumentMatchers.any;
import static org.mockito.BDDMockito.given;
import static org.mockito.Mockito.never;
import static org.mockito.Mockito.verify;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import org.crosshead.crew.People;
import org.crosshead.crew.Person;
import org.crosshead.crew.PersonDraft;
import org.crosshead.crew.PersonDraft.PostHeld;
import org.crosshead.crew.Post;
import org.crosshead.platform.CurrentActor;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.TestConfiguration;
import org.springframework.boot.webmvc.test.autoconfigure.WebMvcTest;
import org.springframework.context.annotation.Bean;
import org.springframework.security.test.context.support.WithMockUser;
import org.springframework.test.context.bean.override.mockito.MockitoBean;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import org.springframework.test.web.servlet.assertj.MvcTestResult;

/** The pages of people as a browser gets them. */
@WebMvcTest(PeopleController.class)
@WithMockUser(roles = "MANAGER")
class PeopleControllerTests {

    private static final LocalDate TODAY = LocalDate.of(2030, 5, 6);

    @Autowired
    private MockMvcTester mvc;

    @MockitoBean
    private People people;

    @Test
    void crossesOutALapsedPost() {
        given(people.all())
                .willReturn(List.of(new Person(
                        1,
                        "T-1",
                        "Ida <b>Testwell</b>",
                        List.of(
                                new PostHeld(Post.DRIVER, TODAY.minusYears(1), null),
                                new PostHeld(Post.FIREMAN, TODAY.minusYears(9), TODAY.minusDays(1))))));

        assertThat(mvc.get().uri("/people"))
                .hasStatusOk()
                .bodyText()
                .contains("<span>Driver</span>")
                .contains("<s>Fireman</s>")
                .contains("lapsed on 2030-05-05")
                .contains("Ida &lt;b&gt;Testwell&lt;/b&gt;");
    }

    @Test
    void storesANewPersonAndGoesBackToTheList() {
        given(people.byStaffNumber("T-1")).willReturn(Optional.empty());

        MvcTestResult result = post("/people/new", "T-1", "Ida Testwell", "DRIVER", "2030-05-01");

        assertThat(result).hasStatus(303).redirectedUrl().isEqualTo("/people");
        verify(people)
                .enter(new PersonDraft(
                        "T-1", "Ida Testwell", List.of(new PostHeld(Post.DRIVER, LocalDate.of(2030, 5, 1), null))));
    }

    @Test
    void saysBesideTheFieldWhatIsWrongAndKeepsWhatWasTyped() {
        given(people.byStaffNumber("T-1")).willReturn(Optional.empty());

        MvcTestResult result = post("/people/new", "T-1", "Ida Testwell", "DRIVER", "1st of May");

        assertThat(result)
                .hasStatus(422)
                .bodyText()
                .contains("id=\"posts[0].firstDay-problem\"")
                .contains("This is not a day.")
                .contains("value=\"1st of May\"")
                .contains("value=\"Ida Testwell\"");
        verify(people, never()).enter(any());
    }

    @Test
    void refusesAStaffNumberThatSomebodyHas() {
        given(people.byStaffNumber("T-1")).willReturn(Optional.of(new Person(1, "T-1", "Somebody", List.of())));

        assertThat(post("/people/new", "T-1", "Ida Testwell", "", ""))
                .hasStatus(422)
                .bodyText()
                .contains("Somebody has this staff number already.");
        verify(people, never()).enter(any());
    }

    @Test
    void answersNotFoundForAnUnknownPerson() {
        given(people.byStaffNumber("T-9")).willReturn(Optional.empty());

        assertThat(mvc.get().uri("/people/T-9")).hasStatus(404);
    }

    @Test
    @WithMockUser(roles = "ASSESSOR")
    void offersNoButtonToWhoMayOnlyRead() {
        given(people.byStaffNumber("T-1")).willReturn(Optional.of(new Person(1, "T-1", "Somebody", List.of())));

        assertThat(mvc.get().uri("/people/T-1")).hasStatusOk().bodyText().doesNotContain("<button");
    }

    private MvcTestResult post(String uri, String staffNumber, String name, String post, String firstDay) {
        return mvc.post()
                .uri(uri)
                .with(csrf())
                .param("staffNumber", staffNumber)
                .param("name", name)
                .param("post", post, "")
                .param("firstDay", firstDay, "")
                .param("lastDay", "", "")
                .exchange();
    }

    /** The clock, zone and actor that the platform gives. */
    @TestConfiguration
    static class Platform {

        @Bean
        CurrentActor actor() {
            return () -> new CurrentActor.Actor("Somebody");
        }

        @Bean
        Clock clock() {
            return Clock.fixed(Instant.parse("2030-05-06T08:00:00Z"), ZoneOffset.UTC);
        }

        @Bean
        ZoneId zone() {
            return ZoneOffset.UTC;
        }
    }
}
