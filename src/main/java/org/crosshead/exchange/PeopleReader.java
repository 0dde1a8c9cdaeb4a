package org.crosshead.exchange;

import java.util.List;
import java.util.Map;
import org.crosshead.crew.PersonDraft;
import org.crosshead.crew.PersonDraft.PostHeld;
import org.crosshead.crew.Post;
import org.crosshead.exchange.Sheets.Owned;
import org.crosshead.exchange.Sheets.Owners;

/** Reads people and their posts. */
final class PeopleReader {

    private static final String STAFF_NUMBER = "staff_number";

    private final Sheets sheets;
    private final Moments moments;
    private final ProblemList problems;

    PeopleReader(Sheets sheets, Moments moments, ProblemList problems) {
        this.sheets = sheets;
        this.moments = moments;
        this.problems = problems;
    }

    List<Located<PersonDraft>> people() {
        Owners owners = Owners.of(sheets, Owned.by(ImportFile.PEOPLE, STAFF_NUMBER), problems);
        Map<String, List<Line>> posts = sheets.lines(Owned.by(ImportFile.POSTS, STAFF_NUMBER), owners, problems);
        return sheets.lines(ImportFile.PEOPLE).stream()
                .map(line -> person(line, posts.getOrDefault(line.text(STAFF_NUMBER), List.of())))
                .toList();
    }

    private Located<PersonDraft> person(Line line, List<Line> posts) {
        Parts parts = new Parts();
        PersonDraft draft = new PersonDraft(
                line.text(STAFF_NUMBER),
                line.text("name"),
                parts.list(
                        "posts",
                        posts,
                        post -> new PostHeld(
                                post.word("post", Post.class),
                                post.textOrNull("depot"),
                                moments.day(post, "first_day"),
                                moments.dayOrNull(post, "last_day"))));
        return new Located<>(draft, line, parts.byPath());
    }
}
