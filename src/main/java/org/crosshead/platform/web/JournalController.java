package org.crosshead.platform.web;

import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.List;
import org.crosshead.platform.journal.JournalEntries;
import org.crosshead.platform.journal.JournalEntry;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** The journal, newest change first, a hundred to a page. */
@Controller
class JournalController {

    private static final int COUNT = 100;

    private final JournalEntries entries;
    private final ZoneId zone;

    JournalController(JournalEntries entries, ZoneId zone) {
        this.entries = entries;
        this.zone = zone;
    }

    @GetMapping("/journal")
    String show(@RequestParam @Nullable Long before, Model model) {
        List<JournalEntry> page = entries.before(before == null ? Long.MAX_VALUE : before, COUNT);
        model.addAttribute(
                "entries",
                page.stream()
                        .map(entry -> new Row(entry, entry.at().atZoneSameInstant(zone)))
                        .toList());
        model.addAttribute("older", page.size() == COUNT ? page.get(COUNT - 1).id() : null);
        return "platform/journal";
    }

    /** An entry with its moment in the railway's own time. */
    record Row(JournalEntry entry, ZonedDateTime at) {}
}
