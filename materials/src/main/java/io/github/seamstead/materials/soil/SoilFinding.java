package io.github.seamstead.materials.soil;

import io.github.seamstead.shared.uncertainty.Uncertain;
import java.util.List;
import java.util.Optional;

/**
 * What the tests say the soil is.
 *
 * @param texture what is known of clay, silt and sand below 2 mm
 * @param gravelRatio share of gravel and stones in the whole dry mass, if a test tells it
 * @param plasticity how plastic and active it is
 * @param evidence the tests it rests on, in the order given
 * @param conflicts tests that the others speak against; empty if they agree
 * @param remarks what the tests say about themselves, each with the test's name
 */
public record SoilFinding(
    TexturePosterior texture,
    Optional<Uncertain> gravelRatio,
    Plasticity plasticity,
    List<SoilEvidence> evidence,
    List<Conflict> conflicts,
    List<String> remarks) {

  public SoilFinding {
    evidence = List.copyOf(evidence);
    conflicts = List.copyOf(conflicts);
    remarks = List.copyOf(remarks);
  }

  /**
   * Gives the grain size curve of the mean texture with the gravel, for a drawing on a logarithmic
   * axis.
   *
   * @param largest largest stone, 0.0021 to 0.2 m
   * @return the curve
   */
  public GradingCurve curve(double largest) {
    return GradingCurve.ofTexture(
        texture.mean(), gravelRatio.map(Uncertain::value).orElse(0.0), largest);
  }
}
