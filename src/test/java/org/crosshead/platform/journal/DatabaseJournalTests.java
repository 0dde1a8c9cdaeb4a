package org.crosshead.platform.journal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Set;
import org.crosshead.platform.Journal;
import org.crosshead.platform.ServiceJob;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.webmvc.test.autoconfigure.AutoConfigureMockMvc;
import org.springframework.security.authentication.AuthenticationCredentialsNotFoundException;
import org.springframework.transaction.IllegalTransactionStateException;
import org.springframework.transaction.support.TransactionTemplate;

@SpringBootTest
@AutoConfigureMockMvc
class DatabaseJournalTests {

    @Autowired
    private Journal journal;

    @Autowired
    private JournalEntries entries;

    @Autowired
    private TransactionTemplate transaction;

    @Test
    void refusesAnEntryOutsideTheTransactionOfItsChange() {
        assertThatThrownBy(() -> journal.write("test.made", "test", 1, "Made"))
                .isInstanceOf(IllegalTransactionStateException.class);
    }

    @Test
    void losesTheEntryWithItsChange() {
        transaction.executeWithoutResult(status -> {
            journal.write("test.lost", "test", 1, "Lost");
            status.setRollbackOnly();
        });

        assertThat(newest()).noneMatch(entry -> entry.kind().equals("test.lost"));
    }

    @Test
    void keepsTheOrderAndNamesTheServiceWhereNobodyIsLoggedIn() {
        transaction.executeWithoutResult(status -> {
            journal.write("test.first", "test", 7, "First");
            journal.write("test.second", "test", 7, "x".repeat(1200));
            status.flush();
        });

        List<JournalEntry> newest = newest();
        JournalEntry second = newest.get(0);
        JournalEntry first = newest.get(1);
        assertThat(first.kind()).isEqualTo("test.first");
        assertThat(first.actor()).isEqualTo("crosshead");
        assertThat(first.subjectId()).isEqualTo(7);
        assertThat(second.summary()).hasSize(1000);
        assertThat(second.id()).isGreaterThan(first.id());
    }

    @Test
    void isReadByNobodyWithoutPost() {
        assertThatThrownBy(() -> entries.before(Long.MAX_VALUE, 1))
                .isInstanceOf(AuthenticationCredentialsNotFoundException.class);
    }

    private List<JournalEntry> newest() {
        List<JournalEntry> found = new java.util.ArrayList<>();
        ServiceJob.run(Set.of("ASSESSOR"), () -> found.addAll(entries.before(Long.MAX_VALUE, 10)));
        return found;
    }
}
