package org.crosshead.working.web;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.crosshead.crew.People;
import org.crosshead.crew.Person;
import org.crosshead.crew.Post;
import org.crosshead.kernel.traction.RailState;
import org.crosshead.route.MeasureUnit;
import org.crosshead.route.RouteDraft;
import org.crosshead.route.RouteRevision;
import org.crosshead.route.RouteSummary;
import org.crosshead.route.Routes;
import org.crosshead.route.TrainKind;
import org.crosshead.stock.BrakeKind;
import org.crosshead.stock.ClassRevision;
import org.crosshead.stock.EngineFigures;
import org.crosshead.stock.EngineRevision;
import org.crosshead.stock.Engines;
import org.crosshead.stock.LocomotiveClasses;
import org.crosshead.stock.StockModel;
import org.crosshead.stock.WorkingPressures;
import org.crosshead.working.NewTrain;
import org.crosshead.working.TrainDraft.EnginePosition;
import org.springframework.stereotype.Component;
import org.springframework.ui.Model;

/** What the forms of a train offer to choose from, and the names by which its page calls things. */
@Component
class TrainChoices {

    private static final List<Post> ROLES = List.of(Post.DRIVER, Post.FIREMAN, Post.INSPECTOR);

    private final Routes routes;
    private final NewTrain newTrain;
    private final Engines engines;
    private final LocomotiveClasses classes;
    private final WorkingPressures pressures;
    private final Loads loads;
    private final People people;

    TrainChoices(
            Routes routes,
            NewTrain newTrain,
            Engines engines,
            LocomotiveClasses classes,
            WorkingPressures pressures,
            Loads loads,
            People people) {
        this.routes = routes;
        this.newTrain = newTrain;
        this.engines = engines;
        this.classes = classes;
        this.pressures = pressures;
        this.loads = loads;
        this.people = people;
    }

    /** Returns the unit of each route's measure, by the route's code. */
    Map<String, MeasureUnit> units() {
        return routes.all().stream().collect(Collectors.toMap(RouteSummary::code, RouteSummary::measureUnit));
    }

    /** Returns every route as it stands now, by its code. */
    Map<String, RouteDraft> routesByCode() {
        return routes.all().stream()
                .map(RouteSummary::code)
                .map(routes::current)
                .flatMap(Optional::stream)
                .map(RouteRevision::content)
                .collect(Collectors.toMap(RouteDraft::code, Function.identity()));
    }

    /** Returns people's names by staff number. */
    Map<String, String> names() {
        return people.all().stream().collect(Collectors.toMap(Person::staffNumber, Person::name));
    }

    /** Puts everything that can be chosen into the page. */
    void addTo(Model model, LocalDate day) {
        List<Person> all = people.all();
        model.addAttribute(
                "routes",
                routesByCode().values().stream()
                        .sorted(java.util.Comparator.comparing(RouteDraft::code))
                        .toList());
        model.addAttribute("places", newTrain.places());
        model.addAttribute("formations", loads.all());
        model.addAttribute(
                "engines", engines.all().stream().map(EngineRevision::content).toList());
        model.addAttribute("classNames", classNames());
        model.addAttribute("drivers", holding(all, day, Post.DRIVER));
        model.addAttribute("firemen", holding(all, day, Post.FIREMAN));
        model.addAttribute("people", holding(all, day, ROLES.toArray(Post[]::new)));
        model.addAttribute("rails", RailState.values());
        model.addAttribute("kinds", TrainKind.values());
        model.addAttribute("positions", EnginePosition.values());
        model.addAttribute("roles", ROLES);
    }

    private Map<String, String> classNames() {
        return classes.all().stream()
                .map(ClassRevision::content)
                .collect(Collectors.toMap(content -> content.code(), content -> content.name()));
    }

    private static List<Person> holding(List<Person> all, LocalDate day, Post... posts) {
        return all.stream()
                .filter(person -> Stream.of(posts).anyMatch(post -> person.holds(post, day)))
                .toList();
    }

    /** Returns a formation of which every figure is known, or any, or an empty text. */
    String firstFormation() {
        List<Loads.Load> all = loads.all();
        return all.stream()
                .filter(Loads.Load::known)
                .findFirst()
                .or(() -> all.stream().findFirst())
                .map(Loads.Load::code)
                .orElse("");
    }

    /** Returns an engine of which every figure is known and that works the formation's brake, or any, or an empty text. */
    String firstEngineFor(String formationCode) {
        Optional<BrakeKind> brake = loads.of(formationCode).map(Loads.Load::brake);
        List<EngineRevision> all = engines.all();
        return all.stream()
                .filter(engine -> isFit(engine, brake))
                .findFirst()
                .or(() -> all.stream().findFirst())
                .map(engine -> engine.content().number())
                .orElse("");
    }

    private boolean isFit(EngineRevision engine, Optional<BrakeKind> brake) {
        return classes.current(engine.content().classCode())
                .filter(ofClass -> brake.isEmpty()
                        || brake.get() == BrakeKind.NONE
                        || brake.get() == ofClass.content().trainBrake())
                .filter(ofClass -> StockModel.engine(ofClass, engine) instanceof EngineFigures.Resolved)
                .isPresent();
    }

    boolean isEngine(String number) {
        return engines.current(number).isPresent();
    }

    /** Returns the working pressure above the atmosphere; empty while unknown. */
    OptionalDouble workingPressurePsi(String engineNumber) {
        return pressures.psiOf(engineNumber);
    }
}
