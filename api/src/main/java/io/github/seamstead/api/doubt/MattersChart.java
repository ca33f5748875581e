package io.github.seamstead.api.doubt;

import io.github.seamstead.api.compare.MeasureText;
import io.github.seamstead.api.page.Canvas;
import io.github.seamstead.api.page.Drawing;
import io.github.seamstead.api.page.Ink;
import io.github.seamstead.api.page.Shade;
import io.github.seamstead.shared.quantity.Numbers;
import io.github.seamstead.shared.sensitivity.SensitivityIndex;
import java.util.List;

/**
 * A bar for each doubt of a number: grey what it makes alone, hatched what it makes with others,
 * and a line for the standard error. Told apart by pattern, so that a black-and-white print says
 * the same.
 */
final class MattersChart {

  private static final int MOST_BARS = 8;
  private static final double LEAST_SHOWN = 0.005;
  private static final double ROW = 34;
  private static final double BAR = 11;
  private static final double FOOT = 44;
  private static final double WIDTH = 340;
  private static final double LABEL = 10;

  private MattersChart() {}

  /** The doubts that a chart shows. */
  static List<Influence> shown(NumberInDoubt number) {
    return number.influences().stream()
        .filter(i -> i.index().total().value() >= LEAST_SHOWN)
        .limit(MOST_BARS)
        .toList();
  }

  static Drawing of(NumberInDoubt number, MeasureText text) {
    List<Influence> shown = shown(number);
    double height = shown.size() * ROW + FOOT;
    double span = Math.max(1, shown.stream().mapToDouble(MattersChart::end).max().orElse(1));
    double scale = WIDTH / span;
    Canvas canvas = Canvas.fit(0, 0, WIDTH, height, 10, height + 20);
    axis(canvas, scale, span, height);
    for (int i = 0; i < shown.size(); i++) {
      bar(canvas, shown.get(i), height - i * ROW, scale);
    }
    StringBuilder said = new StringBuilder("Bars from the greatest to the least. ");
    for (Influence influence : shown) {
      said.append(influence.doubt())
          .append(": ")
          .append(percent(influence.index().total().value()))
          .append(". ");
    }
    return canvas.drawing(
        "matters-" + number.measure().word(),
        "What moves "
            + number.measure().label()
            + ", planned "
            + text.of(number.measure(), number.planned()),
        said.toString().strip());
  }

  private static double end(Influence influence) {
    return influence.index().total().value() + influence.index().total().standardUncertainty();
  }

  private static void axis(Canvas canvas, double scale, double span, double height) {
    double foot = FOOT - 4;
    canvas.line(0, foot, WIDTH, foot, Ink.THIN);
    for (double part = 0; part <= span + 1e-9; part += 0.25) {
      canvas.line(part * scale, foot, part * scale, height, Ink.DOTTED);
      String anchor = part == 0 ? "start" : part * scale > WIDTH - 12 ? "end" : "middle";
      canvas.text(part * scale, foot - 10, percent(part), LABEL, anchor, 0);
    }
    canvas.text(0, foot - 26, "part of the number's variance", LABEL, "start", 0);
  }

  private static void bar(Canvas canvas, Influence influence, double top, double scale) {
    SensitivityIndex index = influence.index();
    double total = Math.max(0, index.total().value());
    double first = Math.max(0, Math.min(total, index.first().value()));
    double error = index.total().standardUncertainty();
    double upper = top - 16;
    double middle = upper - BAR / 2;
    canvas.path(box(0, total * scale, upper), true, Ink.CUT, Shade.HATCH);
    canvas.path(box(0, first * scale, upper), true, Ink.CUT, Shade.MIDDLE);
    canvas.line(
        Math.max(0, total - error) * scale, middle, (total + error) * scale, middle, Ink.CUT);
    canvas.text(0, top - 8, influence.doubt() + ", " + percent(total), LABEL, "start", 0);
  }

  private static List<double[]> box(double left, double right, double top) {
    return List.of(
        new double[] {left, top},
        new double[] {right, top},
        new double[] {right, top - BAR},
        new double[] {left, top - BAR});
  }

  static String percent(double part) {
    return Numbers.fixed(part * 100, 0) + " %";
  }
}
