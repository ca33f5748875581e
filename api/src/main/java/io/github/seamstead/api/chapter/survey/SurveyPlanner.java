package io.github.seamstead.api.chapter.survey;

import io.github.seamstead.api.chapter.Chapter;
import io.github.seamstead.api.chapter.frame.FramePart;
import io.github.seamstead.api.chapter.internal.Run;
import io.github.seamstead.api.chapter.internal.Searched;
import io.github.seamstead.api.job.Frame;
import io.github.seamstead.api.job.HeightReading;
import io.github.seamstead.api.job.PlumbReading;
import io.github.seamstead.api.job.SurveyReadings;
import io.github.seamstead.api.job.TapedDistance;
import io.github.seamstead.api.job.WrittenQuantity;
import io.github.seamstead.geometry.survey.Adjustment;
import io.github.seamstead.geometry.survey.AdjustmentSummary;
import io.github.seamstead.geometry.survey.Blunder;
import io.github.seamstead.geometry.survey.BlunderReport;
import io.github.seamstead.geometry.survey.Node;
import io.github.seamstead.geometry.survey.Reading;
import io.github.seamstead.geometry.survey.ReadingResult;
import io.github.seamstead.geometry.survey.Survey;
import io.github.seamstead.geometry.survey.SurveyControl;
import io.github.seamstead.geometry.survey.SurveyShape;
import io.github.seamstead.geometry.templates.AsBuilt;
import io.github.seamstead.geometry.templates.TemplatePlan;
import io.github.seamstead.geometry.templates.TemplateSet;
import io.github.seamstead.geometry.templates.Templates;
import io.github.seamstead.shared.quantity.Numbers;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Collectors;

/** Adjusts the taped frame and finds the templates that fit it. */
final class SurveyPlanner {

  private static final String PATH = "$.frame.survey";
  private static final int NEXT_READINGS = 3;

  private SurveyPlanner() {}

  static Optional<SurveyPart> plan(Run run, Optional<FramePart> frame) {
    Optional<SurveyReadings> stated = run.document().frame().flatMap(Frame::survey);
    if (stated.isEmpty()) {
      run.skip(Chapter.SURVEY, "the document has no survey; the ideal measures are taken as built");
      return Optional.empty();
    }
    TapeCorrector tape = new TapeCorrector(stated.get().tape());
    Optional<List<Reading>> readings = readings(run, stated.get(), tape);
    return readings.flatMap(
        r -> run.require(PATH, () -> adjust(run, stated.get(), r, frame, tape.part(run))));
  }

  private static SurveyPart adjust(
      Run run,
      SurveyReadings stated,
      List<Reading> readings,
      Optional<FramePart> frame,
      Optional<TapePart> tape) {
    Survey survey = Survey.of(shape(run, frame, readings), readings);
    BlunderReport report = report(run, survey);
    for (Blunder blunder : report.blunders()) {
      run.unmet(Chapter.SURVEY, words(blunder));
    }
    SurveyControl control = report.control(run.options().cancellation());
    if (!control.isAllControlled()) {
      run.unmet(Chapter.SURVEY, control.message());
    }
    if (run.options().worked()) {
      work(run, report.accepted());
    }
    AsBuilt asBuilt = AsBuilt.of(report.accepted());
    TemplatePlan templates =
        Searched.of(
                run,
                Chapter.SURVEY,
                "templates",
                Templates.COLOURING_BUDGET,
                work -> Templates.plan(asBuilt, stated.tolerance(), work))
            .found();
    TemplateSet last = templates.sets().get(templates.sets().size() - 1);
    if (templates.stopped()) {
      run.unmet(
          Chapter.SURVEY,
          "the search for templates was stopped before a set was within the tolerance; the one"
              + " with the least misfit so far is used");
    } else if (templates.recommended().isEmpty()) {
      run.unmet(
          Chapter.SURVEY,
          "no set of templates fits within the tolerance of "
              + Numbers.plain(stated.tolerance() * 1000)
              + " mm; the one with the least misfit is used");
    }
    TemplateSet chosen = templates.recommended().orElse(last);
    run.workedOnly(
        "geometry.templates.misfit",
        "The worst misfit of the templates",
        steps -> Templates.worstMisfit(asBuilt, chosen, templates.confidence(), steps));
    run.assume(
        PATH,
        "readings along the outside of the members",
        "the fabric lies on the surface that was taped");
    return new SurveyPart(
        report,
        control,
        asBuilt,
        templates,
        chosen,
        report.accepted().nextReadings(NEXT_READINGS),
        tape);
  }

  private static BlunderReport report(Run run, Survey survey) {
    if (run.supposed().soundReadings()
        && survey.adjust(run.options().cancellation()) instanceof Adjustment all) {
      return new BlunderReport(all, List.of(), all, false);
    }
    return survey.findBlunders(run.options().cancellation());
  }

  /** The tests of the adjustment, shown on the reading that stands out the most. */
  private static void work(Run run, Adjustment adjustment) {
    if (adjustment.globalTest().isPresent()) {
      run.workedOnly(
          "geometry.survey.global-test",
          "Whether the readings agree with their uncertainties",
          steps -> AdjustmentSummary.globalTest(adjustment, steps));
    }
    adjustment.readings().stream()
        .filter(r -> r.statistic().isPresent() && adjustment.uncertaintyScale() > 0)
        .max(Comparator.comparingDouble(r -> Math.abs(r.statistic().orElse(0.0))))
        .map(ReadingResult::number)
        .ifPresent(
            number -> {
              run.workedOnly(
                  "geometry.survey.standardised-residual",
                  "How far reading " + number + " stands out",
                  steps -> AdjustmentSummary.standardisedResidual(adjustment, number, steps));
              run.workedOnly(
                  "geometry.survey.minimal-detectable-error",
                  "The least error that shows in reading " + number,
                  steps -> AdjustmentSummary.minimalDetectableError(adjustment, number, steps));
            });
  }

  private static String words(Blunder blunder) {
    String hints = blunder.hints().isEmpty() ? "" : ": " + String.join("; ", blunder.hints());
    return "reading "
        + blunder.number()
        + " ("
        + blunder.reading().name()
        + ", taped "
        + blunder.reading().asWritten()
        + (blunder.isCertain() ? ") is wrong by about " : ") is probably wrong, by about ")
        + Numbers.fixed(blunder.error() * 1000, 0)
        + " mm"
        + hints
        + "; it is left out, measure it again"
        + doubt(blunder);
  }

  /** Says what else may be wrong, or that only the regular frame speaks against it. */
  private static String doubt(Blunder blunder) {
    return switch (blunder.cause()) {
      case CONTRADICTED -> "";
      case RIVAL ->
          "; no test can tell it from "
              + blunder.alsoPossible().stream()
                  .map(other -> "reading " + other.number() + " (" + other.reading().name() + ")")
                  .collect(Collectors.joining(", "))
              + ": measure that again too";
      case UNCONTROLLED ->
          "; no other reading controls it, a regular frame's value stands in for it";
    };
  }

  private static SurveyShape shape(Run run, Optional<FramePart> frame, List<Reading> readings) {
    return frame.map(FramePart::surveyShape).orElseGet(() -> bare(run, readings));
  }

  /** The shape of a frame without measures: open at the top if a reading names a corner there. */
  private static SurveyShape bare(Run run, List<Reading> readings) {
    int sides = run.document().frame().orElseThrow().sides();
    boolean truncated =
        readings.stream()
            .flatMap(r -> r.nodes().stream())
            .anyMatch(node -> node.kind() == Node.Kind.OPENING);
    return truncated ? SurveyShape.truncated(sides) : SurveyShape.whole(sides);
  }

  private static Optional<List<Reading>> readings(
      Run run, SurveyReadings stated, TapeCorrector tape) {
    List<Reading> readings = new ArrayList<>();
    int wanted = 0;
    for (int i = 0; i < stated.distances().size(); i++, wanted++) {
      TapedDistance d = stated.distances().get(i);
      add(run, readings, "distances[" + i + "]", () -> distance(d, stated.uncertainty(), tape));
    }
    for (int i = 0; i < stated.heights().size(); i++, wanted++) {
      HeightReading h = stated.heights().get(i);
      add(run, readings, "heights[" + i + "]", () -> height(h, stated.heightUncertainty()));
    }
    for (int i = 0; i < stated.plumbs().size(); i++, wanted++) {
      PlumbReading p = stated.plumbs().get(i);
      add(run, readings, "plumbs[" + i + "]", () -> plumb(p, stated.heightUncertainty()));
    }
    return readings.size() == wanted ? Optional.of(readings) : Optional.empty();
  }

  private static void add(Run run, List<Reading> readings, String key, Supplier<Reading> reading) {
    run.require(PATH + "." + key, reading).ifPresent(readings::add);
  }

  private static Reading distance(TapedDistance d, double usual, TapeCorrector tape) {
    Node from = Node.parse(d.from());
    Node to = Node.parse(d.to());
    WrittenQuantity q = d.distance();
    double u = q.standardUncertainty().orElse(usual);
    double metres = tape.distance(d.from() + "-" + d.to(), q.value());
    return d.level()
        ? new Reading.LevelDistance(from, to, metres, u, q.text())
        : new Reading.Distance(from, to, metres, u, q.text());
  }

  private static Reading height(HeightReading h, double usual) {
    WrittenQuantity q = h.rise();
    return new Reading.HeightDifference(
        Node.parse(h.from()),
        Node.parse(h.to()),
        q.value(),
        q.standardUncertainty().orElse(usual),
        q.text());
  }

  private static Reading plumb(PlumbReading p, double usual) {
    WrittenQuantity q = p.offset();
    return new Reading.PlumbOffset(
        Node.parse(p.hung()),
        Node.parse(p.mark()),
        Node.parse(p.towards()),
        q.value(),
        q.standardUncertainty().orElse(usual),
        q.text());
  }
}
