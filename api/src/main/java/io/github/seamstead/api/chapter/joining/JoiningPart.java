package io.github.seamstead.api.chapter.joining;

import io.github.seamstead.assembly.fixings.SeamBill;
import io.github.seamstead.assembly.fixings.SeamsLeft;
import io.github.seamstead.assembly.merge.Comparison;
import io.github.seamstead.assembly.merge.MergePlan;
import io.github.seamstead.assembly.merge.TeamLift;
import io.github.seamstead.assembly.ring.JointMap;
import io.github.seamstead.assembly.ring.LogReport;
import io.github.seamstead.assembly.ring.PieceRing;
import io.github.seamstead.assembly.ring.Relabelling;
import io.github.seamstead.geometry.pattern.SeamMatch;
import java.util.List;
import java.util.Optional;

/**
 * How the panels are joined.
 *
 * @param ring the panels round the frame with their joints
 * @param meetings how the edges of each joint of the ring meet, in the order of the joints
 * @param seams every seam of the cover, in the order of the work
 * @param left how far these seams are made: all are left without a diary
 * @param timePerLength time for a metre of seam, from the usual time of a seam of the ring
 * @param standing the map as the cover stands, seen from outside
 * @param lying the map as the cover lies, inside out, seen from the plain side
 * @param order the join order; empty if there is none
 * @param lift what one team may carry; empty if no crew is stated
 * @param alternatives the join order beside others
 * @param options the objective, limits, times and teams that the order was planned with
 * @param log what was joined so far and what of it is wrong; empty if nothing was joined
 * @param renaming a cure that undoes fewer seams by renaming pieces alike; empty if there is none
 */
public record JoiningPart(
    PieceRing ring,
    List<SeamMatch> meetings,
    SeamBill seams,
    SeamsLeft left,
    double timePerLength,
    JointMap standing,
    JointMap lying,
    Optional<MergePlan> order,
    Optional<TeamLift> lift,
    Comparison alternatives,
    io.github.seamstead.assembly.merge.PlanOptions options,
    Optional<LogReport> log,
    Optional<Relabelling> renaming) {

  public JoiningPart {
    meetings = List.copyOf(meetings);
  }
}
