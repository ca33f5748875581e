package io.github.seamstead.materials.soil;

import io.github.seamstead.shared.source.Source;
import java.util.List;

/**
 * Drop test: a ball of 4 cm, as dry as it can still be formed, dropped 1.5 m on a hard floor.
 *
 * <p>Likelihood: ordered outcomes whose limits lie at 12, 28 % of clay, with a spread of 6 % at 25
 * % of clay and in proportion to clay + 5 % elsewhere; with probability 0.08 the test misleads.
 *
 * @param outcome what was seen
 */
public record DropTest(Outcome outcome) implements SoilEvidence {

  /** Where the reading rule stands. */
  public static final Source SOURCE =
      Source.fromMemory("Minke", "Building with Earth", "", "ball dropping test");

  private static final OrdinalScale SCALE = new OrdinalScale(0.06, 0.12, 0.28);

  /** What can be seen, from lean to rich. */
  public enum Outcome {
    /** Falls apart into crumbs: little clay. */
    FALLS_APART("falls apart"),
    /** Cracks or breaks into a few pieces. */
    CRACKS("cracks or breaks into a few pieces"),
    /** Flattens with few or no cracks: much clay. */
    FLATTENS("flattens with few or no cracks");

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
    return "drop test: " + outcome.label();
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
