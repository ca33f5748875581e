package io.github.seamstead.materials.soil;

import io.github.seamstead.shared.source.Source;
import java.util.List;

/**
 * Wash test: wet soil rubbed between the hands, then rinsed off.
 *
 * <p>Likelihood: one of three outcomes, with weights {@code exp(6 sand)}, {@code exp(6 silt)} and
 * {@code exp(12 clay)} over their sum (clay is felt at half the share); with probability 0.08 the
 * test misleads.
 *
 * @param outcome what was felt
 */
public record WashTest(Outcome outcome) implements SoilEvidence {

  /** Where the reading rule stands. */
  public static final Source SOURCE =
      Source.commonPractice("hand wash test: gritty, powdery or soapy");

  private static final double STEEPNESS = 6;

  /** What can be felt. */
  public enum Outcome {
    /** Gritty, rinses off at once: sand. */
    GRITTY("gritty, rinses off at once"),
    /** Powdery as flour, rinses off easily: silt. */
    POWDERY("powdery as flour, rinses off easily"),
    /** Soapy and sticky, hard to rinse off: clay. */
    SOAPY("soapy and sticky, hard to rinse off");

    private final String label;

    Outcome(String label) {
      this.label = label;
    }

    /**
     * Says what was felt.
     *
     * @return a few words
     */
    public String label() {
      return label;
    }
  }

  @Override
  public String label() {
    return "wash test: " + outcome.label();
  }

  @Override
  public List<Source> sources() {
    return List.of(SOURCE);
  }

  @Override
  public TextureLikelihood likelihood() {
    return (clay, silt, sand) -> {
      double gritty = StrictMath.exp(STEEPNESS * sand);
      double powdery = StrictMath.exp(STEEPNESS * silt);
      double soapy = StrictMath.exp(2 * STEEPNESS * clay);
      double seen =
          switch (outcome) {
            case GRITTY -> gritty;
            case POWDERY -> powdery;
            case SOAPY -> soapy;
          };
      return (1 - OrdinalScale.MISLEADS) * seen / (gritty + powdery + soapy)
          + OrdinalScale.MISLEADS / 3;
    };
  }
}
