package org.crosshead.exchange.web;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.crosshead.exchange.ImportProblem;
import org.crosshead.exchange.ImportRefusedException;
import org.crosshead.exchange.Importer;
import org.crosshead.exchange.Upload;
import org.springframework.context.MessageSource;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.multipart.MultipartFile;
import org.springframework.web.servlet.ModelAndView;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** Takes files to import, and says what was imported or why nothing was. */
@Controller
@RequestMapping("/import")
class ImportController {

    private static final int REASON_LENGTH_MAX = 400;

    private final Importer importer;
    private final MessageSource messages;
    private final ZoneId zone;

    ImportController(Importer importer, MessageSource messages, ZoneId zone) {
        this.importer = importer;
        this.messages = messages;
        this.zone = zone;
    }

    @GetMapping
    ModelAndView form(Locale locale) {
        String reason = messages.getMessage("exchange.import.reason.default", null, locale);
        return page(new ImportPage(reason, List.of(), 0, zone), HttpStatus.OK);
    }

    @PostMapping
    ModelAndView enter(
            @RequestParam(name = "files", required = false) Optional<List<MultipartFile>> files,
            @RequestParam(name = "reason", defaultValue = "") String reason,
            RedirectAttributes redirect) {
        String stripped = reason.strip();
        if (stripped.isEmpty() || stripped.length() > REASON_LENGTH_MAX) {
            ImportProblem problem = new ImportProblem("", 0, "", "exchange.refused.reason", List.of());
            return page(new ImportPage(stripped, List.of(problem), 1, zone), HttpStatus.UNPROCESSABLE_CONTENT);
        }
        try {
            redirect.addFlashAttribute("imported", importer.enter(uploads(files), stripped));
        } catch (ImportRefusedException ex) {
            return page(new ImportPage(stripped, ex.problems(), ex.total(), zone), HttpStatus.UNPROCESSABLE_CONTENT);
        }
        redirect.addFlashAttribute("done", "exchange.done");
        ModelAndView done = new ModelAndView("redirect:/import");
        done.setStatus(HttpStatus.SEE_OTHER);
        return done;
    }

    /** A form sent without a choice has one file without a name. */
    private static List<Upload> uploads(Optional<List<MultipartFile>> files) {
        return files.orElseGet(List::of).stream()
                .filter(file -> !Optional.ofNullable(file.getOriginalFilename())
                        .orElse("")
                        .isEmpty())
                .map(ImportController::upload)
                .toList();
    }

    private static Upload upload(MultipartFile file) {
        String name = Optional.ofNullable(file.getOriginalFilename()).orElse("");
        return new Upload(name, file.getSize(), () -> bytes(file));
    }

    private static byte[] bytes(MultipartFile file) {
        try {
            return file.getBytes();
        } catch (IOException ex) {
            throw new UncheckedIOException("an uploaded file could not be read", ex);
        }
    }

    private static ModelAndView page(ImportPage page, HttpStatus status) {
        ModelAndView view = new ModelAndView("exchange/import", "page", page);
        view.setStatus(status);
        return view;
    }
}
