package io.github.seamstead.api.page;

import io.github.seamstead.shared.quantity.Numbers;
import java.util.ArrayList;
import java.util.List;

/**
 * A plain chart: axes with ticks and units, lines told apart by dash and by a label at the line,
 * and bands for ranges. Not thread-safe.
 */
public final class Chart {

  private static final double LEFT = 44;

  /** The upright label of the vertical axis and the gaps beside it. */
  private static final double VERTICAL_LABEL = 30;

  /** Width of a digit over the height of letters. */
  private static final double DIGIT = 0.62;

  private static final double RIGHT = 14;
  private static final double TOP = 14;
  private static final double BOTTOM = 40;

  private final Axis horizontal;
  private final Axis vertical;
  private final double height;
  private final double left;
  private final Markup body = new Markup();

  /** Where texts stand inside the chart: left and right end, and height. */
  private final List<double[]> written = new ArrayList<>();

  /**
   * Starts a chart.
   *
   * @param horizontal the axis along the page
   * @param vertical the axis up the page
   * @param height the height of the view box, in user units
   */
  public Chart(Axis horizontal, Axis vertical, double height) {
    this.horizontal = horizontal;
    this.vertical = vertical;
    this.height = height;
    int longest =
        vertical.ticks().stream().map(Chart::tick).mapToInt(String::length).max().orElse(0);
    this.left = Math.max(LEFT, VERTICAL_LABEL + longest * DIGIT * Canvas.TEXT);
    axes();
  }

  /**
   * An axis.
   *
   * @param label what it shows, with the unit
   * @param from the value at its start; greater than 0 for a logarithmic axis
   * @param to the value at its end, greater than {@code from}
   * @param logarithmic whether equal lengths are equal ratios
   */
  public record Axis(String label, double from, double to, boolean logarithmic) {

    /**
     * Makes an axis with even spacing.
     *
     * @param label what it shows, with the unit
     * @param from the value at its start
     * @param to the value at its end; where it does not exceed {@code from}, one more than that
     * @return the axis
     */
    public static Axis linear(String label, double from, double to) {
      return new Axis(label, from, to > from ? to : from + 1, false);
    }

    /**
     * Makes a logarithmic axis.
     *
     * @param label what it shows, with the unit
     * @param from the value at its start, greater than 0
     * @param to the value at its end, greater than {@code from}
     * @return the axis
     */
    public static Axis logarithmic(String label, double from, double to) {
      return new Axis(label, from, to, true);
    }

    double part(double value) {
      return logarithmic
          ? StrictMath.log(value / from) / StrictMath.log(to / from)
          : (value - from) / (to - from);
    }

    List<Double> ticks() {
      List<Double> ticks = new ArrayList<>();
      if (logarithmic) {
        for (double decade = StrictMath.pow(10, Math.floor(StrictMath.log10(from)));
            decade <= to * 1.0001;
            decade *= 10) {
          if (decade >= from * 0.9999) {
            ticks.add(decade);
          }
        }
        return ticks;
      }
      double rough = (to - from) / 5;
      double power = StrictMath.pow(10, Math.floor(StrictMath.log10(rough)));
      double ratio = rough / power;
      double step = power * (ratio < 1.5 ? 1 : ratio < 3.5 ? 2 : ratio < 7.5 ? 5 : 10);
      for (long i = (long) Math.ceil(from / step - 1e-9); i * step <= to + 1e-9 * step; i++) {
        ticks.add(i * step);
      }
      return ticks;
    }
  }

  /**
   * Draws a line through points with a label beside one of them.
   *
   * @param points pairs of values on the two axes
   * @param ink the line's style
   * @param label what the line is; empty for none
   * @param labelAt which point the label stands at
   * @return this chart
   */
  public Chart line(List<double[]> points, Ink ink, String label, int labelAt) {
    path(points, false, ink, Shade.NONE);
    if (!label.isEmpty() && !points.isEmpty()) {
      double[] at = points.get(Math.min(labelAt, points.size() - 1));
      text(at[0], at[1], label);
    }
    return this;
  }

  /**
   * Fills the band between two lines over the same horizontal values.
   *
   * @param low the lower line
   * @param high the upper line
   * @param shade the fill
   * @return this chart
   */
  public Chart band(List<double[]> low, List<double[]> high, Shade shade) {
    List<double[]> round = new ArrayList<>(low);
    for (int i = high.size() - 1; i >= 0; i--) {
      round.add(high.get(i));
    }
    path(round, true, Ink.THIN, shade);
    return this;
  }

  /**
   * Marks points with small circles.
   *
   * @param points pairs of values on the two axes
   * @param shade the fill of the circles
   * @return this chart
   */
  public Chart dots(List<double[]> points, Shade shade) {
    for (double[] p : points) {
      body.empty(
          "circle",
          "cx",
          n(x(p[0])),
          "cy",
          n(y(p[1])),
          "r",
          "3",
          "stroke",
          "#111",
          "stroke-width",
          "1",
          "fill",
          shade.paint());
    }
    return this;
  }

  /**
   * Writes a text at a point, kept inside the chart; where another stands, on the next free line
   * above or below it.
   *
   * @param atX value on the horizontal axis
   * @param atY value on the vertical axis
   * @param content the text
   * @return this chart
   */
  public Chart text(double atX, double atY, String content) {
    double x = x(atX);
    String anchor = x > Canvas.BOOK_WIDTH * 0.62 ? "end" : "start";
    double width = content.length() * DIGIT * Canvas.TEXT;
    double from = anchor.equals("end") ? x - 4 - width : x + 4;
    double y = free(from, width, Math.max(TOP + 8, Math.min(y(atY) - 8, height - BOTTOM - 6)));
    written.add(new double[] {from, from + width, y});
    label(x + (anchor.equals("end") ? -4 : 4), y, content, anchor, 0);
    return this;
  }

  /** The height nearest to the one wanted at which a text lies on no other. */
  private double free(double from, double width, double wanted) {
    double line = 1.2 * Canvas.TEXT;
    for (int k = 0; k <= 2 * written.size() + 2; k++) {
      double y = wanted + (k % 2 == 0 ? 1 : -1) * ((k + 1) / 2) * line;
      if (y >= TOP + 8
          && y <= height - BOTTOM - 6
          && written.stream()
              .noneMatch(
                  w -> w[0] < from + width && from < w[1] && Math.abs(w[2] - y) < line - 1e-9)) {
        return y;
      }
    }
    return wanted;
  }

  /**
   * Closes the chart.
   *
   * @param name a file name without ending
   * @param title a few words
   * @param description the text alternative
   * @return the drawing
   */
  public Drawing drawing(String name, String title, String description) {
    return new Drawing(name, title, description, Canvas.BOOK_WIDTH, height, false, body.toString());
  }

  private void axes() {
    double x0 = left;
    double y0 = height - BOTTOM;
    for (double tick : horizontal.ticks()) {
      double x = x(tick);
      stroke(x, TOP, x, y0, "#ccc", 0.6);
      label(x, y0 + 11, tick(tick), "middle", 0);
    }
    for (double tick : vertical.ticks()) {
      double y = y(tick);
      stroke(x0, y, Canvas.BOOK_WIDTH - RIGHT, y, "#ccc", 0.6);
      label(x0 - 5, y, tick(tick), "end", 0);
    }
    stroke(x0, TOP, x0, y0, "#111", 1);
    stroke(x0, y0, Canvas.BOOK_WIDTH - RIGHT, y0, "#111", 1);
    label((x0 + Canvas.BOOK_WIDTH - RIGHT) / 2, height - 10, horizontal.label(), "middle", 0);
    label(10, (TOP + y0) / 2, vertical.label(), "middle", 90);
  }

  private static String tick(double value) {
    return Numbers.significant(value, 4);
  }

  private double x(double value) {
    return left + horizontal.part(value) * (Canvas.BOOK_WIDTH - left - RIGHT);
  }

  private double y(double value) {
    return height - BOTTOM - vertical.part(value) * (height - TOP - BOTTOM);
  }

  private void path(List<double[]> points, boolean closed, Ink ink, Shade shade) {
    StringBuilder d = new StringBuilder();
    for (double[] p : points) {
      d.append(d.isEmpty() ? "M" : "L").append(n(x(p[0]))).append(' ').append(n(y(p[1])));
    }
    body.empty(
        "path",
        "d",
        closed ? d + "Z" : d.toString(),
        "fill",
        shade.paint(),
        "fill-opacity",
        "0.8",
        "stroke",
        ink.colour(),
        "stroke-width",
        n(ink.weight()),
        "stroke-dasharray",
        ink.dash().isEmpty() ? "none" : ink.dash());
  }

  private void stroke(double x1, double y1, double x2, double y2, String colour, double weight) {
    body.empty(
        "line",
        "x1",
        n(x1),
        "y1",
        n(y1),
        "x2",
        n(x2),
        "y2",
        n(y2),
        "stroke",
        colour,
        "stroke-width",
        n(weight));
  }

  private void label(double x, double y, String content, String anchor, double degrees) {
    body.element(
        "text",
        content,
        "transform",
        "translate("
            + n(x)
            + " "
            + n(y)
            + ")"
            + (degrees == 0 ? "" : " rotate(-" + n(degrees) + ")"),
        "font-family",
        "system-ui, sans-serif",
        "font-size",
        n(Canvas.TEXT),
        "text-anchor",
        anchor,
        "dominant-baseline",
        "central",
        "fill",
        "#111",
        "stroke",
        "#fff",
        "stroke-width",
        "2.4",
        "stroke-linejoin",
        "round",
        "paint-order",
        "stroke");
  }

  private static String n(double value) {
    return Canvas.number(value);
  }
}
