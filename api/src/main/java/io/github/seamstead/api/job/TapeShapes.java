package io.github.seamstead.api.job;

import io.github.seamstead.geometry.tape.Tape;
import io.github.seamstead.shared.quantity.Dimension;

/** The shape of the tape of a survey. */
final class TapeShapes {

  private TapeShapes() {}

  static Shape<SurveyTape> tape() {
    Shape<SurveyTape> s =
        Shape.of(SurveyTape.class, "the tape and how it was held, to correct what it showed");
    Key<Double> marked =
        s.required(
            "markedLength",
            Quantities.length("m", 0.5, 200),
            "what the tape shows over a length that is known better");
    Key<Double> truth =
        s.required("trueLength", Quantities.length("m", 0.5, 200), "what that length is");
    Key<Double> expansion =
        s.assumed(
            "expansion",
            Quantities.ratio(0, 1e-3),
            "thermal expansion of the tape, per kelvin",
            Tape.STEEL_EXPANSION,
            "0.0000116 per kelvin",
            "common handbook value of tape steel");
    Key<Double> referenceTemperature =
        s.assumed(
            "referenceTemperature",
            Quantities.of(Dimension.TEMPERATURE, "degC", -50, 60),
            "the temperature at which the comparison holds",
            Tape.REFERENCE_TEMPERATURE,
            "20 degC",
            "reference temperature of the measuring instruments directive");
    Key<Double> stiffness =
        s.optional(
            "stiffness",
            Quantities.of(Dimension.FORCE, "N", 100, 1e7),
            "cross-section times modulus of elasticity; the stretch is left out without it");
    Key<Double> referencePull =
        s.assumed(
            "referencePull",
            Quantities.of(Dimension.FORCE, "N", 0, 500),
            "the pull at which the comparison holds",
            Tape.STEEL_PULL,
            "50 N",
            "usual reference pull of steel tapes");
    Key<Double> mass =
        s.optional(
            "massPerLength",
            Quantities.of(Dimension.MASS_PER_LENGTH, "kg/m", 1e-4, 1),
            "mass of the tape; the sag is left out without it");
    Key<Double> temperature =
        s.optional(
            "temperature",
            Quantities.of(Dimension.TEMPERATURE, "degC", -50, 80),
            "temperature of the tape on the day; left out, it is not corrected for");
    Key<Double> pull =
        s.optional(
            "pull", Quantities.of(Dimension.FORCE, "N", 1, 1000), "pull with which it was held");
    Key<Boolean> hung = s.or("hung", Kinds.flag(), "whether it hung free between its ends", false);
    s.rule(
        (v, faults) -> {
          double ratio = v.get(truth) / v.get(marked);
          if (ratio < 0.9 || ratio > 1.1) {
            faults.note(
                "trueLength",
                "a length that differs from markedLength by more than a tenth",
                "must be what the tape shows within a tenth");
          }
          if (v.get(hung) && v.has(mass) && !v.has(pull)) {
            faults.note("pull", "nothing", "must be there for a tape that hung free");
          }
        });
    return s.makes(
        v ->
            new SurveyTape(
                v.get(marked),
                v.get(truth),
                v.get(expansion),
                v.get(referenceTemperature),
                v.find(stiffness),
                v.get(referencePull),
                v.find(mass),
                v.find(temperature),
                v.find(pull),
                v.get(hung)));
  }
}
