package io.github.seamstead.materials.soil;

import io.github.seamstead.shared.source.Source;
import java.util.List;

/**
 * A sign that speaks against a soil whatever its texture. It leaves the texture as it is.
 *
 * @param kind what was noticed
 */
public record WarningSign(Kind kind) implements SoilEvidence {

  /** What can be noticed. */
  public enum Kind {
    /** Musty smell, dark colour, roots: topsoil. */
    ORGANIC(
        "smells musty, is dark or has roots",
        "Organic matter rots, weakens and swells: take subsoil from below the topsoil."),
    /** White bloom on drying, salty taste, saline ground. */
    SALTS(
        "white bloom on drying or saline ground",
        "Salts crystallise at the surface and powder it: have it tested or take another soil."),
    /** Wide cracks in the dry field, sticky when wet: swelling clay. */
    SWELLING(
        "wide cracks in the dry field, very sticky when wet",
        "Swelling clay moves with every change of moisture: have activity and shrinkage tested.");

    private final String label;
    private final String advice;

    Kind(String label, String advice) {
      this.label = label;
      this.advice = advice;
    }

    /**
     * Says what was noticed.
     *
     * @return a few words
     */
    public String label() {
      return label;
    }

    /**
     * Says why it matters and what to do.
     *
     * @return a sentence
     */
    public String advice() {
      return advice;
    }
  }

  @Override
  public String label() {
    return "sign: " + kind.label();
  }

  @Override
  public List<Source> sources() {
    return List.of(Source.commonPractice("signs that speak against a building soil"));
  }

  @Override
  public TextureLikelihood likelihood() {
    ClayLikelihood none = clay -> 1;
    return none;
  }

  @Override
  public List<String> remarks() {
    return List.of(kind.advice());
  }
}
