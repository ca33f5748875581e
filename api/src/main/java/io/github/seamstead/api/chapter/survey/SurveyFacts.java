package io.github.seamstead.api.chapter.survey;

import io.github.seamstead.api.chapter.internal.Corners;
import io.github.seamstead.api.chapter.internal.Facts;
import io.github.seamstead.geometry.survey.AdjustedNode;
import io.github.seamstead.geometry.survey.Adjustment;
import io.github.seamstead.geometry.survey.Blunder;
import io.github.seamstead.geometry.survey.CheckReading;
import io.github.seamstead.geometry.survey.EdgeLength;
import io.github.seamstead.geometry.survey.NextReading;
import io.github.seamstead.geometry.survey.ReadingResult;
import io.github.seamstead.geometry.templates.AsBuilt;
import io.github.seamstead.geometry.templates.AsBuiltFace;
import io.github.seamstead.geometry.templates.FaceFit;
import io.github.seamstead.geometry.templates.HemTakeUp;
import io.github.seamstead.geometry.templates.SeamFit;
import io.github.seamstead.geometry.templates.Template;
import io.github.seamstead.geometry.templates.TemplateSet;
import java.util.List;

/** The taped frame as data. */
final class SurveyFacts {

  private SurveyFacts() {}

  static Facts<SurveyPart> survey() {
    return new Facts<SurveyPart>()
        .whole(
            "degreesOfFreedom",
            "readings beyond what the frame needs",
            s -> s.report().accepted().degreesOfFreedom())
        .maybeNumber(
            "varianceFactor",
            "weighted squares over degrees of freedom",
            s -> s.report().accepted().globalTest().map(t -> t.varianceFactor()))
        .maybeText(
            "verdict",
            "whether the readings agree with their uncertainties",
            s -> s.report().accepted().globalTest().map(t -> t.verdict().name()))
        .flag(
            "allControlled",
            "whether an error in any one reading that a panel depends on would show",
            s -> s.control().isAllControlled())
        .many("nextReadings", "readings that would help most", next(), SurveyPart::nextReadings)
        .texts(
            "uncontrolled",
            "readings that no other controls: an error there goes unseen",
            s -> s.control().uncontrolled().stream().map(r -> r.reading().name()).toList())
        .texts(
            "takeBeforeCutting",
            "readings after which all are controlled",
            s -> s.control().proposed().stream().map(CheckReading::text).toList())
        .flag(
            "undecided",
            "whether readings contradict each other and no test can tell which is wrong",
            s -> s.report().undecided())
        .many("blunders", "readings found wrong", blunder(), s -> s.report().blunders())
        .many("readings", "every reading", reading(), s -> s.report().accepted().readings())
        .many("edges", "edges as they stand", edge(), s -> s.report().accepted().edges())
        .many(
            "nodes",
            "where each node stands, in the axes of the ideal frame",
            node(),
            s ->
                s.report().accepted().nodes().stream()
                    .map(n -> new PlacedNode(n, s.report().accepted()))
                    .toList())
        .many("facesAsBuilt", "each face laid flat", built(), s -> s.asBuilt().faces())
        .many(
            "baseCorners",
            "how high each base corner stands, where levels were read",
            corner(),
            s -> s.asBuilt().levelled() ? s.asBuilt().corners() : List.of())
        .maybe("tape", "corrections of the taped distances", tape(), SurveyPart::tape)
        .many("templateSets", "sets of templates tried", set(), s -> s.templates().sets())
        .flag(
            "templatesStopped",
            "whether the search for templates was stopped before a set was within the tolerance",
            s -> s.templates().stopped())
        .whole(
            "templatesChosen",
            "templates the panels are cut by",
            s -> s.chosen().templates().size());
  }

  /** A node with the adjustment that knows its doubt. */
  private record PlacedNode(AdjustedNode at, Adjustment adjustment) {

    /** The upper half of its covariance matrix by rows. */
    List<Double> covariance() {
      double[][] c = adjustment.covariance(at.node(), at.node());
      return List.of(c[0][0], c[0][1], c[0][2], c[1][1], c[1][2], c[2][2]);
    }
  }

  private static Facts<PlacedNode> node() {
    return new Facts<PlacedNode>()
        .text("node", "its name", n -> n.at().node().name())
        .number("x_m", "its place", n -> n.at().position().getX())
        .number("y_m", "its place", n -> n.at().position().getY())
        .number("z_m", "its place, upwards", n -> n.at().position().getZ())
        .numbers(
            "covariance_m2",
            "covariance of its coordinates: xx, xy, xz, yy, yz, zz",
            PlacedNode::covariance);
  }

  private static Facts<AsBuiltFace> built() {
    return new Facts<AsBuiltFace>()
        .whole("face", "the face", AsBuiltFace::number)
        .points("outline_m", "its corners", f -> Corners.data(f.outline()))
        .uncertain("middle_m", "middle of the base to the apex or the top", AsBuiltFace::middle)
        .number("outOfPlane_m", "how far its corners lie off one plane", AsBuiltFace::outOfPlane);
  }

  private static Facts<AsBuilt.BaseCorner> corner() {
    return new Facts<AsBuilt.BaseCorner>()
        .text("corner", "the base corner", c -> c.node().name())
        .uncertain("aboveLowest_m", "above the lowest one", c -> c.aboveLowest().orElseThrow());
  }

  private static Facts<TapePart> tape() {
    return new Facts<TapePart>()
        .many("distances", "every taped distance", corrected(), TapePart::distances)
        .maybeNumber(
            "truePull_N",
            "the pull at which the tape shows the longest of them true",
            TapePart::truePull);
  }

  private static Facts<TapePart.Corrected> corrected() {
    return new Facts<TapePart.Corrected>()
        .text("name", "its nodes", TapePart.Corrected::name)
        .number("taped_m", "what the tape showed", TapePart.Corrected::taped)
        .number("distance_m", "the distance", TapePart.Corrected::corrected);
  }

  private static Facts<Blunder> blunder() {
    return new Facts<Blunder>()
        .whole("number", "its place among the readings", Blunder::number)
        .text("written", "as it was written", b -> b.reading().asWritten())
        .number("error_m", "how far it is off", Blunder::error)
        .uncertain("predicted_m", "what the other readings make it", Blunder::predicted)
        .texts("hints", "how it may have come about", Blunder::hints)
        .text(
            "cause",
            "CONTRADICTED by the others alone, RIVAL of those under alsoPossible, or UNCONTROLLED",
            b -> b.cause().name())
        .numbers(
            "alsoPossible",
            "other readings whose error would look alike",
            b -> b.alsoPossible().stream().map(o -> (double) o.number()).toList());
  }

  private static Facts<ReadingResult> reading() {
    return new Facts<ReadingResult>()
        .whole("number", "its place among the readings", ReadingResult::number)
        .text("written", "as it was written", r -> r.reading().asWritten())
        .number("adjusted_m", "the adjusted value", ReadingResult::adjusted)
        .number("residual_m", "adjusted less read", ReadingResult::residual)
        .number("redundancy", "its redundancy number", ReadingResult::redundancy)
        .maybeNumber("statistic", "its standardised residual", ReadingResult::statistic)
        .maybeNumber(
            "minimalDetectableError_m",
            "the least error that the test would find",
            ReadingResult::minimalDetectableError)
        .flag("suspect", "whether it fails the test", ReadingResult::suspect);
  }

  private static Facts<EdgeLength> edge() {
    return new Facts<EdgeLength>()
        .text("name", "its nodes", e -> e.edge().name())
        .uncertain("length_m", "its length", EdgeLength::length);
  }

  private static Facts<TemplateSet> set() {
    return new Facts<TemplateSet>()
        .number("worstMisfit_m", "the worst misfit of a face", TemplateSet::worstMisfit)
        .number("lowerBound_m", "no set of as many is below this", TemplateSet::lowerBound)
        .many("templates", "the templates", template(), TemplateSet::templates)
        .many("faces", "how each face is fitted", face(), TemplateSet::faces)
        .many("seams", "how the panels of each seam agree", seam(), TemplateSet::seams)
        .many("hem", "what the hem takes up at each base corner", hem(), TemplateSet::hem);
  }

  private static Facts<Template> template() {
    return new Facts<Template>()
        .whole("number", "its number", Template::number)
        .points("outline_m", "its corners", t -> Corners.data(t.outline()))
        .numbers(
            "faces", "the faces it fits", t -> t.faces().stream().map(f -> (double) f).toList());
  }

  private static Facts<FaceFit> face() {
    return new Facts<FaceFit>()
        .whole("face", "the face", FaceFit::face)
        .whole("template", "its template", FaceFit::template)
        .number("greatestFullness_m", "the most that it is full", FaceFit::greatest)
        .number("leastFullness_m", "the least; negative is short", FaceFit::least);
  }

  private static Facts<SeamFit> seam() {
    return new Facts<SeamFit>()
        .whole("seam", "the seam", SeamFit::seam)
        .uncertain("length_m", "length of the hip", SeamFit::length)
        .number("ease_m", "how much longer one edge is than the other", SeamFit::ease)
        .uncertain("fullness_m", "how much longer the panels are than the hip", SeamFit::fullness);
  }

  private static Facts<HemTakeUp> hem() {
    return new Facts<HemTakeUp>()
        .text("corner", "the base corner", h -> h.corner().name())
        .uncertain("takeUp_m", "cloth that the hem takes up", HemTakeUp::takeUp);
  }

  private static Facts<NextReading> next() {
    return new Facts<NextReading>()
        .text("from", "one end", n -> n.pair().from().name())
        .text("to", "the other end", n -> n.pair().to().name())
        .flag("repeats", "whether it was read before", NextReading::repeats)
        .number("worstBefore_m", "uncertainty of the worst edge now", NextReading::worstBefore)
        .number("worstAfter_m", "and with this reading", NextReading::worstAfter);
  }
}
