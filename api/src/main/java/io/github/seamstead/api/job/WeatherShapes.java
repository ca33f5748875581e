package io.github.seamstead.api.job;

import io.github.seamstead.shared.quantity.Dimension;

/** The shapes of the weather section. */
final class WeatherShapes {

  private WeatherShapes() {}

  static Shape<Weather> weather() {
    Shape<Weather> s = Shape.of(Weather.class, "the weather while the floor dries");
    Shape.Key<Double> temperature =
        s.required(
            "temperature",
            Quantities.of(Dimension.TEMPERATURE, "degC", -40, 60),
            "mean air temperature");
    Shape.Key<Double> humidity =
        s.required("humidity", Quantities.ratio(0, 1), "mean relative humidity of the air");
    Shape.Key<Double> airSpeed =
        s.required(
            "airSpeed",
            Quantities.of(Dimension.SPEED, "m/s", 0.01, 40),
            "mean air speed over the floor");
    Shape.Key<Double> horizon =
        s.assumed(
            "horizon",
            Quantities.of(Dimension.TIME, "d", 1, 730),
            "how far the forecast looks",
            180 * 86400.0,
            "180 d",
            "long enough for a coat on a damp pack in summer");
    Shape.Key<Integer> airChanges =
        s.optional(
            "airChanges",
            Kinds.count(1, 20000),
            "how often the air under the cover is renewed in a day; so often that it keeps the"
                + " stated humidity if left out");
    Shape.Key<Double> roomVolume =
        s.optional(
            "roomVolume",
            Quantities.of(Dimension.VOLUME, "m3", 0.1, 100000),
            "volume of the air under the cover; that of the frame if left out");
    return s.makes(
        v ->
            new Weather(
                v.get(temperature),
                v.get(humidity),
                v.get(airSpeed),
                v.get(horizon),
                v.find(airChanges),
                v.find(roomVolume)));
  }
}
