package io.github.seamstead.api.chapter.cover;

import io.github.seamstead.geometry.layout.LayoutChoice;
import io.github.seamstead.geometry.pattern.Panel;
import io.github.seamstead.geometry.pattern.PatternPiece;
import io.github.seamstead.shared.plane.Outline;
import java.util.List;
import java.util.Optional;

/**
 * The pieces of the cover.
 *
 * @param faces the finished faces without allowances, in metres
 * @param panels the panels in the order of the faces; each goes over one face or over neighbouring
 *     ones that stay in one piece
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
    List<Outline> faces,
    List<Panel> panels,
    List<PatternPiece> trims,
    List<CutShape> cuts,
    double clothArea,
    double clothMass,
    Optional<LiningPart> lining,
    Optional<LayoutChoice> choice,
    List<Misfit> misfits) {

  public CoverPart {
    faces = List.copyOf(faces);
    panels = List.copyOf(panels);
    trims = List.copyOf(trims);
    cuts = List.copyOf(cuts);
    misfits = List.copyOf(misfits);
  }

  /**
   * Gives a finished face.
   *
   * @param face the face, counted from 1
   * @return its outline without allowances, in metres
   */
  public Outline face(int face) {
    return faces.get(face - 1);
  }

  /**
   * Names the panels as they are called on the cloth.
   *
   * @return for each panel its face, such as {@code 3}, or its faces, such as {@code 4 to 6}
   */
  public List<String> names() {
    return EdgeMarks.names(panels.stream().map(Panel::faces).toList());
  }

  /**
   * Gives the first face that a panel goes over.
   *
   * @param panel the panel, counted from 1
   * @return the face, counted from 1
   */
  public int firstFace(int panel) {
    return 1 + panels.subList(0, panel - 1).stream().mapToInt(Panel::faces).sum();
  }
}
