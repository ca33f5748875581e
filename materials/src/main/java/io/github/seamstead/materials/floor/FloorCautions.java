package io.github.seamstead.materials.floor;

import io.github.seamstead.materials.soil.SilicaDust;
import io.github.seamstead.shared.caution.Caution;
import io.github.seamstead.shared.caution.Hazard;
import io.github.seamstead.shared.quantity.Numbers;
import io.github.seamstead.shared.source.Source;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The cautions that go with the work on a floor. */
public final class FloorCautions {

  /** Usual limit of respirable crystalline silica over 8 h, in kg/m³ (50 µg/m³). */
  public static final double SILICA_LIMIT = 50e-9;

  /** Guide weight for one lift close to the body, in kg (men; 16 kg for women). */
  public static final double GUIDE_LIFT = 25;

  private static final Source LIFTING =
      Source.fromMemory("UK HSE", "Manual handling at work, guide weights", "", "");
  private static final Source UNBRAKED =
      Source.fromMemory("", "usual limit of an unbraked trailer, 750 kg gross", "", "");
  private static final Source RAGS =
      Source.found("", "Spontaneous combustion of rags with linseed oil, news test", "2012", "");

  private static final double POUND = 0.45359237;
  private static final double GUIDE_LIFT_WOMEN = 16;
  private static final double UNBRAKED_GROSS = 750;

  private FloorCautions() {}

  /** Both ways of writing it, since a caution goes to whoever reads it. */
  private static String mass(double kilograms) {
    return Numbers.significant(kilograms, 3)
        + " kg ("
        + Numbers.significant(kilograms / POUND, 3)
        + " lb)";
  }

  /**
   * Warns of the dust of dry soil and sand.
   *
   * @return the caution with the usual limit
   */
  public static Caution silica() {
    return SilicaDust.CAUTION;
  }

  /**
   * Warns where a full bucket is heavier than the guide weight.
   *
   * @param bucketMass mass of the heaviest full bucket, in kg
   * @return the caution, always given above 10 kg since buckets are lifted many times
   */
  public static Optional<Caution> lifting(double bucketMass) {
    if (!(bucketMass > 10)) {
      return Optional.empty();
    }
    String verdict =
        bucketMass > GUIDE_LIFT
            ? "above the guide weight for a single lift: fill it less."
            : "within the guide weight for a single lift close to the body, but lifting 5 to 8"
                + " times a minute halves the guide and twisting takes another tenth to a fifth.";
    return Optional.of(
        Caution.of(
            Hazard.LIFTING,
            "A full bucket is about " + mass(bucketMass) + ", " + verdict,
            "Guide weights "
                + mass(GUIDE_LIFT)
                + " for men and "
                + mass(GUIDE_LIFT_WOMEN)
                + " for women, close to the body; half at 5 to 8 lifts a minute. Weigh a full"
                + " bucket.",
            LIFTING));
  }

  /**
   * Warns of overloaded trailers.
   *
   * @param payload the legal payload that was reckoned with, in kg
   * @return the caution
   */
  public static Caution trailer(double payload) {
    return Caution.of(
        Hazard.TRAILER_LOAD,
        "Damp sand reaches a payload of "
            + mass(payload)
            + " long before the body looks full, and an overloaded trailer swings and does not"
            + " stop.",
        "A trailer's payload is its permitted gross less its own mass; without brakes "
            + mass(UNBRAKED_GROSS)
            + " gross is usual. Keep weight on the ball.",
        UNBRAKED);
  }

  /**
   * Warns of the mixer.
   *
   * @return the caution
   */
  public static Caution machinery() {
    return new Caution(
        Hazard.MACHINERY,
        "A turning drum takes sleeves, shovels and hands.",
        "Mixer guard on, nothing reaches into a turning drum; unplug it before cleaning; a residual"
            + " current device on the lead.",
        Optional.of(Source.commonPractice("mixer rules")));
  }

  /**
   * Warns of oily rags.
   *
   * @return the caution
   */
  public static Caution oilyRags() {
    return Caution.of(
        Hazard.FIRE,
        "Rags with drying oil heat themselves and have flamed within 3 to 6 h.",
        "Spread oily rags flat outdoors or keep them under water in a closed metal can; let"
            + " vapours out while coats dry.",
        RAGS);
  }

  /**
   * Warns of heaters that dry a floor under a tight cover.
   *
   * @return the caution
   */
  public static Caution heating() {
    return new Caution(
        Hazard.CARBON_MONOXIDE,
        "A stove or a gas heater under a closed cover makes carbon monoxide, and burning gas adds"
            + " water to the air.",
        "Dry the floor with moving air; no flame without a flue, an open vent and an alarm; nobody"
            + " sleeps there.",
        Optional.of(Source.commonPractice("heaters in shelters")));
  }

  /**
   * Collects the cautions of a floor job.
   *
   * @param heaviestBucket mass of the heaviest full bucket, in kg
   * @param oiled true if a drying oil is used
   * @param drum true if the mixes turn in a mixer
   * @return the cautions in the order of the work
   */
  public static List<Caution> forJob(double heaviestBucket, boolean oiled, boolean drum) {
    List<Caution> cautions = new ArrayList<>();
    cautions.add(silica());
    lifting(heaviestBucket).ifPresent(cautions::add);
    if (drum) {
      cautions.add(machinery());
    }
    if (oiled) {
      cautions.add(oilyRags());
    }
    return List.copyOf(cautions);
  }
}
