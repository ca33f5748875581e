package io.github.seamstead.materials.soil;

import io.github.seamstead.shared.source.Source;
import java.util.List;

/**
 * Dry strength: a pat or small ball, well dried, broken between finger and thumb.
 *
 * <p>Likelihood: ordered outcomes whose limits lie at 4, 12, 25, 45 % of clay, with a spread of 6 %
 * at 25 % of clay and in proportion to clay + 5 % elsewhere; with probability 0.08 the test
 * misleads.
 *
 * @param outcome what was seen
 */
public record DryStrengthTest(Outcome outcome) implements SoilEvidence {

  /** Where the reading rule stands. */
  public static final Source SOURCE =
      Source.fromMemory(
          "ASTM", "D2488", "", "criteria for describing dry strength; clay limits common practice");

  private static final OrdinalScale SCALE = new OrdinalScale(0.06, 0.04, 0.12, 0.25, 0.45);

  /** What can be seen, from lean to rich. */
  public enum Outcome {
    /** Crumbles with mere handling. */
    NONE("crumbles with mere handling"),
    /** Crumbles with some finger pressure. */
    LOW("crumbles with some finger pressure"),
    /** Breaks with considerable finger pressure. */
    MEDIUM("breaks with considerable finger pressure"),
    /** Cannot be broken by fingers, only against a hard surface. */
    HIGH("breaks only against a hard surface"),
    /** Cannot be broken between thumb and a hard surface. */
    VERY_HIGH("cannot be broken by hand");

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
    return "dry strength: " + outcome.label();
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
