package io.github.seamstead.api.chapter.frame;

import io.github.seamstead.api.chapter.Chapter;
import io.github.seamstead.api.chapter.internal.Run;
import io.github.seamstead.api.chapter.internal.Searched;
import io.github.seamstead.api.job.Cover;
import io.github.seamstead.api.job.Frame;
import io.github.seamstead.api.job.FrameMeasure;
import io.github.seamstead.api.job.FrameOpening;
import io.github.seamstead.api.job.Lining;
import io.github.seamstead.api.job.PoleSection;
import io.github.seamstead.api.job.Poles;
import io.github.seamstead.geometry.bars.BarCutting;
import io.github.seamstead.geometry.bars.BarPiece;
import io.github.seamstead.geometry.bars.BarPlan;
import io.github.seamstead.geometry.bars.BarStock;
import io.github.seamstead.geometry.frame.Drainage;
import io.github.seamstead.geometry.frame.FabricOffset;
import io.github.seamstead.geometry.frame.FrameMeasures;
import io.github.seamstead.geometry.frame.FrameSolution;
import io.github.seamstead.geometry.frame.FrameSolver;
import io.github.seamstead.geometry.frame.PyramidMeasure;
import io.github.seamstead.geometry.frame.RegularPyramid;
import io.github.seamstead.geometry.members.FrameMembers;
import io.github.seamstead.geometry.members.MemberReach;
import io.github.seamstead.geometry.members.MemberSection;
import io.github.seamstead.geometry.members.MemberSpec;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** Solves the ideal frame from the measures stated. */
final class FramePlanner {

  private FramePlanner() {}

  static Optional<FramePart> plan(Run run) {
    if (run.document().frame().isEmpty()) {
      run.skip(Chapter.FRAME, "the document has no frame");
      return Optional.empty();
    }
    Frame frame = run.document().frame().get();
    if (frame.measures().isEmpty()) {
      run.skip(Chapter.FRAME, "the document has no measures under frame, only a survey");
      return Optional.empty();
    }
    Map<PyramidMeasure, Double> given = given(frame.measures().get());
    Optional<FrameSolution> solution =
        run.require("$.frame.measures", () -> solve(run, frame.sides(), given));
    Optional<RegularPyramid> whole =
        solution.flatMap(s -> run.require("$.frame.measures", s::single));
    return whole
        .flatMap(w -> run.require("$.frame.opening", () -> cut(w, frame.opening())))
        .map(pyramid -> part(run, pyramid, solution.orElseThrow()));
  }

  private static FrameSolution solve(Run run, int sides, Map<PyramidMeasure, Double> given) {
    return run.worked(
        "geometry.frame.solve",
        "The frame from the measures stated",
        steps -> FrameSolver.solve(sides, given, FrameSolver.DEFAULT_AGREEMENT, steps));
  }

  private static FramePart part(Run run, RegularPyramid pyramid, FrameSolution solution) {
    FrameMeasures measures =
        run.worked("geometry.frame.measures", "The frame's measures", pyramid::measures);
    Optional<Poles> poles = run.document().frame().flatMap(Frame::poles);
    Optional<Cover> cover = run.document().cover();
    if (poles.isEmpty()) {
      run.skip(Chapter.FRAME, "members and their cuts: the document has no poles under frame");
      if (cover.isPresent()) {
        run.assume(
            "$.frame.poles.diameter",
            "0 mm",
            "measures are taken to the surface the fabric lies on");
      }
    }
    double reach = poles.map(p -> reach(run, pyramid, p)).orElse(0.0);
    Optional<FrameMembers> members =
        poles.flatMap(p -> run.attempt("$.frame.poles", () -> members(run, pyramid, p)));
    members.ifPresent(m -> work(run, m));
    Drainage drainage = Drainage.of(measures);
    cover.ifPresent(
        c -> {
          run.worked(
              "geometry.frame.lap",
              "The lap along a hip that rises 100 mm",
              steps -> drainage.lapForRise(Drainage.TABLE_RISE, steps));
          run.caution(Chapter.FRAME, drainage.caution());
        });
    return new FramePart(
        pyramid,
        measures,
        solution,
        members,
        members.flatMap(m -> bars(run, m, poles.orElseThrow())),
        cover.flatMap(c -> fabric(run, pyramid, reach, c)),
        cover.flatMap(Cover::lining).flatMap(l -> lining(run, pyramid, reach, l)),
        drainage);
  }

  private static Optional<FabricOffset> fabric(
      Run run, RegularPyramid pyramid, double reach, Cover cover) {
    double thickness = cover.fabric().thickness();
    return run.attempt(
        "$.cover.fabric.thickness",
        () ->
            run.worked(
                "geometry.frame.offset",
                "The surface of the cover",
                steps -> FabricOffset.cover(pyramid, reach, thickness, steps)));
  }

  private static Optional<FabricOffset> lining(
      Run run, RegularPyramid pyramid, double reach, Lining lining) {
    return run.attempt(
        "$.cover.lining.airGap",
        () ->
            run.worked(
                "geometry.frame.offset",
                "The surface of the lining",
                steps -> FabricOffset.lining(pyramid, reach, lining.airGap(), steps)));
  }

  /** One sort of member of each kind shows how all are reckoned. */
  private static void work(Run run, FrameMembers members) {
    run.worked("geometry.members.hiplength", "Cut length of a hip pole", members::workHipLength);
    run.worked(
        "geometry.members.ringlength",
        "Cut length of a member of the base ring",
        members::workBaseRingLength);
    run.worked("geometry.members.ringcut", "Corners of the base ring", members::workRingCut);
    run.worked("geometry.members.cheekcut", "Cheeks at the apex", members::workCheekCut);
  }

  /** How far the outermost member reaches out from its centre line towards the fabric. */
  private static double reach(Run run, RegularPyramid pyramid, Poles poles) {
    MemberSpec spec = spec(run, poles);
    return run.worked(
            "geometry.members.memberreach",
            "How far the members stand out from their centre lines",
            steps -> MemberReach.of(pyramid, spec, steps))
        .outermost();
  }

  private static Optional<BarPlan> bars(Run run, FrameMembers members, Poles poles) {
    if (poles.bars().isEmpty()) {
      run.skip(Chapter.FRAME, "cutting of bars: the document has no bars under frame.poles");
      return Optional.empty();
    }
    List<BarPiece> pieces = members.cutList().values().stream().flatMap(List::stream).toList();
    List<BarStock> stock = new ArrayList<>();
    for (int i = 0; i < poles.bars().size(); i++) {
      var bar = poles.bars().get(i);
      String name = "bar-" + (i + 1);
      stock.add(
          bar.count()
              .map(count -> BarStock.onHand(name, bar.length(), count))
              .orElseGet(() -> BarStock.unlimited(name, bar.length())));
    }
    Searched<Optional<BarPlan>> searched =
        Searched.of(
            run,
            Chapter.FRAME,
            "the cutting of bars",
            BarCutting.DEFAULT_BUDGET.workUnits(),
            work ->
                run.attempt(
                    "$.frame.poles.bars",
                    () ->
                        run.worked(
                            "geometry.bars.plan",
                            "The bars to cut",
                            steps -> BarCutting.plan(pieces, stock, poles.kerf(), work, steps))));
    Optional<BarPlan> plan = searched.found();
    plan.filter(p -> !p.missing().isEmpty())
        .ifPresent(
            p ->
                run.unmet(
                    Chapter.FRAME,
                    (searched.stopped()
                            ? "no bar was found before the search was stopped for: "
                            : "bars too few or too short for: ")
                        + p.missing().stream()
                            .map(m -> m.count() + " × " + m.name())
                            .collect(Collectors.joining(", "))));
    return plan;
  }

  private static FrameMembers members(Run run, RegularPyramid pyramid, Poles poles) {
    FrameMembers members = FrameMembers.of(pyramid, spec(run, poles));
    run.cautions(Chapter.FRAME, members.cautions());
    return members;
  }

  private static MemberSpec spec(Run run, Poles poles) {
    MemberSection section =
        poles.section() == PoleSection.ROUND
            ? MemberSection.pipe(poles.diameter().orElseThrow())
            : MemberSection.timber(poles.width().orElseThrow(), poles.depth().orElseThrow());
    return MemberSpec.of(section, section)
        .withSetBacks(poles.setback(), poles.setback(), poles.setback())
        .withPurlinsAt(run.document().frame().map(Frame::purlins).orElse(List.of()));
  }

  private static Map<PyramidMeasure, Double> given(Map<FrameMeasure, Double> stated) {
    Map<PyramidMeasure, Double> given = new EnumMap<>(PyramidMeasure.class);
    stated.forEach((measure, value) -> given.put(PyramidMeasure.valueOf(measure.name()), value));
    return given;
  }

  private static RegularPyramid cut(RegularPyramid whole, Optional<FrameOpening> opening) {
    if (opening.isEmpty()) {
      return whole;
    }
    FrameOpening o = opening.get();
    if (o.side().isPresent()) {
      return whole.withOpeningSide(o.side().get());
    }
    if (o.radius().isPresent()) {
      return whole.withOpeningCircumradius(o.radius().get());
    }
    return whole.withOpeningAtHeight(o.cutHeight().orElseThrow());
  }
}
