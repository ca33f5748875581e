package io.github.seamstead.api.page;

import io.github.seamstead.shared.quantity.Numbers;
import java.util.List;
import java.util.function.DoubleFunction;

/**
 * Draws in world coordinates, y up, onto an SVG view box, y down. Text sizes and line weights are
 * in user units of the view box. Not thread-safe.
 *
 * <p>A book drawing is {@value #BOOK_WIDTH} units wide, so that at a phone's width of 360 pixels
 * its text of {@value #TEXT} units is still 11 pixels high beside the page's edge; printed 90 mm
 * wide it is 3 mm high.
 */
public final class Canvas {

  /** The width of a book drawing's view box. */
  public static final double BOOK_WIDTH = 360;

  /** The text size that stays readable on a phone. */
  public static final double TEXT = 12;

  /** The least text size in a book drawing: 11 pixels on a phone, 2.9 mm on paper. */
  public static final double SMALL_TEXT = 11.6;

  /** The fill patterns of {@link Shade}: once in an HTML page, once in each SVG file. */
  public static final String DEFINITIONS =
      "<defs><pattern id=\"hatch\" width=\"6\" height=\"6\" patternUnits=\"userSpaceOnUse\""
          + " patternTransform=\"rotate(45)\"><rect width=\"6\" height=\"6\" fill=\"#fff\"/><line"
          + " x1=\"0\" y1=\"0\" x2=\"0\" y2=\"6\" stroke=\"#111\""
          + " stroke-width=\"0.72\"/></pattern><pattern id=\"hatch-mm\" width=\"1.6\""
          + " height=\"1.6\" patternUnits=\"userSpaceOnUse\" patternTransform=\"rotate(45)\"><rect"
          + " width=\"1.6\" height=\"1.6\" fill=\"#fff\"/><line x1=\"0\" y1=\"0\" x2=\"0\""
          + " y2=\"1.6\" stroke=\"#111\" stroke-width=\"0.36\"/></pattern><pattern id=\"dots\""
          + " width=\"6\" height=\"6\" patternUnits=\"userSpaceOnUse\"><rect width=\"6\""
          + " height=\"6\" fill=\"#fff\"/><circle cx=\"2\" cy=\"2\" r=\"1\""
          + " fill=\"#111\"/></pattern></defs>";

  private static final double[] BARS = {0.01, 0.02, 0.05, 0.1, 0.2, 0.5, 1, 2, 5, 10};
  private static final double LONGEST_BAR = 70;

  private final double left;
  private final double top;
  private final double scale;
  private final double margin;
  private final double width;
  private final double height;
  private final double weightFactor;
  private final boolean trueSize;
  private final Markup body = new Markup();

  private Canvas(
      double left,
      double top,
      double scale,
      double margin,
      double width,
      double height,
      double weightFactor,
      boolean trueSize) {
    this.left = left;
    this.top = top;
    this.scale = scale;
    this.margin = margin;
    this.width = width;
    this.height = height;
    this.weightFactor = weightFactor;
    this.trueSize = trueSize;
  }

  /**
   * Fits a world rectangle into a book drawing.
   *
   * @param minX left side, in world units
   * @param minY lower side, in world units
   * @param maxX right side, greater than {@code minX}
   * @param maxY upper side, greater than {@code minY}
   * @param margin free space on all sides, in user units
   * @param greatestHeight the greatest height of the view box, in user units
   * @return the canvas
   */
  public static Canvas fit(
      double minX, double minY, double maxX, double maxY, double margin, double greatestHeight) {
    return atScale(
        minX, minY, maxX, maxY, margin, scale(maxX - minX, maxY - minY, margin, greatestHeight));
  }

  /**
   * Gives the scale at which a world rectangle fits into a book drawing.
   *
   * @param width its width, in world units, 0 or more
   * @param height its height, in world units, 0 or more
   * @param margin free space on all sides, in user units
   * @param greatestHeight the greatest height of the view box, in user units
   * @return user units to one world unit
   */
  public static double scale(double width, double height, double margin, double greatestHeight) {
    return Math.min(
        (BOOK_WIDTH - 2 * margin) / Math.max(width, 1e-9),
        (greatestHeight - 2 * margin) / Math.max(height, 1e-9));
  }

  /**
   * Draws a world rectangle at a scale that several book drawings share.
   *
   * @param minX left side, in world units
   * @param minY lower side, in world units
   * @param maxX right side, greater than {@code minX}
   * @param maxY upper side, greater than {@code minY}
   * @param margin free space on all sides, in user units
   * @param scale user units to one world unit, at most what {@link #scale(double, double, double,
   *     double)} gives
   * @return the canvas
   */
  public static Canvas atScale(
      double minX, double minY, double maxX, double maxY, double margin, double scale) {
    double w = Math.max(maxX - minX, 1e-9);
    double h = Math.max(maxY - minY, 1e-9);
    double spare = BOOK_WIDTH - 2 * margin - w * scale;
    double height = h * scale + 2 * margin;
    return new Canvas(minX - spare / 2 / scale, maxY, scale, margin, BOOK_WIDTH, height, 1, false);
  }

  /**
   * Draws true to size: a user unit is a millimetre.
   *
   * @param minX left side, in metres
   * @param minY lower side, in metres
   * @param maxX right side, in metres
   * @param maxY upper side, in metres
   * @param marginMillimetres free space on all sides, in millimetres
   * @return the canvas
   */
  public static Canvas trueSize(
      double minX, double minY, double maxX, double maxY, double marginMillimetres) {
    double width = (maxX - minX) * 1000 + 2 * marginMillimetres;
    double height = (maxY - minY) * 1000 + 2 * marginMillimetres;
    double weight = Math.max(0.25, Math.max(width, height) / 1500);
    return new Canvas(minX, maxY, 1000, marginMillimetres, width, height, weight, true);
  }

  /**
   * Gives the user units to one world unit.
   *
   * @return the scale
   */
  public double scale() {
    return scale;
  }

  /**
   * Gives the size of ordinary text on this canvas.
   *
   * @return in user units
   */
  public double textSize() {
    return trueSize ? Math.max(3, TEXT * weightFactor) : TEXT;
  }

  /**
   * Converts a world x.
   *
   * @param x in world units
   * @return in user units
   */
  public double x(double x) {
    return margin + (x - left) * scale;
  }

  /**
   * Converts a world y.
   *
   * @param y in world units
   * @return in user units, downwards
   */
  public double y(double y) {
    return margin + (top - y) * scale;
  }

  /** Tells whether a world point lies within the drawing's border. */
  boolean shows(double x, double y) {
    return x(x) >= 1 && x(x) <= width - 1 && y(y) >= 1 && y(y) <= height - 1;
  }

  /**
   * Draws a line.
   *
   * @param x1 start, in world units
   * @param y1 start, in world units
   * @param x2 end, in world units
   * @param y2 end, in world units
   * @param ink the line's style
   * @return this canvas
   */
  public Canvas line(double x1, double y1, double x2, double y2, Ink ink) {
    return path(List.of(new double[] {x1, y1}, new double[] {x2, y2}), false, ink, Shade.NONE);
  }

  /**
   * Draws a chain of lines, open or closed.
   *
   * @param points pairs x, y in world units
   * @param closed whether the last point joins the first
   * @param ink the line's style
   * @param shade the fill
   * @return this canvas
   */
  public Canvas path(List<double[]> points, boolean closed, Ink ink, Shade shade) {
    StringBuilder d = new StringBuilder();
    for (double[] p : points) {
      d.append(d.isEmpty() ? "M" : "L").append(number(x(p[0]))).append(' ').append(number(y(p[1])));
    }
    if (closed) {
      d.append('Z');
    }
    body.empty("path", stroke(ink, "d", d.toString(), "fill", shade.paint()));
    return this;
  }

  /**
   * Draws a circle.
   *
   * @param cx centre, in world units
   * @param cy centre, in world units
   * @param radius in user units
   * @param ink the line's style
   * @param shade the fill
   * @return this canvas
   */
  public Canvas dot(double cx, double cy, double radius, Ink ink, Shade shade) {
    body.empty(
        "circle",
        stroke(
            ink,
            "cx",
            number(x(cx)),
            "cy",
            number(y(cy)),
            "r",
            number(radius),
            "fill",
            shade.paint()));
    return this;
  }

  /**
   * Writes text, with a white edge so that lines below do not hurt its reading.
   *
   * @param x anchor, in world units
   * @param y middle of the line of text, in world units
   * @param text the text
   * @param size in user units
   * @param anchor {@code start}, {@code middle} or {@code end}
   * @param degrees counter-clockwise turn about the anchor
   * @return this canvas
   */
  public Canvas text(double x, double y, String text, double size, String anchor, double degrees) {
    String place = number(x(x)) + " " + number(y(y));
    body.element(
        "text",
        text,
        "transform",
        "translate(" + place + ")" + (degrees == 0 ? "" : " rotate(" + number(-degrees) + ")"),
        "font-family",
        "system-ui, sans-serif",
        "font-size",
        number(size),
        "text-anchor",
        anchor,
        "dominant-baseline",
        "central",
        "fill",
        "#111",
        "stroke",
        "#fff",
        "stroke-width",
        number(size * 0.22),
        "stroke-linejoin",
        "round",
        "paint-order",
        "stroke");
    return this;
  }

  /**
   * Writes text of the canvas's ordinary size, centred and upright.
   *
   * @param x middle, in world units
   * @param y middle, in world units
   * @param text the text
   * @return this canvas
   */
  public Canvas label(double x, double y, String text) {
    return text(x, y, text, textSize(), "middle", 0);
  }

  /**
   * Draws an arrow with a filled head at its end.
   *
   * @param x1 start, in world units
   * @param y1 start, in world units
   * @param x2 tip, in world units
   * @param y2 tip, in world units
   * @param ink the line's style
   * @return this canvas
   */
  public Canvas arrow(double x1, double y1, double x2, double y2, Ink ink) {
    line(x1, y1, x2, y2, ink);
    double angle = StrictMath.atan2(y2 - y1, x2 - x1);
    double size = 7 * weightFactor / scale;
    List<double[]> head =
        List.of(
            new double[] {x2, y2},
            new double[] {
              x2 - size * StrictMath.cos(angle - 0.4), y2 - size * StrictMath.sin(angle - 0.4)
            },
            new double[] {
              x2 - size * StrictMath.cos(angle + 0.4), y2 - size * StrictMath.sin(angle + 0.4)
            });
    body.empty("path", "d", head(head), "fill", "#111");
    return this;
  }

  /**
   * Draws a bar of a round length into the lower left corner, below what the margin keeps free, so
   * that a copy of any size still tells the scale.
   *
   * @param unit the world length of one unit that the reader counts in, greater than 0
   * @param write writes a world length for people
   * @return this canvas
   */
  public Canvas scaleBar(double unit, DoubleFunction<String> write) {
    double bar = unit;
    for (double next : BARS) {
      bar = next * unit * scale <= LONGEST_BAR ? next * unit : bar;
    }
    double y = height - 4;
    String d = "M4 " + number(y - 4) + "V" + number(y) + "H" + number(4 + bar * scale) + "v-4";
    body.empty("path", stroke(Ink.CUT, "d", d, "fill", "none"));
    double atX = left + (8 + bar * scale - margin) / scale;
    double atY = top - (y - 4 - margin) / scale;
    return text(atX, atY, write.apply(bar), SMALL_TEXT, "start", 0);
  }

  /**
   * Closes the canvas.
   *
   * @param name a file name without ending
   * @param title a few words
   * @param description the text alternative
   * @return the drawing
   */
  public Drawing drawing(String name, String title, String description) {
    return new Drawing(name, title, description, width, height, trueSize, body.toString());
  }

  /**
   * Writes a coordinate with at most two decimals.
   *
   * @param value any finite number
   * @return for example {@code 12.5}
   */
  public static String number(double value) {
    return Numbers.plain(Math.round(value * 100) / 100.0);
  }

  private String head(List<double[]> points) {
    StringBuilder d = new StringBuilder();
    for (double[] p : points) {
      d.append(d.isEmpty() ? "M" : "L").append(number(x(p[0]))).append(' ').append(number(y(p[1])));
    }
    return d.append('Z').toString();
  }

  private String[] stroke(Ink ink, String... shape) {
    String[] style = {
      "stroke", ink.colour(),
      "stroke-width", number(ink.weight() * weightFactor),
      "stroke-linejoin", "round",
      "stroke-dasharray", dashes(ink)
    };
    int kept = ink.dash().isEmpty() ? style.length - 2 : style.length;
    String[] all = new String[shape.length + kept];
    System.arraycopy(shape, 0, all, 0, shape.length);
    System.arraycopy(style, 0, all, shape.length, kept);
    return all;
  }

  private String dashes(Ink ink) {
    if (weightFactor == 1 || ink.dash().isEmpty()) {
      return ink.dash();
    }
    StringBuilder dashes = new StringBuilder();
    for (String dash : ink.dash().split(" ", -1)) {
      dashes.append(number(Double.parseDouble(dash) * weightFactor)).append(' ');
    }
    return dashes.toString().strip();
  }
}
