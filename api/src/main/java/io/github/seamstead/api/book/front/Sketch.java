package io.github.seamstead.api.book.front;

import io.github.seamstead.api.page.Canvas;
import io.github.seamstead.api.page.Drawing;
import io.github.seamstead.api.page.Markup;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/**
 * Draws for paper: a user unit is a millimetre of the printed sheet, so that lines and letters have
 * the same size in every drawing. World points are mapped by a stated scale; y points up in the
 * world and down on the sheet. Not thread-safe.
 */
final class Sketch {

  /** Height of letters in millimetres, ISO 3098. */
  static final double LETTER = 3.5;

  static final double THIN = 0.25;
  static final double OUTLINE = 0.5;
  static final double HEAVY = 0.7;
  static final String DASHED = "2 1";
  static final String HATCH = "url(#hatch-mm)";
  static final String PALE = "#f0f0ec";
  private static final double ARROW = 2.2;
  private static final double CHARACTER = 0.56;

  private final double width;
  private final double height;
  private final Markup body = new Markup();
  private final List<double[]> taken = new ArrayList<>();
  private double scale = 1;
  private Vector2D origin = Vector2D.ZERO;

  Sketch(double width, double height) {
    this.width = width;
    this.height = height;
  }

  /** Maps the world: its point of origin lies at a place of the sheet, a metre is so long there. */
  Sketch map(double x, double y, double millimetresPerMetre) {
    origin = Vector2D.of(x, y);
    scale = millimetresPerMetre;
    return this;
  }

  /** Where a world point lies on the sheet. */
  Vector2D at(Vector2D world) {
    return Vector2D.of(origin.getX() + world.getX() * scale, origin.getY() - world.getY() * scale);
  }

  List<Vector2D> at(List<Vector2D> world) {
    return world.stream().map(this::at).toList();
  }

  Sketch shape(List<Vector2D> points, double weight, String dash, String fill) {
    StringBuilder d = new StringBuilder();
    for (Vector2D p : points) {
      d.append(d.isEmpty() ? "M" : "L").append(xy(p));
    }
    path(d.append('Z').toString(), weight, dash, fill);
    return this;
  }

  Sketch line(Vector2D a, Vector2D b, double weight, String dash) {
    path("M" + xy(a) + "L" + xy(b), weight, dash, "none");
    return this;
  }

  Sketch circle(Vector2D centre, double radius, double weight, String fill) {
    body.empty(
        "circle",
        "cx",
        n(centre.getX()),
        "cy",
        n(centre.getY()),
        "r",
        n(radius),
        "stroke",
        "#111",
        "stroke-width",
        n(weight),
        "fill",
        fill);
    return this;
  }

  /** Writes centred text; the angle is in degrees, clockwise. */
  Sketch text(Vector2D middle, String text, double degrees, boolean bold) {
    return text(middle, text, "middle", degrees, bold, LETTER);
  }

  Sketch text(
      Vector2D at, String text, String anchor, double degrees, boolean bold, double letter) {
    occupy(at, text, anchor, degrees, letter);
    double base = letter * 0.36;
    double turn = Math.toRadians(degrees);
    Vector2D foot = at.add(Vector2D.of(-StrictMath.sin(turn) * base, StrictMath.cos(turn) * base));
    List<String> attributes =
        new ArrayList<>(
            List.of(
                "x",
                n(foot.getX()),
                "y",
                n(foot.getY()),
                "font-size",
                n(letter),
                "text-anchor",
                anchor,
                "fill",
                "#111",
                "stroke",
                "#fff",
                "stroke-width",
                "0.8",
                "stroke-linejoin",
                "round",
                "paint-order",
                "stroke"));
    if (bold) {
      attributes.addAll(List.of("font-weight", "700"));
    }
    if (degrees != 0) {
      attributes.addAll(List.of("transform", "rotate(" + n(degrees) + " " + xy(foot) + ")"));
    }
    body.element("text", text, attributes.toArray(String[]::new));
    return this;
  }

  /**
   * Writes text at the first of some places where it lies on no other; nowhere if there is none.
   */
  boolean textWhereFree(List<Vector2D> places, String text, boolean bold) {
    for (Vector2D place : places) {
      if (isFree(box(place, text, "middle", 0, LETTER))) {
        text(place, text, 0, bold);
        return true;
      }
    }
    return false;
  }

  /**
   * Dimensions the way from a to b: extension lines, the line with arrows aside, the number above
   * it. A positive distance puts it to the right of the way, as seen on the sheet.
   */
  Sketch dimension(Vector2D a, Vector2D b, double distance, String text) {
    Vector2D way = b.subtract(a);
    double length = way.norm();
    Vector2D along = way.multiply(1 / length);
    Vector2D aside = Vector2D.of(-along.getY(), along.getX()).multiply(distance);
    Vector2D unit = aside.multiply(1 / Math.abs(distance));
    Vector2D p = a.add(aside);
    Vector2D q = b.add(aside);
    // A number wider than its dimension must not stand on the ends of these lines.
    double beyond = wide(text) > length ? 0 : 1.5;
    line(a.add(unit), p.add(unit.multiply(beyond)), THIN, "");
    line(b.add(unit), q.add(unit.multiply(beyond)), THIN, "");
    boolean narrow = length < 3 * ARROW;
    line(p, q, THIN, "");
    head(p, narrow ? along : along.negate());
    head(q, narrow ? along.negate() : along);
    double degrees = Math.toDegrees(StrictMath.atan2(along.getY(), along.getX()));
    double upright = degrees > 90.01 ? degrees - 180 : degrees <= -89.99 ? degrees + 180 : degrees;
    if (Math.abs(Math.abs(degrees) - 90) < 0.02) {
      upright = -90;
    }
    double turn = Math.toRadians(upright);
    Vector2D above =
        Vector2D.of(StrictMath.sin(turn), -StrictMath.cos(turn)).multiply(LETTER * 0.36 + 1.2);
    return text(p.lerp(q, 0.5).add(above), text, upright, false);
  }

  /** Draws an arrow's head at a point, towards a direction of length 1. */
  Sketch head(Vector2D tip, Vector2D towards) {
    Vector2D back = tip.subtract(towards.multiply(ARROW));
    Vector2D side = Vector2D.of(-towards.getY(), towards.getX()).multiply(0.5);
    String d = "M" + xy(tip) + "L" + xy(back.add(side)) + "L" + xy(back.subtract(side)) + "Z";
    body.empty("path", "d", d, "fill", "#111");
    return this;
  }

  /** Draws the scale bar of a world length with its foot at a place of the sheet. */
  Sketch bar(double x, double y, double metres, String text) {
    Vector2D a = Vector2D.of(x, y);
    Vector2D b = Vector2D.of(x + metres * scale, y);
    Vector2D up = Vector2D.of(0, -1.6);
    line(a, b, HEAVY, "").line(a, a.add(up), THIN, "").line(b, b.add(up), THIN, "");
    return text(b.add(Vector2D.of(1.5, -0.8)), text, "start", 0, false, LETTER);
  }

  /** Keeps later labels off a circle. */
  void avoid(Vector2D centre, double radius) {
    taken.add(
        new double[] {
          centre.getX() - radius,
          centre.getY() - radius,
          centre.getX() + radius,
          centre.getY() + radius
        });
  }

  Drawing drawing(String name, String title, String description) {
    return new Drawing(name, title, description, width, height, true, body.toString());
  }

  /** How wide a text of the usual letters is, in millimetres, a little more than less. */
  static double wide(String text) {
    return text.length() * LETTER * CHARACTER;
  }

  private void occupy(Vector2D at, String text, String anchor, double degrees, double letter) {
    taken.add(box(at, text, anchor, degrees, letter));
  }

  private static double[] box(
      Vector2D at, String text, String anchor, double degrees, double letter) {
    double w = text.length() * letter * CHARACTER;
    double from = anchor.equals("middle") ? -w / 2 : anchor.equals("end") ? -w : 0;
    double turn = Math.toRadians(degrees);
    double[] box = {1e9, 1e9, -1e9, -1e9};
    for (double x : new double[] {from, from + w}) {
      for (double y : new double[] {-letter / 2, letter / 2}) {
        double px = at.getX() + x * StrictMath.cos(turn) - y * StrictMath.sin(turn);
        double py = at.getY() + x * StrictMath.sin(turn) + y * StrictMath.cos(turn);
        box[0] = Math.min(box[0], px);
        box[1] = Math.min(box[1], py);
        box[2] = Math.max(box[2], px);
        box[3] = Math.max(box[3], py);
      }
    }
    return box;
  }

  /** Whether a text at a place would lie on the sheet, and on no other. */
  boolean isFree(Vector2D middle, String text) {
    return isFree(box(middle, text, "middle", 0, LETTER));
  }

  private boolean isFree(double[] box) {
    boolean within =
        box[0] >= 0.5 && box[1] >= 0.5 && box[2] <= width - 0.5 && box[3] <= height - 0.5;
    return within
        && taken.stream()
            .noneMatch(t -> t[0] < box[2] && t[2] > box[0] && t[1] < box[3] && t[3] > box[1]);
  }

  private void path(String d, double weight, String dash, String fill) {
    List<String> attributes =
        new ArrayList<>(
            List.of(
                "d",
                d,
                "fill",
                fill,
                "stroke",
                "#111",
                "stroke-width",
                n(weight),
                "stroke-linejoin",
                "round"));
    if (!dash.isEmpty()) {
      attributes.addAll(List.of("stroke-dasharray", dash));
    }
    body.empty("path", attributes.toArray(String[]::new));
  }

  private static String xy(Vector2D p) {
    return n(p.getX()) + " " + n(p.getY());
  }

  private static String n(double value) {
    return Canvas.number(value);
  }
}
