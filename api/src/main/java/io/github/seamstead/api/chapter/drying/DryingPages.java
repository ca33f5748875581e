package io.github.seamstead.api.chapter.drying;

import io.github.seamstead.api.chapter.Chapter;
import io.github.seamstead.api.chapter.internal.BookContext;
import io.github.seamstead.api.chapter.internal.Words;
import io.github.seamstead.api.page.Chart;
import io.github.seamstead.api.page.Drawing;
import io.github.seamstead.api.page.Ink;
import io.github.seamstead.api.page.Shade;
import io.github.seamstead.api.page.Table;
import io.github.seamstead.materials.drying.DryingCurve;
import io.github.seamstead.materials.drying.DryingForecast;
import io.github.seamstead.materials.drying.Milestone;
import io.github.seamstead.shared.quantity.Numbers;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.StringJoiner;

/** How long each wet layer dries, how it cracks, and what mends it. */
final class DryingPages {

  private static final double DAY = 86_400;
  private static final int CHART_POINTS = 60;

  /** In days; less is not worth a sentence. */
  private static final double LEAST_SAVING = 0.05;

  private DryingPages() {}

  static void write(BookContext book, List<DryingPart> parts) {
    for (DryingPart part : parts) {
      book.heading(part.layer().name());
      book.figure(curve(part));
      Table table = new Table("When", "state", "#soonest", "#likely", "#latest");
      for (Milestone m : part.forecast().milestones()) {
        table.row(m.name(), days(m.soonest(), m), days(m.likely(), m), days(m.latest(), m));
      }
      book.table(table);
      part.aired().ifPresent(aired -> aired(book, aired));
      cracks(book, part);
    }
    book.note(
        "Published rates scatter widely, so the range is wide. Weigh a test tile of the same mix on"
            + " a few days: its weighings narrow the forecast more than any table.");
    book.end(Chapter.DRYING);
  }

  /** Says what more air does; by the likely runs, since both have the same wide range. */
  private static void aired(BookContext book, DryingForecast.Comparison aired) {
    StringJoiner saved = new StringJoiner(", ");
    for (int i = 0; i < aired.daysSaved().size(); i++) {
      OptionalDouble days = aired.daysSaved().get(i);
      if (days.isPresent()) {
        saved.add(aired.asIs().milestones().get(i).name() + " " + sooner(days.getAsDouble()));
      }
    }
    if (saved.length() > 0) {
      book.paragraph(
          "With "
              + Numbers.plain(DryingPart.AIRED)
              + " times the air over the floor, as with doors and vents wide open: "
              + saved
              + ". Dry it evenly: a draught on one side opens cracks.");
    }
  }

  private static String sooner(double days) {
    return Math.abs(days) < LEAST_SAVING
        ? "no sooner"
        : "about "
            + Numbers.significant(Math.abs(days), Math.abs(days) < 10 ? 1 : 2)
            + "\u00a0d "
            + (days > 0 ? "sooner" : "later");
  }

  private static void cracks(BookContext book, DryingPart part) {
    Words w = book.words();
    part.cracking()
        .ifPresent(
            c -> {
              Table table = new Table("Cracks", "what", "#likely (range)");
              table.row("free shrinkage of the coat", w.range(c.freeShrinkage(), w::percent));
              table.row(
                  "all crack widths together, in one metre",
                  w.range(c.widthPerMetre(), x -> BookContext.number(x * 1000, 1) + "\u00a0mm"));
              part.repair()
                  .ifPresent(
                      slip -> {
                        table.row("slip to mend them", w.range(slip.volume(), w::litres));
                        slip.parts()
                            .forEach(p -> table.row("slip: " + p.name(), w.mass(p.dryMass())));
                        table.row("slip: water", w.litres(slip.water() / 1000));
                        table.row("slip: sieve", w.small(slip.sieve()));
                      });
              book.table(table);
            });
  }

  private static Drawing curve(DryingPart part) {
    DryingForecast forecast = part.forecast();
    // Past the last state nothing more is decided, so the chart ends soon after it.
    double last =
        forecast.milestones().stream()
            .mapToDouble(m -> m.latest().orElse(m.horizon()))
            .max()
            .orElse(Double.POSITIVE_INFINITY);
    double days = Math.min(forecast.slow().duration() / DAY, last * 1.1);
    double top = forecast.likely().coatMoistureAt(0) * 100;
    Chart chart =
        new Chart(
            Chart.Axis.linear("days after laying", 0, days),
            Chart.Axis.linear("water, % of dry mass", 0, top * 1.05),
            260);
    List<double[]> fast = points(forecast.fast(), days);
    List<double[]> slow = points(forecast.slow(), days);
    chart.band(fast, slow, Shade.LIGHT);
    chart.line(points(forecast.likely(), days), Ink.CUT, "likely", CHART_POINTS / 4);
    for (Milestone m : forecast.milestones()) {
      double y = m.moisture() * 100;
      chart.line(List.of(new double[] {0, y}, new double[] {days, y}), Ink.SEAM, m.name(), 1);
    }
    return chart.drawing(
        "drying-" + part.layer().name(),
        "Drying of the " + part.layer().name(),
        "Mean moisture of the coat over the days: likely line in a grey band from the fastest to"
            + " the slowest reasonable drying; dashed lines mark the states named.");
  }

  private static List<double[]> points(DryingCurve curve, double days) {
    List<double[]> points = new ArrayList<>();
    for (int i = 0; i <= CHART_POINTS; i++) {
      double day = days * i / CHART_POINTS;
      double time = Math.min(day * DAY, curve.duration());
      points.add(new double[] {day, curve.coatMoistureAt(time) * 100});
    }
    return points;
  }

  private static String days(OptionalDouble days, Milestone milestone) {
    return days.isPresent()
        ? BookContext.number(days.getAsDouble(), days.getAsDouble() < 10 ? 1 : 0) + "\u00a0d"
        : "not in " + BookContext.number(milestone.horizon(), 0) + "\u00a0d";
  }
}
