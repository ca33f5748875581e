package io.github.seamstead.api.job;

import io.github.seamstead.materials.soil.BendTest;
import io.github.seamstead.materials.soil.DropTest;
import io.github.seamstead.materials.soil.DryStrengthTest;
import io.github.seamstead.materials.soil.ShineTest;
import io.github.seamstead.materials.soil.SqueezeTest;
import io.github.seamstead.materials.soil.WashTest;

/** The keys of tests of a soil, the same in a job and in a diary. */
final class SoilTestKeys {

  private SoilTestKeys() {}

  static Key<SqueezeTest.Outcome> squeeze(Shape<?> s) {
    return s.optional(
        "squeeze", Kinds.constant(SqueezeTest.Outcome.class), "a moist handful squeezed");
  }

  static Key<DropTest.Outcome> drop(Shape<?> s) {
    return s.optional(
        "drop", Kinds.constant(DropTest.Outcome.class), "a moist ball dropped from 1.5 m");
  }

  static Key<Double> thread(Shape<?> s) {
    return s.optional(
        "thread", Quantities.length("mm", 0.3, 50), "the thinnest thread that it can be rolled to");
  }

  static Key<BendTest.Outcome> bend(Shape<?> s) {
    return s.optional("bend", Kinds.constant(BendTest.Outcome.class), "a roll bent to a ring");
  }

  static Key<Double> ribbon(Shape<?> s) {
    return s.optional(
        "ribbon", Quantities.length("mm", 0, 200), "mean length of the ribbons before they break");
  }

  static Key<WashTest.Outcome> wash(Shape<?> s) {
    return s.optional(
        "wash", Kinds.constant(WashTest.Outcome.class), "how it feels between wet hands");
  }

  static Key<ShineTest.Outcome> shine(Shape<?> s) {
    return s.optional(
        "shine", Kinds.constant(ShineTest.Outcome.class), "a moist ball cut with a knife");
  }

  static Key<DryStrengthTest.Outcome> dryStrength(Shape<?> s) {
    return s.optional(
        "dryStrength", Kinds.constant(DryStrengthTest.Outcome.class), "a dry lump broken by hand");
  }

  static Key<JarReading> jar(Shape<?> s) {
    return s.optional("jar", SoilTestShapes.jarReading(), "the jar test");
  }

  static Key<LaboratorySheet> laboratory(Shape<?> s) {
    return s.optional("laboratory", SoilTestShapes.laboratorySheet(), "shares from a laboratory");
  }

  static Key<SieveSheet> sieve(Shape<?> s) {
    return s.optional("sieve", SoilTestShapes.sieveSheet(), "a sieve analysis");
  }

  static Key<HydrometerSheet> hydrometer(Shape<?> s) {
    return s.optional("hydrometer", SoilTestShapes.hydrometerSheet(), "a hydrometer analysis");
  }

  static Key<ShrinkageBar> shrinkage(Shape<?> s) {
    return s.optional("shrinkage", SoilTestShapes.shrinkageBar(), "the shrinkage bar");
  }
}
