package io.github.seamstead.api.job;

import java.util.List;
import java.util.Optional;

/**
 * The cover over the frame.
 *
 * @param fabric what the cover is made of
 * @param seam the joint between neighbouring panels
 * @param hem the lower edge
 * @param topTurnIn fabric added at the edge of the opening at the top, in metres
 * @param door the door, if stated
 * @param vents vents
 * @param cap the cap over the opening at the top, if stated
 * @param skirt the strip on the ground round the base, if stated
 * @param lining the lining inside the frame, if stated
 * @param fixings what holds seams and hem, if stated
 * @param joining how the crew joins, if stated
 * @param spliceLap how much two parts of one panel lap where the stock is too small, in metres
 * @param staggerSplices whether splices of neighbouring panels are kept apart
 */
public record Cover(
    Fabric fabric,
    Seam seam,
    Hem hem,
    double topTurnIn,
    Optional<FaceOpening> door,
    List<FaceOpening> vents,
    Optional<Cap> cap,
    Optional<Skirt> skirt,
    Optional<Lining> lining,
    Optional<Fixings> fixings,
    Optional<Joining> joining,
    double spliceLap,
    boolean staggerSplices) {

  /**
   * Copies the lists.
   *
   * @param fabric what the cover is made of
   * @param seam the joint between neighbouring panels
   * @param hem the lower edge
   * @param topTurnIn fabric added at the edge of the opening at the top, in metres
   * @param door the door, if stated
   * @param vents vents
   * @param cap the cap over the opening at the top, if stated
   * @param skirt the strip on the ground round the base, if stated
   * @param lining the lining inside the frame, if stated
   * @param fixings what holds seams and hem, if stated
   * @param joining how the crew joins, if stated
   * @param spliceLap how much two parts of one panel lap where the stock is too small, in metres
   * @param staggerSplices whether splices of neighbouring panels are kept apart
   */
  public Cover {
    vents = List.copyOf(vents);
  }
}
