package org.crosshead.platform.account;

import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.jdbc.support.GeneratedKeyHolder;
import org.springframework.jdbc.support.KeyHolder;
import org.springframework.stereotype.Repository;

/** The tables of log-ins whose password this service keeps. */
@Repository
class AccountStore {

    private static final String SELECT = """
            select a.id, a.subject, a.password_hash, a.person_id, coalesce(p.name, a.display_name) as display_name,
                a.locked, a.must_change_password, a.version
            from account a left join person p on p.id = a.person_id
            where a.provider = 'password'
            """;

    private final JdbcClient jdbc;

    AccountStore(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    Optional<Account> bySubject(String subject) {
        return jdbc.sql(SELECT + " and a.subject = :subject")
                .param("subject", subject)
                .query(Account.class)
                .optional();
    }

    Optional<Account> byId(long id) {
        return jdbc.sql(SELECT + " and a.id = :id")
                .param("id", id)
                .query(Account.class)
                .optional();
    }

    List<Account> all() {
        return jdbc.sql(SELECT + " order by a.subject").query(Account.class).list();
    }

    boolean isEmpty() {
        return jdbc.sql("select count(*) from account").query(Long.class).single() == 0;
    }

    /** Returns the posts of the log-in's person on this day together with its own. */
    Set<String> posts(long accountId, LocalDate day) {
        return new TreeSet<>(jdbc.sql("""
                        select pp.post from person_post pp join account a on a.person_id = pp.person_id
                        where a.id = :id and pp.first_day <= :day and (pp.last_day is null or pp.last_day >= :day)
                        union select role from account_role where account_id = :id
                        """)
                .param("id", accountId)
                .param("day", day)
                .query(String.class)
                .list());
    }

    long add(String subject, String passwordHash, @Nullable Long personId, String displayName, boolean mustChange) {
        KeyHolder key = new GeneratedKeyHolder();
        jdbc.sql("""
                        insert into account (provider, subject, password_hash, person_id, display_name, locked,
                            must_change_password, version)
                        values ('password', :subject, :hash, :personId, :name, false, :mustChange, 0)
                        """)
                .param("subject", subject)
                .param("hash", passwordHash)
                .param("personId", personId)
                .param("name", displayName)
                .param("mustChange", mustChange)
                .update(key, "id");
        return Objects.requireNonNull(key.getKeyAs(Long.class));
    }

    void addRole(long accountId, String role) {
        jdbc.sql("insert into account_role (account_id, role) values (:id, :role)")
                .param("id", accountId)
                .param("role", role)
                .update();
    }

    void join(long accountId, long personId) {
        jdbc.sql("delete from account_role where account_id = :id")
                .param("id", accountId)
                .update();
        jdbc.sql("update account set person_id = :personId, version = version + 1 where id = :id")
                .param("personId", personId)
                .param("id", accountId)
                .update();
    }

    void setLocked(long accountId, boolean locked) {
        jdbc.sql("update account set locked = :locked, version = version + 1 where id = :id")
                .param("locked", locked)
                .param("id", accountId)
                .update();
    }

    /** Stores a new password if the account is still of this version, and says whether it was. */
    boolean setPassword(long accountId, int version, String passwordHash, boolean mustChange) {
        return jdbc.sql("""
                                update account set password_hash = :hash, must_change_password = :mustChange,
                                    version = version + 1
                                where id = :id and version = :version
                                """)
                        .param("hash", passwordHash)
                        .param("mustChange", mustChange)
                        .param("id", accountId)
                        .param("version", version)
                        .update()
                == 1;
    }

    Optional<PersonWithoutLogIn> personByStaffNumber(String staffNumber) {
        return jdbc.sql("select id, staff_number, name from person where staff_number = :number")
                .param("number", staffNumber)
                .query(PersonWithoutLogIn.class)
                .optional();
    }

    List<PersonWithoutLogIn> peopleWithoutLogIn() {
        return jdbc.sql("""
                        select p.id, p.staff_number, p.name from person p
                        where not exists (select 1 from account a where a.person_id = p.id)
                        order by p.staff_number
                        """).query(PersonWithoutLogIn.class).list();
    }
}
