package io.github.seamstead.api.job;

import io.github.seamstead.shared.quantity.Dimension;

/** The shape of what the maker of the adhesive states. Nothing is assumed: adhesives differ. */
final class AdhesiveShapes {

  private AdhesiveShapes() {}

  static Shape<Adhesive> adhesive() {
    Shape<Adhesive> s = Shape.of(Adhesive.class, "what the maker of the adhesive states");
    Key<Double> openTime =
        s.required(
            "openTime",
            Quantities.of(Dimension.TIME, "min", 0.1, 1440),
            "how long a bead may wait before it is pressed");
    Key<Double> cureTime =
        s.required(
            "cureTime",
            Quantities.of(Dimension.TIME, "h", 0, 720),
            "how long a joint rests before it is handled");
    Key<Double> least =
        s.required(
            "leastTemperature",
            Quantities.of(Dimension.TEMPERATURE, "degC", -40, 80),
            "least temperature of cloth and air");
    Key<Double> greatest =
        s.required(
            "greatestTemperature",
            Quantities.of(Dimension.TEMPERATURE, "degC", -40, 80),
            "greatest temperature of cloth and air");
    Key<Double> humidity =
        s.required("greatestHumidity", Quantities.ratio(0.01, 1), "greatest relative humidity");
    Key<String> source =
        s.required("source", Kinds.text(), "where these figures stand, such as the data sheet");
    s.rule(
        (v, faults) -> {
          if (v.get(least) > v.get(greatest)) {
            faults.note(
                "leastTemperature",
                "more than greatestTemperature",
                "must be at most the greatest temperature");
          }
        });
    return s.makes(
        v ->
            new Adhesive(
                v.get(openTime),
                v.get(cureTime),
                v.get(least),
                v.get(greatest),
                v.get(humidity),
                v.get(source)));
  }
}
