package io.github.seamstead.api.job;

import io.github.seamstead.assembly.anchor.Ground;
import io.github.seamstead.assembly.anchor.PegTest;
import io.github.seamstead.shared.quantity.Dimension;
import io.github.seamstead.shared.quantity.UnitSystem;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The shapes of the site section. */
final class SiteShapes {

  private SiteShapes() {}

  static Shape<Crew> crew() {
    Shape<Crew> s = Shape.of(Crew.class, "the people who do the work");
    Shape.Key<Integer> people = s.required("people", Kinds.count(1, 100), "how many people work");
    Shape.Key<Integer> teams =
        s.assumed(
            "teams",
            Kinds.count(1, 20),
            "how many teams join seams at the same time",
            1,
            "1",
            "one team unless the document says more");
    Shape.Key<Double> hoursPerDay =
        s.assumed(
            "hoursPerDay",
            Quantities.of(Dimension.TIME, "h", 1, 16),
            "working time in a day",
            8 * 3600.0,
            "8 h",
            "common practice: one working day");
    s.rule(
        (v, faults) -> {
          if (v.get(teams) > v.get(people)) {
            faults.note(
                "teams",
                v.get(teams) + " teams of " + v.get(people) + " people",
                "must be at most one team for each person");
          }
        });
    return s.makes(v -> new Crew(v.get(people), v.get(teams), v.get(hoursPerDay)));
  }

  private static Shape<WindFigures> windFigures() {
    Shape<WindFigures> s =
        Shape.of(
            WindFigures.class,
            "wind coefficients of your own, for a shape that the simple ones do not hold for");
    Shape.Key<Double> drag =
        s.required(
            "drag",
            Quantities.ratio(0.05, 3),
            "sideways force over velocity pressure and greatest silhouette");
    Shape.Key<Double> uplift =
        s.required(
            "uplift",
            Quantities.ratio(0, 3),
            "upward force over velocity pressure and plan area, pressure from inside included");
    Shape.Key<String> source =
        s.required("source", Kinds.text(), "where they stand, such as the code and its clause");
    return s.makes(v -> new WindFigures(v.get(drag), v.get(uplift), v.get(source)));
  }

  private static Shape<PegPulls> pegs() {
    Shape<PegPulls> s =
        Shape.of(PegPulls.class, "pegs tested by pulling them on this ground, along the rope");
    Shape.Key<List<Double>> pulls =
        s.required(
            "pulls",
            Kinds.list(Quantities.of(Dimension.FORCE, "N", 1, 1e6), PegTest.LEAST_TESTS, 100),
            "pull at which each peg began to move");
    Shape.Key<Ground> ground =
        s.assumed(
            "ground",
            Kinds.constant(Ground.class),
            "the ground on the day that counts, beside the day of the test",
            Ground.WET_OR_THAWING,
            "wetOrThawing",
            "the careful reading: wind comes with rain, and wet ground holds about half");
    Shape.Key<Double> factor =
        s.assumed(
            "factor",
            Quantities.ratio(1.5, 10),
            "tested over allowed pull",
            PegTest.USUAL_FACTOR,
            "2",
            "common practice");
    return s.makes(v -> new PegPulls(v.get(pulls), v.get(ground), v.get(factor)));
  }

  static Shape<Site> site() {
    Shape<Site> s = Shape.of(Site.class, "the site and who works there");
    Shape.Key<String> name = s.required("name", Kinds.text(), "what the job is called");
    Shape.Key<String> note = s.optional("note", Kinds.text(), "a remark for the first page");
    Shape.Key<UnitSystem> units =
        s.assumed(
            "units",
            Kinds.choice(UnitSystem.class, u -> u.name().toLowerCase(Locale.ROOT)),
            "the units that the book shows first",
            UnitSystem.METRIC,
            "metric",
            "the document states no units to show");
    Shape.Key<Crew> crew = s.optional("crew", crew(), "the people who do the work");
    Shape.Key<Double> designWind =
        s.optional(
            "designWind",
            Quantities.of(Dimension.SPEED, "m/s", 5, 100),
            "gust speed at the height of the cover by the local code");
    Shape.Key<WindFigures> windFigures =
        s.optional(
            "windFigures",
            windFigures(),
            "wind coefficients of your own with their source, used in place of the simple ones");
    Shape.Key<PegPulls> pegs = s.optional("pegs", pegs(), "pegs tested by pulling them");
    Shape.Key<String> start =
        s.optional("start", Kinds.text(), "the day on which joining starts, such as 2031-05-17");
    s.rule(
        (v, faults) -> {
          if (v.find(start).filter(text -> date(text).isEmpty()).isPresent()) {
            faults.note("start", v.get(start), "must be a day, written year-month-day");
          }
        });
    return s.makes(
        v ->
            new Site(
                v.get(name),
                v.find(note),
                v.get(units),
                v.find(crew),
                v.find(designWind),
                v.find(windFigures),
                v.find(pegs),
                v.find(start).flatMap(SiteShapes::date)));
  }

  static Optional<LocalDate> date(String text) {
    try {
      return Optional.of(LocalDate.parse(text));
    } catch (DateTimeParseException e) {
      return Optional.empty();
    }
  }
}
