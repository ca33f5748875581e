package io.github.seamstead.materials.soil;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.quantity.Numbers;
import io.github.seamstead.shared.source.Source;
import java.util.List;

/**
 * What a laboratory found of a matter that does harm whatever the texture. It leaves the texture as
 * it is; beyond its limit the soil is not advised for any use.
 *
 * @param kind what was found
 * @param ratio its share of the dry mass, 0 to 1
 */
public record HarmfulContent(Kind kind, double ratio) implements SoilEvidence {

  /** What a laboratory can find. */
  public enum Kind {
    /** Loss on ignition or by oxidation. */
    ORGANIC_MATTER("organic matter", 0.02, WarningSign.Kind.ORGANIC),
    /** All that dissolves in water. */
    SOLUBLE_SALTS("soluble salts", 0.02, WarningSign.Kind.SALTS);

    private final String label;
    private final double limit;
    private final WarningSign.Kind sign;

    Kind(String label, double limit, WarningSign.Kind sign) {
      this.label = label;
      this.limit = limit;
      this.sign = sign;
    }

    /**
     * Names it.
     *
     * @return a word or two
     */
    public String label() {
      return label;
    }

    /**
     * Gives the most that earth without a binder may have.
     *
     * @return a share of the dry mass
     */
    public double limit() {
      return limit;
    }
  }

  /** Where the limits stand. */
  public static final Source SOURCE =
      Source.fromMemory(
          "Maniatidis and Walker",
          "A Review of Rammed Earth Construction",
          "2003",
          "collected limits: organic matter and soluble salts to 2 %");

  public HarmfulContent {
    Args.within(kind.label(), ratio, 0, 1, "");
  }

  /**
   * Tells whether it speaks against the soil.
   *
   * @return true beyond the limit
   */
  public boolean isTooMuch() {
    return ratio > kind.limit;
  }

  /**
   * Says what follows.
   *
   * @return a sentence
   */
  public String advice() {
    String found =
        "A laboratory found "
            + percent(ratio)
            + " of "
            + kind.label
            + "; "
            + percent(kind.limit)
            + " is the most";
    return isTooMuch() ? found + ". " + kind.sign.advice() : found + ", so it does no harm.";
  }

  @Override
  public String label() {
    return "laboratory: " + kind.label + " " + percent(ratio);
  }

  @Override
  public List<Source> sources() {
    return List.of(SOURCE);
  }

  @Override
  public TextureLikelihood likelihood() {
    ClayLikelihood none = clay -> 1;
    return none;
  }

  @Override
  public List<String> remarks() {
    return isTooMuch() ? List.of(advice()) : List.of();
  }

  private static String percent(double ratio) {
    return Numbers.significant(ratio * 100, 2) + " %";
  }
}
