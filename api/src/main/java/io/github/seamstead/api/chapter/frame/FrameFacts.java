package io.github.seamstead.api.chapter.frame;

import io.github.seamstead.api.chapter.internal.Facts;
import io.github.seamstead.geometry.bars.BarPlan;
import io.github.seamstead.geometry.frame.Drainage;
import io.github.seamstead.geometry.frame.FabricOffset;
import io.github.seamstead.geometry.frame.FrameMeasures;
import io.github.seamstead.geometry.members.FrameMember;
import io.github.seamstead.geometry.members.FrameMember.EndCut;
import io.github.seamstead.geometry.members.FrameMembers;

/** The frame as data. */
final class FrameFacts {

  private FrameFacts() {}

  static Facts<FramePart> frame() {
    return new Facts<FramePart>()
        .whole("sides", "how many sides", f -> f.pyramid().sides())
        .flag("truncated", "whether it has an opening at the top", f -> f.pyramid().isTruncated())
        .one("measures", "all measures on the centre lines", measures(), FramePart::measures)
        .maybe("members", "its members with their cuts", members(), FramePart::members)
        .maybe("bars", "how the members are cut from bars", bars(), FramePart::bars)
        .maybe("fabric", "the surface of the cover", fabric(), FramePart::fabric)
        .maybe("lining", "the surface of the lining", fabric(), FramePart::lining)
        .number(
            "lapFor100mm_m",
            "lap along a hip whose upper end stands 100 mm above its lower end",
            f -> f.drainage().lapForRise(Drainage.TABLE_RISE));
  }

  private static Facts<FrameMembers> members() {
    return new Facts<FrameMembers>()
        .many("list", "one line for each sort of member", member(), FrameMembers::members)
        .many("plateBends", "bends of the plates", bend(), FrameMembers::bends);
  }

  private static Facts<FrameMember> member() {
    return new Facts<FrameMember>()
        .text("name", "what it is called", FrameMember::name)
        .whole("count", "how many", FrameMember::count)
        .number("centreLine_m", "length from node to node", FrameMember::centreLine)
        .number("cutLength_m", "length to cut", FrameMember::cutLength)
        .many("ends", "saw settings at its ends", end(), FrameMember::cuts);
  }

  private static Facts<EndCut> end() {
    return new Facts<EndCut>()
        .text("where", "which end", EndCut::where)
        .text("laidOn", "how it lies on the saw", EndCut::laidOn)
        .number("mitre_rad", "turn of the saw from square", c -> c.setting().mitre())
        .number("tilt_rad", "tilt of the blade from upright", c -> c.setting().tilt());
  }

  private static Facts<FrameMembers.PlateBend> bend() {
    return new Facts<FrameMembers.PlateBend>()
        .text("name", "where the plate sits", FrameMembers.PlateBend::name)
        .number("angle_rad", "how far it is bent from flat", FrameMembers.PlateBend::angle);
  }

  private static Facts<BarPlan> bars() {
    return new Facts<BarPlan>()
        .whole("bars", "how many bars", BarPlan::barCount)
        .number("usedLength_m", "length of all bars", BarPlan::usedLength)
        .number("pieceLength_m", "length of all pieces", BarPlan::pieceLength)
        .number("lowerBound_m", "no cutting uses less", BarPlan::lowerBound)
        .flag("proven", "whether no cutting uses less bar", BarPlan::proven)
        .many("cuts", "how each bar is cut", cutBar(), BarPlan::bars);
  }

  private static Facts<BarPlan.CutBar> cutBar() {
    return new Facts<BarPlan.CutBar>()
        .text("bar", "the bar", c -> c.stock().name())
        .number("length_m", "its length", c -> c.stock().length())
        .whole("times", "how many bars are cut so", BarPlan.CutBar::times)
        .texts(
            "pieces",
            "what is cut from each",
            c -> c.pieces().stream().map(p -> p.count() + " × " + p.name()).toList())
        .number("offcut_m", "what is left of each", BarPlan.CutBar::offcut);
  }

  private static Facts<FabricOffset> fabric() {
    return new Facts<FabricOffset>()
        .number("distance_m", "how far it lies outside the centre lines", FabricOffset::distance)
        .number("baseSide_m", "its base edge", o -> o.surface().baseSide())
        .number("openingSide_m", "its opening edge; 0 for none", o -> o.surface().openingSide())
        .number("coverArea_m2", "its area", o -> o.surface().measures().coverArea());
  }

  private static Facts<FrameMeasures> measures() {
    return new Facts<FrameMeasures>()
        .number("baseSide_m", "length of a base edge", m -> m.base().side())
        .number("circumradius_m", "centre to base corner", FrameMeasures::circumradius)
        .number("inradius_m", "centre to the middle of a base edge", FrameMeasures::inradius)
        .number("perimeter_m", "length round the base", FrameMeasures::perimeter)
        .number("baseArea_m2", "area of the base", FrameMeasures::baseArea)
        .number("apexHeight_m", "height of the whole pyramid", FrameMeasures::apexHeight)
        .number("frameHeight_m", "height of the frame as built", FrameMeasures::frameHeight)
        .number("hipEdge_m", "base corner to apex", FrameMeasures::hipEdge)
        .number("hipLength_m", "length of a hip as built", FrameMeasures::hipLength)
        .number("slantHeight_m", "middle of a base edge to apex", FrameMeasures::slantHeight)
        .number("faceHeight_m", "height of a face as built", FrameMeasures::faceHeight)
        .number("faceSlope_rad", "slope of a face over level", FrameMeasures::faceSlope)
        .number("hipSlope_rad", "slope of a hip over level", FrameMeasures::hipSlope)
        .number("apexAngle_rad", "angle of a face at the apex", FrameMeasures::apexAngle)
        .number("hipDihedral_rad", "angle between two faces", FrameMeasures::hipDihedral)
        .number("baseDihedral_rad", "angle between face and base", FrameMeasures::baseDihedral)
        .number("openingSide_m", "edge of the opening; 0 for none", FrameMeasures::openingSide)
        .number("openingArea_m2", "area of the opening", FrameMeasures::openingArea)
        .number("faceArea_m2", "area of one face", FrameMeasures::faceArea)
        .number("coverArea_m2", "area of all faces", FrameMeasures::coverArea)
        .number("volume_m3", "volume under the frame", FrameMeasures::volume)
        .number("centroidHeight_m", "height of the centroid", FrameMeasures::centroidHeight)
        .number("acrossFlats_m", "the base across its flats", FrameMeasures::acrossFlats)
        .number("acrossCorners_m", "the base across its corners", FrameMeasures::acrossCorners)
        .number("baseAngle_rad", "angle of a face at a base corner", FrameMeasures::baseAngle)
        .number("topAngle_rad", "angle of a face at the opening", FrameMeasures::topAngle)
        .number("openingDihedral_rad", "face and opening, inside", FrameMeasures::openingDihedral)
        .number("hipBend_rad", "how far a plate over a hip is bent", FrameMeasures::hipBend)
        .number(
            "openingCircumradius_m",
            "axis to corner of the opening",
            FrameMeasures::openingCircumradius)
        .number("openingInradius_m", "axis to edge of the opening", FrameMeasures::openingInradius)
        .number(
            "coverCentroidHeight_m", "centroid of the faces", FrameMeasures::coverCentroidHeight)
        .number(
            "developedAngle_rad", "sum of the angles at the apex", FrameMeasures::developedAngle)
        .number("coneAngle_rad", "sector of the cone round it", FrameMeasures::coneAngle);
  }
}
