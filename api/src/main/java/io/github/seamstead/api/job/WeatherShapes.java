package io.github.seamstead.api.job;

import io.github.seamstead.shared.quantity.Dimension;
import java.time.LocalDate;
import java.util.List;

/** The shapes of the weather section. */
final class WeatherShapes {

  private WeatherShapes() {}

  private static Kind<Double> temperature() {
    return Quantities.of(Dimension.TEMPERATURE, "degC", -40, 60);
  }

  private static Kind<Double> airSpeed() {
    return Quantities.of(Dimension.SPEED, "m/s", 0.01, 40);
  }

  private static Shape<WeatherWeek> week() {
    Shape<WeatherWeek> s = Shape.of(WeatherWeek.class, "weeks of like weather");
    Key<Integer> weeks =
        s.or("weeks", Kinds.count(1, 52), "how many weeks it lasts; one if left out", 1);
    Key<Double> lowest = s.required("lowest", temperature(), "temperature of the night");
    Key<Double> highest = s.required("highest", temperature(), "temperature of the afternoon");
    Key<Double> humidity = s.required("humidity", Quantities.ratio(0, 1), "mean relative humidity");
    Key<Double> airSpeed = s.required("airSpeed", airSpeed(), "mean air speed over the floor");
    s.rule(
        (v, faults) -> {
          if (v.get(lowest) > v.get(highest)) {
            faults.note("lowest", "a night warmer than the day", "must be at most highest");
          }
        });
    return s.makes(
        v ->
            new WeatherWeek(
                v.get(weeks), v.get(lowest), v.get(highest), v.get(humidity), v.get(airSpeed)));
  }

  private static Shape<TileWeighing> weighing() {
    Shape<TileWeighing> s = Shape.of(TileWeighing.class, "one weighing of a test tile");
    Key<Double> time =
        s.required(
            "time", Quantities.of(Dimension.TIME, "h", 0, 8760), "time since the tile was filled");
    Key<Double> mass =
        s.required("mass", Quantities.of(Dimension.MASS, "kg", 0.05, 200), "mass of tile and tray");
    return s.makes(v -> new TileWeighing(v.get(time), v.get(mass)));
  }

  private static Shape<TileTest> tile() {
    Shape<TileTest> s = Shape.of(TileTest.class, "a tile of a mix in a tray, weighed as it dries");
    Key<String> mix = s.required("mix", Kinds.id(), "the mix, by its id under floor");
    Key<Double> thickness =
        s.required("thickness", Quantities.length("mm", 5, 200), "thickness of the tile");
    Key<Double> area =
        s.required("area", Quantities.of(Dimension.AREA, "cm2", 25, 10000), "its open face");
    Key<Double> moisture =
        s.required("moisture", Quantities.ratio(0.02, 0.6), "water over dry mass when filled");
    Key<List<TileWeighing>> weighings =
        s.required("weighings", Kinds.list(weighing(), 3, 60), "in the order of time");
    Key<Double> scale =
        s.assumed(
            "scale",
            Quantities.of(Dimension.MASS, "g", 0.01, 500),
            "standard uncertainty of a weighing",
            0.002,
            "2 g",
            "common practice: a kitchen scale");
    Key<Double> temperature =
        s.required("temperature", temperature(), "temperature where the tile stood");
    Key<Double> humidity =
        s.optional("humidity", Quantities.ratio(0, 1), "relative humidity there; or state wetBulb");
    Key<Double> wetBulb = wetBulb(s);
    Key<Double> airSpeed = s.required("airSpeed", airSpeed(), "air speed over the tile");
    s.rule(
        (v, faults) -> {
          bulbs(
              v.find(temperature).orElse(60.0),
              v.has(humidity),
              v.find(wetBulb).orElse(-40.0),
              v.has(wetBulb),
              "must state humidity or wetBulb",
              faults);
          List<TileWeighing> all = v.get(weighings);
          for (int i = 1; i < all.size(); i++) {
            if (all.get(i).time() <= all.get(i - 1).time()) {
              faults.note(
                  "weighings[" + i + "].time", "no later than the one before", "must be later");
            }
          }
        });
    return s.makes(
        v ->
            new TileTest(
                v.get(mix),
                v.get(thickness),
                v.get(area),
                v.get(moisture),
                v.get(weighings),
                v.get(scale),
                v.get(temperature),
                v.find(humidity),
                v.find(wetBulb),
                v.get(airSpeed)));
  }

  private static Key<Double> wetBulb(Shape<?> s) {
    return s.optional(
        "wetBulb",
        temperature(),
        "what a thermometer in a wet sock shows in a draught; tells the humidity");
  }

  private static void bulbs(
      double temperature,
      boolean humidity,
      double wetBulb,
      boolean bulb,
      String must,
      Shape.Faults faults) {
    if (humidity == bulb) {
      faults.note("humidity", humidity ? "humidity and wetBulb" : "nothing", must);
    }
    if (wetBulb > temperature) {
      faults.note("wetBulb", "above the air", "must be at most temperature");
    }
  }

  static Shape<Weather> weather() {
    Shape<Weather> s = Shape.of(Weather.class, "the weather while the floor dries");
    Key<Double> temperature =
        s.optional("temperature", temperature(), "mean air temperature; or state weeks");
    Key<Double> humidity =
        s.optional(
            "humidity",
            Quantities.ratio(0, 1),
            "mean relative humidity of the air; or state wetBulb");
    Key<Double> wetBulb = wetBulb(s);
    Key<Double> airSpeed = s.optional("airSpeed", airSpeed(), "mean air speed over the floor");
    Key<List<WeatherWeek>> weeks =
        s.or(
            "weeks",
            Kinds.list(week(), 1, 30),
            "week after week from the laying of the lowest mixed layer, in place of one mean",
            List.of());
    Key<LocalDate> laid =
        s.optional(
            "laid",
            Kinds.day(),
            "the day on which the lowest mixed layer is laid, such as 2031-05-17; site.start if"
                + " left out");
    Key<List<TileTest>> tiles =
        s.or("tiles", Kinds.list(tile(), 1, 20), "test tiles of the mixes", List.of());
    Key<Double> horizon =
        s.assumed(
            "horizon",
            Quantities.of(Dimension.TIME, "d", 1, 730),
            "how far the forecast looks",
            180 * 86400.0,
            "180 d",
            "long enough for a coat on a damp pack in summer");
    Key<Integer> airChanges =
        s.optional(
            "airChanges",
            Kinds.count(1, 20000),
            "how often the air under the cover is renewed in a day; so often that it keeps the"
                + " stated humidity if left out");
    Key<Double> roomVolume =
        s.optional(
            "roomVolume",
            Quantities.of(Dimension.VOLUME, "m3", 0.1, 100000),
            "volume of the air under the cover; that of the frame if left out");
    s.rule(
        (v, faults) -> {
          boolean mean = v.has(temperature) || v.has(humidity) || v.has(wetBulb) || v.has(airSpeed);
          if (!v.get(weeks).isEmpty()) {
            if (mean) {
              faults.note("weeks", "weeks and a mean", "must state weeks or the mean, not both");
            }
          } else {
            needed(v.has(temperature), "temperature", "mean air temperature", faults);
            needed(v.has(airSpeed), "airSpeed", "mean air speed over the floor", faults);
            bulbs(
                v.find(temperature).orElse(60.0),
                v.has(humidity),
                v.find(wetBulb).orElse(-40.0),
                v.has(wetBulb),
                "must state humidity or wetBulb, or weeks",
                faults);
          }
        });
    return s.makes(
        v ->
            new Weather(
                v.find(temperature),
                v.find(humidity),
                v.find(wetBulb),
                v.find(airSpeed),
                v.get(weeks),
                v.find(laid),
                v.get(tiles),
                v.get(horizon),
                v.find(airChanges),
                v.find(roomVolume)));
  }

  private static void needed(boolean there, String key, String meaning, Shape.Faults faults) {
    if (!there) {
      faults.note(key, "nothing", "must be there: " + meaning + "; or state weeks");
    }
  }
}
