package io.github.seamstead.geometry.tape;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.derivation.Calculation;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.quantity.Numbers;
import io.github.seamstead.shared.source.Source;
import java.util.List;
import java.util.Optional;

/**
 * Turns what a tape shows into the distance: standardisation {@code L (true/marked - 1)},
 * temperature {@code alpha L (T - T0)}, pull {@code (P - P0) L / (A E)}, and sag {@code -w^2 l^3 /
 * (24 P^2)} for each free span l. Each is taken on the reading L and added.
 *
 * <pre>{@code
 * Tape steel = Tape.asMarked().expanding(1.16e-5, 20);
 * TapeCorrections.correct(10.004, steel, TapeUse.flat(30, 50)); // 10.0052
 * }</pre>
 */
public final class TapeCorrections {

  private static final Source TAPING =
      Source.found("J. Mahun", "Electronic and taped distances: taping corrections", "", "");

  /** More halvings than a double has digits. */
  private static final int HALVINGS = 200;

  /** No hand or spring balance pulls so hard, in newtons. */
  private static final double GREATEST_PULL = 1e9;

  private TapeCorrections() {}

  /**
   * Corrects a reading.
   *
   * @param reading what the tape shows, in metres, greater than 0
   * @param tape the tape
   * @param use how it was held
   * @return the distance, in metres
   * @throws IllegalArgumentException if the reading is not positive, the spans are longer than the
   *     reading, or a hanging tape's pull is not given
   */
  public static double correct(double reading, Tape tape, TapeUse use) {
    return correct(reading, tape, use, Steps.none());
  }

  /**
   * Corrects a reading and shows how.
   *
   * @param reading what the tape shows, in metres, greater than 0
   * @param tape the tape
   * @param use how it was held
   * @param steps receives the worked steps; the last is the distance
   * @return the distance, in metres
   * @throws IllegalArgumentException if the reading is not positive, the spans are longer than the
   *     reading, or a hanging tape's pull is not given
   */
  @Calculation("geometry.tape.correction")
  public static double correct(double reading, Tape tape, TapeUse use, Steps steps) {
    Args.positive("tape reading", reading, "m");
    checkSpans(reading, use.spans());
    double standard =
        steps
            .step("C_a", "standardisation")
            .formula("L * (k - 1)")
            .with("L", reading, "m")
            .with("k", tape.trueRatio(), "")
            .from(TAPING)
            .gives(reading * (tape.trueRatio() - 1), "m");
    double warmth = 0;
    if (use.temperature().isPresent()) {
      double t = use.temperature().get();
      warmth = tape.expansion() * reading * (t - tape.referenceTemperature());
      steps
          .step("C_t", "temperature")
          .formula("alpha * L * (T - T_0)")
          .with("alpha", tape.expansion(), "1/K")
          .with("L", reading, "m")
          .with("T", t, "degC")
          .with("T_0", tape.referenceTemperature(), "degC")
          .from(TAPING)
          .gives(warmth, "m");
    }
    double stretch = stretch(reading, tape, use, steps);
    double sag = sag(tape, use, steps);
    Steps.Entry entry =
        steps
            .step("D", "distance")
            .formula(
                "L + C_a"
                    + (use.temperature().isPresent() ? " + C_t" : "")
                    + (isStretchGiven(tape, use) ? " + C_p" : "")
                    + (isSagGiven(tape, use) ? " + C_s" : ""))
            .with("L", reading, "m")
            .with("C_a", standard, "m");
    if (use.temperature().isPresent()) {
      entry.with("C_t", warmth, "m");
    }
    if (isStretchGiven(tape, use)) {
      entry.with("C_p", stretch, "m");
    }
    if (isSagGiven(tape, use)) {
      entry.with("C_s", sag, "m");
    }
    return entry.from(TAPING).gives(reading + standard + warmth + stretch + sag, "m");
  }

  /**
   * Finds the pull at which a tape shows the true distance, so that nothing need be corrected:
   * where stretch makes up for sag, temperature and the tape's own error.
   *
   * @param reading what the tape is to show, in metres, greater than 0
   * @param tape the tape, with its axial stiffness
   * @param temperature of the tape, in degrees Celsius
   * @param spans the free lengths, in metres; empty if it lies on the ground
   * @return the pull, in newtons
   * @throws IllegalArgumentException if the tape's stiffness is unknown, the spans are longer than
   *     the reading, or no pull greater than 0 does it
   */
  public static double cancellingPull(
      double reading, Tape tape, double temperature, List<Double> spans) {
    return cancellingPull(reading, tape, temperature, spans, Steps.none());
  }

  /**
   * Finds the pull at which a tape shows the true distance, and shows the balance that it
   * satisfies.
   *
   * @param reading what the tape is to show, in metres, greater than 0
   * @param tape the tape, with its axial stiffness
   * @param temperature of the tape, in degrees Celsius
   * @param spans the free lengths, in metres; empty if it lies on the ground
   * @param steps receives the worked steps; the last is the pull
   * @return the pull, in newtons
   * @throws IllegalArgumentException if the tape's stiffness is unknown, the spans are longer than
   *     the reading, or no pull greater than 0 does it
   */
  @Calculation("geometry.tape.cancelling-pull")
  public static double cancellingPull(
      double reading, Tape tape, double temperature, List<Double> spans, Steps steps) {
    Args.positive("tape reading", reading, "m");
    Args.require(
        tape.axialStiffness().isPresent(),
        "axial stiffness",
        "none",
        "must be known to find the pull");
    checkSpans(reading, spans);
    Optional<Double> found = search(reading, tape, temperature, spans);
    Args.require(
        found.isPresent(),
        "pull: no pull greater than 0 N makes the tape true at "
            + Numbers.plain(temperature)
            + " degC");
    double pull = found.get();
    double sag = 0;
    for (double span : spans) {
      sag += sagOf(tape.weightPerMetre(), span, pull);
    }
    steps
        .step("C_s", "sag at the pull that was found by halving")
        .note("the sum of -w^2 * l^3 / (24 * P^2) over the spans")
        .gives(sag, "m");
    double other =
        steps
            .step("C_o", "standardisation and temperature")
            .formula("L * (k - 1) + alpha * L * (T - T_0)")
            .with("L", reading, "m")
            .with("k", tape.trueRatio(), "")
            .with("alpha", tape.expansion(), "1/K")
            .with("T", temperature, "degC")
            .with("T_0", tape.referenceTemperature(), "degC")
            .gives(
                reading * (tape.trueRatio() - 1)
                    + tape.expansion() * reading * (temperature - tape.referenceTemperature()),
                "m");
    double stiffness = tape.axialStiffness().get();
    return steps
        .step("P", "pull at which all corrections add up to nothing")
        .formula("P_0 - (C_s + C_o) * S / L")
        .with("P_0", tape.referencePull(), "N")
        .with("C_s", sag, "m")
        .with("C_o", other, "m")
        .with("S", stiffness, "N")
        .with("L", reading, "m")
        .from(TAPING)
        .gives(tape.referencePull() - (sag + other) * stiffness / reading, "N");
  }

  /**
   * Tells whether a pull makes the tape true, so that {@link #cancellingPull(double, Tape, double,
   * List, Steps)} finds it.
   *
   * @param reading what the tape is to show, in metres, greater than 0
   * @param tape the tape
   * @param temperature of the tape, in degrees Celsius
   * @param spans the free lengths, in metres; empty if it lies on the ground
   * @return true if the tape's stiffness is known and a pull greater than 0 does it
   * @throws IllegalArgumentException if the reading is not positive or the spans are longer
   */
  public static boolean canCancel(
      double reading, Tape tape, double temperature, List<Double> spans) {
    Args.positive("tape reading", reading, "m");
    checkSpans(reading, spans);
    return tape.axialStiffness().isPresent()
        && search(reading, tape, temperature, spans).isPresent();
  }

  /** Halves until the corrections add up to nothing; empty if they never do. */
  private static Optional<Double> search(
      double reading, Tape tape, double temperature, List<Double> spans) {
    double low = 0;
    double high = 1;
    while (excess(reading, tape, temperature, spans, high) < 0 && high < GREATEST_PULL) {
      low = high;
      high *= 2;
    }
    for (int i = 0; i < HALVINGS && Math.nextUp(low) < high; i++) {
      double middle = low + (high - low) / 2;
      if (excess(reading, tape, temperature, spans, middle) < 0) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return high < GREATEST_PULL && low > 0 ? Optional.of(high) : Optional.empty();
  }

  private static double excess(
      double reading, Tape tape, double temperature, List<Double> spans, double pull) {
    double sum =
        reading * (tape.trueRatio() - 1)
            + tape.expansion() * reading * (temperature - tape.referenceTemperature())
            + (pull - tape.referencePull()) * reading / tape.axialStiffness().get();
    for (double span : spans) {
      sum += sagOf(tape.weightPerMetre(), span, pull);
    }
    return sum;
  }

  private static double stretch(double reading, Tape tape, TapeUse use, Steps steps) {
    if (!isStretchGiven(tape, use)) {
      return 0;
    }
    double pull = use.pull().get();
    double stiffness = tape.axialStiffness().get();
    return steps
        .step("C_p", "pull")
        .formula("(P - P_0) * L / S")
        .with("P", pull, "N")
        .with("P_0", tape.referencePull(), "N")
        .with("L", reading, "m")
        .with("S", stiffness, "N")
        .note("S = A E, cross-section times modulus of elasticity")
        .from(TAPING)
        .gives((pull - tape.referencePull()) * reading / stiffness, "m");
  }

  private static double sag(Tape tape, TapeUse use, Steps steps) {
    if (!isSagGiven(tape, use)) {
      return 0;
    }
    Args.require(
        use.pull().isPresent(), "pull", "none", "must be given for a tape that hangs free");
    double pull = use.pull().get();
    double sum = 0;
    for (int i = 0; i < use.spans().size(); i++) {
      double span = use.spans().get(i);
      String symbol = i + 1 == use.spans().size() ? "C_s" : "C_s" + (i + 1);
      Steps.Entry entry =
          steps
              .step(symbol, "sag, to span " + (i + 1))
              .formula((i == 0 ? "" : "C_s" + i + " ") + "- w^2 * l^3 / (24 * P^2)")
              .with("w", tape.weightPerMetre(), "N/m")
              .with("l", span, "m")
              .with("P", pull, "N")
              .from(TAPING);
      if (i > 0) {
        entry.with("C_s" + i, sum, "m");
      }
      sum = entry.gives(sum + sagOf(tape.weightPerMetre(), span, pull), "m");
    }
    return sum;
  }

  private static double sagOf(double weightPerMetre, double span, double pull) {
    return -weightPerMetre * weightPerMetre * span * span * span / (24 * pull * pull);
  }

  private static boolean isStretchGiven(Tape tape, TapeUse use) {
    return use.pull().isPresent() && tape.axialStiffness().isPresent();
  }

  private static boolean isSagGiven(Tape tape, TapeUse use) {
    return tape.weightPerMetre() > 0 && !use.spans().isEmpty();
  }

  private static void checkSpans(double reading, List<Double> spans) {
    double free = spans.stream().mapToDouble(Double::doubleValue).sum();
    Args.require(
        free <= reading * (1 + 1e-9),
        "spans",
        Numbers.plain(free) + " m in all",
        "must not be longer than the reading of " + Numbers.plain(reading) + " m");
  }
}
