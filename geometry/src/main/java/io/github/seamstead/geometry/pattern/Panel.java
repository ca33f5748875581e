package io.github.seamstead.geometry.pattern;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.plane.Outline;
import io.github.seamstead.shared.work.Cancellation;
import java.util.ArrayList;
import java.util.List;

/**
 * The pieces of cloth that make one face of the cover.
 *
 * <p>A fin seam is sewn good sides together on the stitch line; the allowances of both panels then
 * stand to the inside. A hem or turn-in is folded to the inside on the stitch line; its ends are
 * cut as the mirror image of the panel, so that they lie flat on it. Where two seams meet at a
 * sharp tip the mitre is held to a limit and cut off square.
 *
 * <pre>{@code
 * Outline face = RegularPyramid.ofBaseSideAndHeight(9, 1.2, 2).faceOutline();
 * EdgePlan edges =
 *     EdgePlan.of(EdgeAllowance.hem(0.05), EdgeAllowance.finSeam(0.04), EdgeAllowance.turnIn(0.06));
 * Panel panel = Panel.of(face, PanelSpec.of("P1", edges).times(9));
 * panel.parts().size(); // 1
 * }</pre>
 *
 * @param id the panel's id
 * @param face the finished face, or the faces side by side, in metres
 * @param faces how many faces it goes over, 1 or more
 * @param parts the face in one piece, or its spliced parts from the base up and from left to right;
 *     one or more
 * @param extras patches and flaps of its openings
 * @param splices how the parts join
 */
public record Panel(
    String id,
    Outline face,
    int faces,
    List<PatternPiece> parts,
    List<PatternPiece> extras,
    List<Splice> splices) {

  public Panel {
    parts = List.copyOf(parts);
    extras = List.copyOf(extras);
    splices = List.copyOf(splices);
  }

  /**
   * Draws the pieces of a face. Costs O(e²) for e edges of a part, for each part.
   *
   * @param face the finished face in its own plane, seen from outside, in metres
   * @param spec allowances, marks, openings and splices
   * @return the pieces
   * @throws IllegalArgumentException if the allowances make a cut line cross itself, an opening
   *     leaves the face or reaches into a seam, hem or another opening, the marks do not fit the
   *     face's edges, or the face cannot be spliced from the cloth or would take over a thousand
   *     parts
   */
  public static Panel of(Outline face, PanelSpec spec) {
    return of(face, spec, new Cancellation());
  }

  /**
   * Draws the pieces of a face as {@link #of(Outline, PanelSpec)}, unless it is cancelled.
   *
   * @param face the finished face in its own plane, seen from outside, in metres
   * @param spec allowances, marks, openings and splices
   * @param cancellation looked at for each part
   * @return the pieces
   * @throws IllegalArgumentException as {@link #of(Outline, PanelSpec)} does
   * @throws java.util.concurrent.CancellationException if it is cancelled while the face is cut
   *     into parts
   */
  public static Panel of(Outline face, PanelSpec spec, Cancellation cancellation) {
    spec.marks().requireFor(face.size());
    Part whole = Part.whole(face, spec);
    List<PieceHole> holes = Openings.holes(face, whole.allowances(), spec);
    List<PatternPiece> extras = Openings.extras(spec);
    String label = spec.marks().panel();
    // Drawn first even where it is spliced: it refuses allowances that do not fit the face.
    PatternPiece one = PieceMaker.ofPart(spec.id(), label, spec.kind(), face, whole, spec, holes);
    Args.require(
        spec.faces() == 1 || spec.splices().isEmpty(),
        "panel " + spec.id(),
        "splices in a panel over " + spec.faces() + " faces",
        "must be cut whole");
    if (spec.splices().isEmpty()) {
      return new Panel(spec.id(), face, spec.faces(), List.of(one), extras, List.of());
    }
    return Splicer.splice(face, one, whole, spec, spec.splices().get(), extras, cancellation);
  }

  /**
   * Says which edge of the outline is the right hip; the bases come before it.
   *
   * @return the index of the edge, which is the number of faces
   */
  public int rightHip() {
    return faces;
  }

  /**
   * Says which edge of the outline is the left hip.
   *
   * @return the index of the last edge
   */
  public int leftHip() {
    return face.size() - 1;
  }

  /**
   * Gives the length of the lower edge.
   *
   * @return along the bases of all its faces, in metres
   */
  public double baseLength() {
    return length(0, faces);
  }

  /**
   * Gives the length of what lies between the hips at the top.
   *
   * @return in metres; 0 if the faces end in a point
   */
  public double topLength() {
    return length(faces + 1, leftHip());
  }

  private double length(int from, int to) {
    double length = 0;
    for (int edge = from; edge < to; edge++) {
      length += face.edgeLength(edge);
    }
    return length;
  }

  /**
   * Puts other pieces beside the parts, such as patches that are marked in a face's own
   * coordinates.
   *
   * @param others patches and flaps
   * @return the panel with them
   */
  public Panel withExtras(List<PatternPiece> others) {
    return new Panel(id, face, faces, parts, others, splices);
  }

  /**
   * Lists all pieces.
   *
   * @return the parts, then the extras
   */
  public List<PatternPiece> pieces() {
    List<PatternPiece> all = new ArrayList<>(parts);
    all.addAll(extras);
    return all;
  }

  /**
   * Gives the cloth of all pieces of one panel.
   *
   * @return the area inside the cut lines, in square metres
   */
  public double clothArea() {
    return pieces().stream().mapToDouble(PatternPiece::clothArea).sum();
  }
}
