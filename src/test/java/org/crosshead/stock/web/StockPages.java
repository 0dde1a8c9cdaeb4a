package org.crosshead.stock.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;

import java.time.ZoneOffset;
import java.util.List;
import java.util.Set;
import org.crosshead.stock.ConstantEngine;
import org.crosshead.stock.StockServices;
import org.springframework.context.support.ResourceBundleMessageSource;
import org.springframework.mock.web.MockHttpServletRequest;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import org.springframework.test.web.servlet.assertj.MvcTestResult;
import org.springframework.test.web.servlet.request.RequestPostProcessor;
import org.springframework.test.web.servlet.setup.MockMvcBuilders;
import org.springframework.test.web.servlet.setup.StandaloneMockMvcBuilder;
import org.thymeleaf.spring6.SpringTemplateEngine;
import org.thymeleaf.spring6.view.ThymeleafViewResolver;
import org.thymeleaf.templateresolver.ClassLoaderTemplateResolver;

/** The stock pages on services with an empty database, their templates in a bare layout. */
final class StockPages {

    static final RequestPostProcessor INSPECTOR = StockPages::asInspector;

    private StockPages() {}

    static MockMvcTester of(StockServices services) {
        Words words = new Words(messages(), ZoneOffset.UTC);
        List<Object> controllers = List.of(
                new LocomotiveClassController(services.classes(), services.engines(), ConstantEngine::new, words),
                new LocomotiveClassFormController(services.classes(), words),
                new EngineController(services.engines(), services.classes(), words),
                new EngineFormController(services.engines(), services.classes(), words),
                new VehicleKindController(services.kinds(), words),
                new VehicleKindFormController(services.kinds(), words),
                new FormationController(services.formations(), services.kinds(), words),
                new FormationFormController(services.formations(), services.kinds(), words));
        StandaloneMockMvcBuilder builder = MockMvcBuilders.standaloneSetup(controllers.toArray())
                .setControllerAdvice(new EditorsAdvice())
                .setViewResolvers(views());
        return MockMvcTester.create(builder.build());
    }

    /** Returns the form as it came back, which must say that it was refused. */
    static String refused(MvcTestResult result) {
        assertThat(result).hasStatus(422);
        return assertDoesNotThrow(() -> result.getResponse().getContentAsString());
    }

    /** Returns the page, which must be well. */
    static String body(MvcTestResult result) {
        assertThat(result).hasStatusOk();
        return assertDoesNotThrow(() -> result.getResponse().getContentAsString());
    }

    /** A message that is missing fails the test that shows it. */
    private static ResourceBundleMessageSource messages() {
        ResourceBundleMessageSource messages = new ResourceBundleMessageSource();
        messages.setBasename("messages/stock");
        messages.setDefaultEncoding("UTF-8");
        messages.setFallbackToSystemLocale(false);
        return messages;
    }

    private static ThymeleafViewResolver views() {
        SpringTemplateEngine engine = new SpringTemplateEngine();
        engine.setTemplateEngineMessageSource(messages());
        engine.addTemplateResolver(templates("templates/", Set.of("stock/*")));
        engine.addTemplateResolver(templates("org/crosshead/stock/web/", Set.of("layout")));
        ThymeleafViewResolver views = new ThymeleafViewResolver();
        views.setTemplateEngine(engine);
        views.setCharacterEncoding("UTF-8");
        return views;
    }

    private static ClassLoaderTemplateResolver templates(String prefix, Set<String> names) {
        ClassLoaderTemplateResolver templates = new ClassLoaderTemplateResolver();
        templates.setPrefix(prefix);
        templates.setSuffix(".html");
        templates.setCharacterEncoding("UTF-8");
        templates.setResolvablePatterns(names);
        return templates;
    }

    private static MockHttpServletRequest asInspector(MockHttpServletRequest request) {
        request.addUserRole("INSPECTOR");
        return request;
    }
}
