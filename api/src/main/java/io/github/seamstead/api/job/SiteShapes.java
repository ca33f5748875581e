package io.github.seamstead.api.job;

import io.github.seamstead.shared.quantity.Dimension;
import io.github.seamstead.shared.quantity.UnitSystem;
import java.util.Locale;

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
    return s.makes(
        v -> new Site(v.get(name), v.find(note), v.get(units), v.find(crew), v.find(designWind)));
  }
}
