package io.github.seamstead.materials.soil;

import io.github.seamstead.shared.source.Source;
import java.util.List;

/**
 * Roll and bend test: moist soil rolled into a sausage of about 15 cm and bent round.
 *
 * <p>Likelihood: ordered outcomes whose limits lie at 8, 15, 27, 35, 50 % of clay with a spread of
 * 5 % at 25 % of clay and in proportion to clay + 5 % elsewhere; with probability 0.08 the test
 * misleads.
 *
 * @param outcome what was seen
 */
public record BendTest(Outcome outcome) implements SoilEvidence {

  /** Where the reading rule stands. */
  public static final Source SOURCE =
      Source.fromMemory("FAO", "Simple methods for aquaculture: Soil", "", "manipulative test");

  private static final OrdinalScale SCALE = new OrdinalScale(0.05, 0.08, 0.15, 0.27, 0.35, 0.50);

  /** What can be seen, from lean to rich. */
  public enum Outcome {
    /** Makes a ball but no roll. */
    BALL_ONLY("makes a ball, no roll"),
    /** Makes short thick rolls only. */
    SHORT_ROLLS("makes short thick rolls only"),
    /** Makes a long roll that breaks when bent. */
    BREAKS_WHEN_BENT("makes a long roll that breaks when bent"),
    /** Bends to a half ring and then cracks. */
    HALF_RING("bends to a half ring"),
    /** Bends to a ring with cracks. */
    CRACKED_RING("bends to a ring with cracks"),
    /** Bends to a ring without cracks. */
    SMOOTH_RING("bends to a smooth ring");

    private final String label;

    Outcome(String label) {
      this.label = label;
    }

    /**
     * Says what was seen.
     *
     * @return a few words
     */
    public String label() {
      return label;
    }
  }

  @Override
  public String label() {
    return "roll and bend test: " + outcome.label();
  }

  @Override
  public List<Source> sources() {
    return List.of(SOURCE);
  }

  @Override
  public TextureLikelihood likelihood() {
    return SCALE.of(List.of(Outcome.values()).indexOf(outcome));
  }
}
