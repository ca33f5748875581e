package io.github.seamstead.api.chapter.frame;

import io.github.seamstead.geometry.bars.BarPlan;
import io.github.seamstead.geometry.frame.Drainage;
import io.github.seamstead.geometry.frame.FabricOffset;
import io.github.seamstead.geometry.frame.FrameMeasures;
import io.github.seamstead.geometry.frame.FrameSolution;
import io.github.seamstead.geometry.frame.RegularPyramid;
import io.github.seamstead.geometry.members.FrameMembers;
import io.github.seamstead.geometry.survey.SurveyShape;
import java.util.Optional;

/**
 * The ideal frame.
 *
 * @param pyramid the frame on its centre lines, whole or truncated
 * @param measures all its measures
 * @param solution how the stated measures fix it
 * @param members its members with their cuts; empty if the document states no poles
 * @param bars how the members are cut from the bars; empty if the document states no bars
 * @param fabric the surface that the cover lies on; empty if the document has no cover
 * @param lining the surface of the lining; empty if there is none
 * @param drainage how a cover on it sheds water
 */
public record FramePart(
    RegularPyramid pyramid,
    FrameMeasures measures,
    FrameSolution solution,
    Optional<FrameMembers> members,
    Optional<BarPlan> bars,
    Optional<FabricOffset> fabric,
    Optional<FabricOffset> lining,
    Drainage drainage) {

  /**
   * Gives the frame as a survey names it, with these measures as what was meant.
   *
   * @return the shape
   */
  public SurveyShape surveyShape() {
    boolean truncated = pyramid.isTruncated();
    int sides = pyramid.sides();
    SurveyShape bare = truncated ? SurveyShape.truncated(sides) : SurveyShape.whole(sides);
    return bare.meant(
        new SurveyShape.Ideal(
            measures.circumradius(),
            measures.apexHeight(),
            truncated ? measures.frameHeight() : 0));
  }
}
