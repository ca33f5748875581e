package io.github.seamstead.materials.soil;

import java.util.List;

/**
 * What the tests say the soil is.
 *
 * @param texture what is known of clay, silt and sand
 * @param evidence the tests it rests on, in the order given
 * @param conflicts tests that the others speak against; empty if they agree
 * @param remarks what the tests say about themselves, each with the test's name
 */
public record SoilFinding(
    TexturePosterior texture,
    List<SoilEvidence> evidence,
    List<Conflict> conflicts,
    List<String> remarks) {

  /**
   * Copies the lists.
   *
   * @param texture what is known of clay, silt and sand
   * @param evidence the tests
   * @param conflicts tests that the others speak against
   * @param remarks what the tests say about themselves
   */
  public SoilFinding {
    evidence = List.copyOf(evidence);
    conflicts = List.copyOf(conflicts);
    remarks = List.copyOf(remarks);
  }
}
