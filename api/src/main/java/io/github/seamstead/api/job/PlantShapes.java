package io.github.seamstead.api.job;

import io.github.seamstead.shared.quantity.Dimension;

/** The shapes of the plant section. */
final class PlantShapes {

  private PlantShapes() {}

  static Shape<PlantMixer> plantMixer() {
    Shape<PlantMixer> s = Shape.of(PlantMixer.class, "the mixer");
    Key<Double> workingVolume =
        s.required(
            "workingVolume",
            Quantities.of(Dimension.VOLUME, "l", 1, 5000),
            "volume that the drum mixes in one batch");
    Key<Double> massLimit =
        s.optional(
            "massLimit",
            Quantities.of(Dimension.MASS, "kg", 1, 10000),
            "the most that the drum may hold");
    Key<Double> cycle =
        s.assumed(
            "cycle",
            Quantities.of(Dimension.TIME, "min", 0.5, 240),
            "time for one batch: fill, mix, empty",
            12 * 60.0,
            "12 min",
            "common practice: filling by bucket, five minutes of turning, tipping");
    return s.makes(v -> new PlantMixer(v.get(workingVolume), v.find(massLimit), v.get(cycle)));
  }

  static Shape<PlantBarrow> plantBarrow() {
    Shape<PlantBarrow> s = Shape.of(PlantBarrow.class, "the barrow");
    Key<Double> volume =
        s.required(
            "volume",
            Quantities.of(Dimension.VOLUME, "l", 5, 1000),
            "volume that the barrow carries");
    Key<Double> payload =
        s.optional(
            "payload", Quantities.of(Dimension.MASS, "kg", 5, 1000), "the most that it may carry");
    return s.makes(v -> new PlantBarrow(v.get(volume), v.find(payload)));
  }

  static Shape<PlantTrailer> plantTrailer() {
    Shape<PlantTrailer> s = Shape.of(PlantTrailer.class, "the trailer that brings material");
    Key<Double> volume =
        s.required(
            "volume", Quantities.of(Dimension.VOLUME, "m3", 0.01, 100), "volume of the load bed");
    Key<Double> payload =
        s.required("payload", Quantities.of(Dimension.MASS, "kg", 10, 50000), "legal payload");
    return s.makes(v -> new PlantTrailer(v.get(volume), v.get(payload)));
  }

  static Shape<Plant> plant() {
    Shape<Plant> s = Shape.of(Plant.class, "the tools that move and mix material");
    Key<PlantMixer> mixer = s.optional("mixer", plantMixer(), "the mixer");
    Key<Double> bucket =
        s.assumed(
            "bucket",
            Quantities.of(Dimension.VOLUME, "l", 0.5, 200),
            "volume of the bucket that parts are measured with",
            0.012,
            "12 l",
            "common practice: a builder's bucket filled level");
    Key<PlantBarrow> barrow = s.optional("barrow", plantBarrow(), "the barrow");
    Key<PlantTrailer> trailer =
        s.optional("trailer", plantTrailer(), "the trailer that brings material");
    return s.makes(v -> new Plant(v.find(mixer), v.get(bucket), v.find(barrow), v.find(trailer)));
  }
}
