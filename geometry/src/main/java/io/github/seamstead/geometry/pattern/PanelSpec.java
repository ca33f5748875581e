package io.github.seamstead.geometry.pattern;

import io.github.seamstead.shared.check.Args;
import java.util.List;
import java.util.Optional;

/**
 * What is to be made of a face.
 *
 * @param id identifies the panel's pieces; not blank
 * @param kind what the pieces are for
 * @param count how many alike are wanted; 1 or more
 * @param edges the allowances
 * @param faces over how many faces side by side the panel goes, 1 or more; see {@link Fan}
 * @param marks the texts
 * @param notchSpacing from match notch to match notch along the hips, in metres; greater than 0
 * @param mitreLimit greatest reach of a sharp corner as a multiple of the wider allowance; 1 or
 *     more
 * @param grain direction of the warp on the face, counter-clockwise from its base, in radians;
 *     finite
 * @param openings doors and vents
 * @param splices how to splice where the cloth is too small; empty to keep the panel whole
 */
public record PanelSpec(
    String id,
    PieceKind kind,
    int count,
    EdgePlan edges,
    int faces,
    PanelMarks marks,
    double notchSpacing,
    double mitreLimit,
    double grain,
    List<Opening> openings,
    Optional<SpliceRule> splices) {

  private static final double USUAL_NOTCH_SPACING = 0.5;
  private static final int MOST_FACES = 64;

  public PanelSpec {
    Args.notBlank("panel id", id);
    Args.within("panel count", count, 1, Integer.MAX_VALUE);
    Args.within("faces of a panel", faces, 1, MOST_FACES);
    Args.positive("notch spacing", notchSpacing, "m");
    Mitre.requireLimit(mitreLimit);
    Args.finite("grain direction", grain, "rad");
    openings = List.copyOf(openings);
  }

  /**
   * Makes one whole panel with the usual notches each half metre, the usual mitre limit and the
   * warp up the face.
   *
   * @param id identifies the panel's pieces and is written on them, not blank
   * @param edges the allowances
   * @return the specification
   * @throws IllegalArgumentException if the id is blank
   */
  public static PanelSpec of(String id, EdgePlan edges) {
    return new PanelSpec(
        id,
        PieceKind.PANEL,
        1,
        edges,
        1,
        PanelMarks.of(Args.notBlank("panel id", id)),
        USUAL_NOTCH_SPACING,
        Mitre.USUAL_LIMIT,
        Math.PI / 2,
        List.of(),
        Optional.empty());
  }

  /**
   * Says what the pieces are for, where it is not a panel, such as a face of a cap.
   *
   * @param purpose what they are for
   * @return the specification with it
   */
  public PanelSpec as(PieceKind purpose) {
    return new PanelSpec(
        id,
        purpose,
        count,
        edges,
        faces,
        marks,
        notchSpacing,
        mitreLimit,
        grain,
        openings,
        splices);
  }

  /**
   * Asks for several alike.
   *
   * @param wanted 1 or more
   * @return the specification with that count
   * @throws IllegalArgumentException if the count is less than 1
   */
  public PanelSpec times(int wanted) {
    return new PanelSpec(
        id, kind, wanted, edges, faces, marks, notchSpacing, mitreLimit, grain, openings, splices);
  }

  /**
   * Lets the panel go over several faces side by side.
   *
   * @param sideBySide how many, 1 or more
   * @return the specification with it
   * @throws IllegalArgumentException if the number is less than 1 or more than 64
   */
  public PanelSpec over(int sideBySide) {
    return new PanelSpec(
        id,
        kind,
        count,
        edges,
        sideBySide,
        marks,
        notchSpacing,
        mitreLimit,
        grain,
        openings,
        splices);
  }

  /**
   * Sets the texts.
   *
   * @param texts the texts
   * @return the specification with them
   */
  public PanelSpec withMarks(PanelMarks texts) {
    return new PanelSpec(
        id, kind, count, edges, faces, texts, notchSpacing, mitreLimit, grain, openings, splices);
  }

  /**
   * Sets the distance between match notches.
   *
   * @param spacing in metres, greater than 0
   * @return the specification with it
   * @throws IllegalArgumentException if the spacing is not positive
   */
  public PanelSpec withNotchSpacing(double spacing) {
    return new PanelSpec(
        id, kind, count, edges, faces, marks, spacing, mitreLimit, grain, openings, splices);
  }

  /**
   * Sets the mitre limit.
   *
   * @param limit multiple of the wider allowance, 1 or more
   * @return the specification with it
   * @throws IllegalArgumentException if the limit is less than 1
   */
  public PanelSpec withMitreLimit(double limit) {
    return new PanelSpec(
        id, kind, count, edges, faces, marks, notchSpacing, limit, grain, openings, splices);
  }

  /**
   * Sets the direction of the warp.
   *
   * @param direction counter-clockwise from the base, in radians
   * @return the specification with it
   * @throws IllegalArgumentException if the direction is not finite
   */
  public PanelSpec withGrain(double direction) {
    return new PanelSpec(
        id,
        kind,
        count,
        edges,
        faces,
        marks,
        notchSpacing,
        mitreLimit,
        direction,
        openings,
        splices);
  }

  /**
   * Sets the openings.
   *
   * @param doorsAndVents in the face's coordinates
   * @return the specification with them
   */
  public PanelSpec withOpenings(List<Opening> doorsAndVents) {
    return new PanelSpec(
        id,
        kind,
        count,
        edges,
        faces,
        marks,
        notchSpacing,
        mitreLimit,
        grain,
        doorsAndVents,
        splices);
  }

  /**
   * Lets the panel be spliced where the cloth is too small.
   *
   * @param rule the cloth's size and the lap
   * @return the specification with it
   */
  public PanelSpec withSplices(SpliceRule rule) {
    return new PanelSpec(
        id,
        kind,
        count,
        edges,
        faces,
        marks,
        notchSpacing,
        mitreLimit,
        grain,
        openings,
        Optional.of(rule));
  }
}
