package io.github.seamstead.api.chapter.cover;

import io.github.seamstead.geometry.layout.LayoutChoice;
import io.github.seamstead.geometry.pattern.Panel;
import io.github.seamstead.geometry.pattern.PatternPiece;
import io.github.seamstead.geometry.plane.Outline;
import java.util.List;
import java.util.Optional;

/**
 * The pieces of the cover.
 *
 * @param panels one panel for each face, in the order of the faces
 * @param trims the cap and the skirt, each with its count
 * @param cuts the shapes to cut: panels, extras and trims of equal outline gathered
 * @param clothArea area of cloth in all pieces, in square metres
 * @param clothMass mass of all pieces, in kilograms
 * @param lining the lining; empty if there is none
 * @param choice the layout by which the cloth was chosen; empty if there was no choice
 * @param misfits pieces that are cut and no longer fit what is known of the frame; what no longer
 *     fits
 */
public record CoverPart(
    List<Panel> panels,
    List<PatternPiece> trims,
    List<CutShape> cuts,
    double clothArea,
    double clothMass,
    Optional<LiningPart> lining,
    Optional<LayoutChoice> choice,
    List<Misfit> misfits) {

  public CoverPart {
    panels = List.copyOf(panels);
    trims = List.copyOf(trims);
    cuts = List.copyOf(cuts);
    misfits = List.copyOf(misfits);
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
