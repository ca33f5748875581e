package io.github.seamstead.materials.soil;

import io.github.seamstead.shared.source.Source;
import java.util.List;

/**
 * Shine test: a moist ball cut with a knife and the cut face looked at.
 *
 * <p>Likelihood: ordered outcomes whose limits lie at 15, 35 % of clay, with a spread of 7 % at 25
 * % of clay and in proportion to clay + 5 % elsewhere; with probability 0.08 the test misleads.
 *
 * @param outcome what was seen
 */
public record ShineTest(Outcome outcome) implements SoilEvidence {

  /** Where the reading rule stands. */
  public static final Source SOURCE =
      Source.fromMemory("Minke", "Building with Earth", "", "cutting test");

  private static final OrdinalScale SCALE = new OrdinalScale(0.07, 0.15, 0.35);

  /** What can be seen, from lean to rich. */
  public enum Outcome {
    /** Dull: sand or silt. */
    DULL("dull cut"),
    /** Some sheen. */
    SOME_SHEEN("some sheen"),
    /** Shiny: clay. */
    SHINY("shiny cut");

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
    return "shine test: " + outcome.label();
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
