package io.github.seamstead.api.chapter.survey;

import io.github.seamstead.api.chapter.Chapter;
import io.github.seamstead.api.chapter.internal.BookContext;
import io.github.seamstead.api.chapter.internal.Words;
import io.github.seamstead.api.page.Table;
import io.github.seamstead.geometry.survey.Adjustment;
import io.github.seamstead.geometry.survey.Blunder;
import io.github.seamstead.geometry.survey.NextReading;
import io.github.seamstead.geometry.survey.ResidualPlot;
import io.github.seamstead.geometry.survey.SurveyControl;
import io.github.seamstead.geometry.templates.FaceFit;
import io.github.seamstead.geometry.templates.FaceMeasure;
import io.github.seamstead.geometry.templates.HemTakeUp;
import io.github.seamstead.geometry.templates.SeamFit;
import io.github.seamstead.geometry.templates.Template;
import io.github.seamstead.geometry.templates.TemplateSet;
import io.github.seamstead.shared.quantity.Numbers;
import io.github.seamstead.shared.uncertainty.Uncertain;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** The frame as it stands: what is wrong with the readings, and the templates that fit. */
final class SurveyPages {

  private SurveyPages() {}

  static void write(BookContext book, SurveyPart part) {
    Adjustment adjustment = part.report().accepted();
    part.report().blunders().forEach(blunder -> blunder(book, blunder));
    control(book, part);
    ResidualPlot plot = ResidualPlot.of(adjustment);
    book.figure(SurveyDrawings.deviations(plot, book.words()));
    book.figure(SurveyDrawings.residuals(plot, book.words()));
    Table facts = new Table("The adjustment", "what", "#value");
    facts.row("readings used", Integer.toString(adjustment.readings().size()));
    facts.row("readings to spare", Integer.toString(adjustment.degreesOfFreedom()));
    adjustment
        .globalTest()
        .ifPresent(
            t -> {
              facts.row("variance factor", Numbers.significant(t.varianceFactor(), 3));
              facts.row(
                  "verdict of the chi-squared test",
                  t.verdict().name().toLowerCase(Locale.ROOT).replace('_', ' '));
            });
    book.table(facts);
    part.tape().ifPresent(tape -> tape(book, tape));
    if (!part.nextReadings().isEmpty()) {
      NextReading next = part.nextReadings().get(0);
      book.note(
          "The next reading worth taking: "
              + next.pair().name()
              + ". It brings the worst panel edge ("
              + next.worstEdge().name()
              + ") from "
              + book.words().error(next.worstBefore())
              + " to "
              + book.words().error(next.edgeAfter())
              + " standard uncertainty.");
    }
    adjustment
        .nextReadingPair(pair -> true)
        .ifPresent(
            two ->
                book.note(
                    "The two worth taking together: "
                        + two.pairs().get(0).name()
                        + " and "
                        + two.pairs().get(1).name()
                        + ". They leave no panel edge worse than "
                        + book.words().error(two.worstAfter())
                        + " standard uncertainty."));
    templates(book, part);
    book.end(Chapter.SURVEY);
  }

  private static void tape(BookContext book, TapePart tape) {
    TapePart.Corrected most = tape.most();
    book.note(
        "Every taped distance was corrected for the tape as it was held; the most, "
            + most.name()
            + ", by "
            + book.words().error(most.corrected() - most.taped())
            + ", from "
            + book.words().length(most.taped())
            + "."
            + tape.truePull()
                .map(
                    pull ->
                        " Held at that warmth with a pull of "
                            + book.words().force(pull)
                            + ", the tape would show the longest distance true.")
                .orElse(""));
  }

  /** Says what was checked, before anyone trusts that nothing stands out. */
  private static void control(BookContext book, SurveyPart part) {
    SurveyControl control = part.control();
    if (!control.isAllControlled()) {
      book.body().open("div", "class", "caution", "role", "note").open("p");
      book.body().element("strong", "Before cutting");
      book.body().text(": " + control.message() + ".");
      book.body().close().closeLine();
    }
    if (part.report().blunders().isEmpty() && !control.isNothingChecked()) {
      book.paragraph(
          control.isAllControlled()
              ? "No reading stands out: every one agrees with the others within its uncertainty."
              : "No reading that others control stands out.");
    }
    if (part.report().undecided()) {
      book.note(
          "Two or more readings contradict each other and no test can tell which is wrong. The"
              + " lengths that hang on them are stated with an uncertainty that covers either.");
    }
  }

  private static void blunder(BookContext book, Blunder blunder) {
    book.body().open("div", "class", "caution", "role", "note").open("p");
    book.body().element("strong", "Reading " + blunder.number() + ", " + blunder.reading().name());
    book.body()
        .text(
            (blunder.isCertain() ? " is wrong by about " : " is probably wrong, by about ")
                + book.words().error(blunder.error())
                + (blunder.cause() == Blunder.Cause.UNCONTROLLED
                    ? ": no other reading controls it; a regular frame has "
                    : ": the others say ")
                + book.words().length(blunder.predicted().value())
                + " ± "
                + book.words().error(blunder.predicted().standardUncertainty())
                + ". It was left out. Tape it again. "
                + String.join(" ", blunder.hints()));
    book.body().close();
    if (!blunder.alsoPossible().isEmpty()) {
      book.body()
          .element(
              "p",
              (blunder.cause() == Blunder.Cause.RIVAL
                      ? "No test can tell it from: "
                      : "Measure again too, since an error there would look alike: ")
                  + blunder.alsoPossible().stream()
                      .map(other -> other.reading().name())
                      .collect(Collectors.joining(", "))
                  + ".");
    }
    book.body().closeLine();
  }

  private static void templates(BookContext book, SurveyPart part) {
    Words w = book.words();
    book.heading("Templates");
    Table counts =
        new Table("How many templates", "templates", "#worst fullness", "#bound", "best?");
    for (TemplateSet set : part.templates().sets()) {
      boolean chosen = set.templates().size() == part.chosen().templates().size();
      counts.row(
          set.templates().size() + (chosen ? " (taken)" : ""),
          book.words().error(set.worstMisfit()),
          book.words().error(set.lowerBound()),
          set.isProvenBest() ? "proved" : "best found");
    }
    book.table(counts);
    book.note(
        "A template is made so large that no face of its group is short; what a smaller face has to"
            + " spare is eased into its seams. Wanted: at most "
            + book.words().error(part.templates().tolerance())
            + ".");
    List<FaceMeasure> measures = List.copyOf(part.chosen().templates().get(0).measures().keySet());
    String[] columns = new String[measures.size() + 2];
    columns[0] = "template";
    columns[1] = "faces";
    for (int i = 0; i < measures.size(); i++) {
      columns[i + 2] = "#" + measures.get(i).label();
    }
    Table templates = new Table("The templates", columns);
    for (Template t : part.chosen().templates()) {
      String[] cells = new String[columns.length];
      cells[0] = Integer.toString(t.number());
      cells[1] = t.faces().stream().map(String::valueOf).collect(Collectors.joining(", "));
      for (int i = 0; i < measures.size(); i++) {
        cells[i + 2] = w.length(t.measure(measures.get(i)));
      }
      templates.row(cells);
    }
    book.table(templates);
    columns[0] = "face";
    columns[1] = "template";
    Table fits = new Table("Fullness (+) of each face in its panel", columns);
    for (FaceFit fit : part.chosen().faces()) {
      String[] cells = new String[columns.length];
      cells[0] = Integer.toString(fit.face());
      cells[1] = Integer.toString(fit.template());
      for (int i = 0; i < measures.size(); i++) {
        Uncertain fullness = fit.fullness().get(measures.get(i));
        cells[i + 2] = fullness == null ? "–" : signed(book.words(), fullness);
      }
      fits.row(cells);
    }
    book.table(fits);
    seams(book, part.chosen());
  }

  private static void seams(BookContext book, TemplateSet chosen) {
    Words w = book.words();
    Table seams =
        new Table(
            "Seams", "seam", "#pole as it stands", "#left panel", "#right panel", "#to ease in");
    for (SeamFit seam : chosen.seams()) {
      seams.row(
          Integer.toString(seam.seam()),
          w.length(seam.length().value()),
          w.length(seam.leftPanelEdge()),
          w.length(seam.rightPanelEdge()),
          book.words().error(seam.ease()));
    }
    book.table(seams);
    Table hem = new Table("Base corners", "corner", "#above the lowest", "#taken up in the hem");
    for (HemTakeUp corner : chosen.hem()) {
      hem.row(
          corner.corner().name(),
          corner.aboveLowest().map(v -> signed(book.words(), v)).orElse("not levelled"),
          signed(book.words(), corner.takeUp()));
    }
    book.table(hem);
  }

  private static String signed(Words w, Uncertain value) {
    return w.said(
        Numbers.fixed(value.value() * 1000, 0)
            + " ± "
            + Numbers.fixed(value.standardUncertainty() * 1000, 0)
            + "\u00a0mm");
  }
}
