package io.github.seamstead.geometry.markout;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.plane.Outline;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/**
 * The tables from which a template is drawn on the ground.
 *
 * <p>The baseline is one edge of the template; its zero is the edge's first corner, and the second
 * mark its other end. Both ends are corners 0 and 1 of a face for edge 0. The tables' own axes are
 * x along the baseline and y square to its left.
 *
 * <p>Cost: O(m) for m corners, and O(m²) for the check lengths of templates of up to {@link
 * #ALL_DIAGONALS} corners.
 *
 * <pre>{@code
 * Outline face = RegularPyramid.ofBaseSideAndHeight(6, 1.5, 2).faceOutline();
 * MarkOut marks = MarkOut.of(face, TapeDivision.MILLIMETRE, MarkOut.HAND_TOLERANCE);
 * marks.baseline().size(); // 3
 * }</pre>
 *
 * @param template the outline drawn
 * @param baselineEdge index of the edge on the baseline
 * @param division the tape's division
 * @param baseline the baseline-and-offset table, one row a corner in the outline's order
 * @param twoTapes the two-tape table, one row a corner in the outline's order
 * @param checks sides and diagonals to measure afterwards; at least one
 * @param baselineFit how the template drawn by offsets fits
 * @param twoTapeFit how the template drawn by two tapes fits
 */
public record MarkOut(
    Outline template,
    int baselineEdge,
    TapeDivision division,
    List<BaselineRow> baseline,
    List<TwoTapeRow> twoTapes,
    List<CheckLength> checks,
    TemplateFit baselineFit,
    TemplateFit twoTapeFit) {

  /**
   * How far a corner drawn by hand may lie off, in metres: as good as the cut itself (common
   * practice for coated fabric).
   */
  public static final double HAND_TOLERANCE = 0.003;

  /** Up to this many corners all diagonals are given; beyond, one from each corner. */
  public static final int ALL_DIAGONALS = 8;

  public MarkOut {
    baseline = List.copyOf(baseline);
    twoTapes = List.copyOf(twoTapes);
    checks = Args.notEmpty("check lengths", checks);
  }

  /**
   * Makes the tables about edge 0, the base of a face.
   *
   * @param template the outline to draw, in metres
   * @param division the tape's division
   * @param tolerance how far a corner or a side's length may be off, in metres, greater than 0
   * @return the tables
   * @throws IllegalArgumentException if the tolerance is not positive or the edge is shorter than
   *     one division
   */
  public static MarkOut of(Outline template, TapeDivision division, double tolerance) {
    return of(template, 0, division, tolerance);
  }

  /**
   * Makes the tables about an edge.
   *
   * @param template the outline to draw, in metres
   * @param baselineEdge index of the edge to lay on the baseline, 0 to size − 1; the longest gives
   *     the best crossings
   * @param division the tape's division
   * @param tolerance how far a corner or a side's length may be off, in metres, greater than 0
   * @return the tables
   * @throws IllegalArgumentException if an argument is outside its range or the edge is shorter
   *     than one division
   */
  public static MarkOut of(
      Outline template, int baselineEdge, TapeDivision division, double tolerance) {
    Args.within("baseline edge", baselineEdge, 0, template.size() - 1);
    Args.positive("tolerance", tolerance, "m");
    double apart = template.edgeLength(baselineEdge);
    Args.require(
        division.round(apart) > 0,
        "baseline edge",
        "edge " + baselineEdge + " of " + TapeDivision.MILLIMETRE.write(apart),
        "must be at least one division of the tape long");
    List<Vector2D> places = onBaseline(template, baselineEdge);
    List<BaselineRow> offsets = new ArrayList<>();
    List<TwoTapeRow> tapes = new ArrayList<>();
    for (int i = 0; i < places.size(); i++) {
      offsets.add(BaselineRow.of(i, places.get(i), division, Steps.none()));
      tapes.add(TwoTapeRow.of(i, places.get(i), apart, division, Steps.none()));
    }
    List<Vector2D> byOffset = offsets.stream().map(BaselineRow::drawn).toList();
    List<Vector2D> byTapes = tapes.stream().map(TwoTapeRow::drawn).toList();
    return new MarkOut(
        template,
        baselineEdge,
        division,
        offsets,
        tapes,
        Drawn.checks(places, List.of(byOffset, byTapes), division),
        Drawn.fit(places, byOffset, tolerance),
        Drawn.fit(places, byTapes, tolerance));
  }

  /** The corners in the baseline's axes. */
  static List<Vector2D> onBaseline(Outline template, int edge) {
    return template.vertices().stream()
        .map(v -> TapeOffset.of(v, template.vertex(edge), template.vertex(edge + 1)).point())
        .toList();
  }

  /**
   * Works where one corner lies from the baseline, before it is rounded to the tape.
   *
   * @param corner index of the corner, 0 to size − 1
   * @param steps where the steps are written; the last is the offset square to the baseline
   * @return its two distances
   * @throws IllegalArgumentException if there is no such corner
   */
  public TapeOffset workOffset(int corner, Steps steps) {
    Args.within("corner", corner, 0, template.size() - 1);
    return TapeOffset.of(
        template.vertex(corner),
        template.vertex(baselineEdge),
        template.vertex(baselineEdge + 1),
        steps);
  }

  /**
   * Works one corner of the baseline-and-offset table; the last step is its corner error.
   *
   * @param corner index of the corner, 0 to size − 1
   * @param steps where the steps are written
   * @return the same row as in the table
   * @throws IllegalArgumentException if there is no such corner
   */
  public BaselineRow workBaseline(int corner, Steps steps) {
    return BaselineRow.of(corner, place(corner), division, steps);
  }

  /**
   * Works one corner of the two-tape table; the last step is its corner error.
   *
   * @param corner index of the corner, 0 to size − 1
   * @param steps where the steps are written
   * @return the same row as in the table
   * @throws IllegalArgumentException if there is no such corner
   */
  public TwoTapeRow workTwoTapes(int corner, Steps steps) {
    return TwoTapeRow.of(corner, place(corner), template.edgeLength(baselineEdge), division, steps);
  }

  private Vector2D place(int corner) {
    return workOffset(corner, Steps.none()).point();
  }
}
