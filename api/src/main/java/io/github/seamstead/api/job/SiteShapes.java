package io.github.seamstead.api.job;

import io.github.seamstead.shared.quantity.Dimension;
import io.github.seamstead.shared.quantity.UnitSystem;
import java.time.LocalDate;
import java.util.Locale;

/** The shapes of the site section. */
final class SiteShapes {

  private SiteShapes() {}

  static Shape<Crew> crew() {
    Shape<Crew> s = Shape.of(Crew.class, "the people who do the work");
    Key<Integer> people = s.required("people", Kinds.count(1, 100), "how many people work");
    Key<Integer> teams =
        s.assumed(
            "teams",
            Kinds.count(1, 20),
            "how many teams join seams at the same time",
            1,
            "1",
            "one team unless the document says more");
    Key<Double> hoursPerDay =
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

  static Shape<Site> site() {
    Shape<Site> s = Shape.of(Site.class, "the site and who works there");
    Key<String> name = s.required("name", Kinds.text(), "what the job is called");
    Key<String> note = s.optional("note", Kinds.text(), "a remark for the first page");
    Key<UnitSystem> units =
        s.assumed(
            "units",
            Kinds.choice(UnitSystem.class, u -> u.name().toLowerCase(Locale.ROOT)),
            "the units that the book shows first",
            UnitSystem.METRIC,
            "metric",
            "the document states no units to show");
    Key<Crew> crew = s.optional("crew", crew(), "the people who do the work");
    Key<BasicWind> basicWind =
        s.optional(
            "basicWind",
            RiggingShapes.basicWind(),
            "basic wind speed of a code that prints means, in place of designWind");
    Key<Double> designWind =
        s.optional(
            "designWind",
            Quantities.of(Dimension.SPEED, "m/s", 5, 100),
            "gust speed at the height of the cover by the local code");
    Key<WindFigures> windFigures =
        s.optional(
            "windFigures",
            RiggingShapes.windFigures(),
            "wind coefficients of your own with their source, used in place of the simple ones");
    Key<PegPulls> pegs = s.optional("pegs", RiggingShapes.pegs(), "pegs tested by pulling them");
    Key<SiteRope> rope = s.optional("rope", RiggingShapes.rope(), "the rope that raises the cover");
    Key<LocalDate> start =
        s.optional("start", Kinds.day(), "the day on which joining starts, such as 2031-05-17");
    Key<Paper> paper =
        s.optional(
            "paper",
            Kinds.choice(Paper.class, size -> size.name().toLowerCase(Locale.ROOT)),
            "the paper that the book is made for; else a4 with metric, letter with imperial units");
    s.rule(
        (v, faults) -> {
          if (v.has(designWind) && v.has(basicWind)) {
            faults.note(
                "basicWind",
                "a mean beside the gust of designWind",
                "must be left out where designWind is stated: gusts would be counted twice");
          }
        });
    return s.makes(
        v ->
            new Site(
                v.get(name),
                v.find(note),
                v.get(units),
                v.find(crew),
                v.find(basicWind),
                v.find(designWind),
                v.find(windFigures),
                v.find(pegs),
                v.find(rope),
                v.find(start),
                v.find(paper)));
  }
}
