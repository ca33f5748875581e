package io.github.seamstead.api.plan;

import io.github.seamstead.geometry.pattern.Panel;
import io.github.seamstead.geometry.plane.Outline;
import java.util.List;

/**
 * The pieces of the cover.
 *
 * @param panels one panel for each face, in the order of the faces
 * @param cuts the shapes to cut: panels and extras of equal outline gathered
 * @param clothArea area of cloth in all pieces, in square metres
 * @param clothMass mass of all pieces, in kilograms
 */
public record CoverPart(
    List<Panel> panels, List<CutShape> cuts, double clothArea, double clothMass) {

  /**
   * Copies the lists.
   *
   * @param panels one panel for each face
   * @param cuts the shapes to cut
   * @param clothArea in square metres
   * @param clothMass in kilograms
   */
  public CoverPart {
    panels = List.copyOf(panels);
    cuts = List.copyOf(cuts);
  }

  /**
   * Gives the finished face of a panel.
   *
   * @param face the face, counted from 1
   * @return its outline without allowances, in metres
   */
  public Outline face(int face) {
    return panels.get(face - 1).face();
  }
}
