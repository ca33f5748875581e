package io.github.seamstead.materials.soil;

import io.github.seamstead.shared.source.Source;
import java.util.List;

/**
 * Squeeze test: a handful of barely moist soil squeezed in the fist, opened and touched.
 *
 * <p>Likelihood: ordered outcomes whose limits lie at 5, 12, 28 % of clay, with a spread of 5 % at
 * 25 % of clay and in proportion to clay + 5 % elsewhere; with probability 0.08 the test misleads.
 *
 * @param outcome what was seen
 */
public record SqueezeTest(Outcome outcome) implements SoilEvidence {

  /** Where the reading rule stands. */
  public static final Source SOURCE =
      Source.fromMemory("USDA", "Guide to texture by feel: the cast", "", "");

  private static final OrdinalScale SCALE = new OrdinalScale(0.05, 0.05, 0.12, 0.28);

  /** What can be seen, from lean to rich. */
  public enum Outcome {
    /** Falls apart when the hand opens. */
    FALLS_APART("falls apart when the hand opens"),
    /** Holds its shape and breaks at a touch. */
    BREAKS_AT_A_TOUCH("holds, breaks at a touch"),
    /** Holds its shape when handled with care. */
    BEARS_HANDLING("holds when handled"),
    /** Holds firmly and keeps the prints of the fingers. */
    KEEPS_FINGERPRINTS("holds firmly and keeps the prints of the fingers");

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
    return "squeeze test: " + outcome.label();
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
