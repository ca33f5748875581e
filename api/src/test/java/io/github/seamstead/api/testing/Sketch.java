package io.github.seamstead.api.testing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A drawing of a book as its lines, dots and texts. Coordinates are user units of its view box; y
 * runs down.
 */
public final class Sketch {

  private static final Pattern SIZE = Pattern.compile("viewBox=\"0 0 (\\S+) (\\S+)\"");
  private static final Pattern PATH =
      Pattern.compile(
          "<path d=\"M([^\"]*?)(Z?)\" fill=\"([^\"]*)\" stroke=\"[^\"]*\" stroke-width=\"([^\"]*)\""
              + "[^>]*?(?:stroke-dasharray=\"([^\"]*)\")?/>");
  private static final Pattern DOT =
      Pattern.compile("<circle cx=\"([^\"]*)\" cy=\"([^\"]*)\" r=\"([^\"]*)\" fill=\"[^\"]*\" s");
  private static final Pattern TOLD = Pattern.compile("<(title|desc)[^>]*>([^<]*)<");
  private static final Pattern TEXT =
      Pattern.compile("<text transform=\"translate\\((\\S+) (\\S+)\\)([^\"]*)\"[^>]*>([^<]*)<");

  /**
   * A point.
   *
   * @param x to the right
   * @param y down
   */
  public record Point(double x, double y) {

    /**
     * Gives the distance from another point.
     *
     * @param other the other
     * @return in user units
     */
    public double from(Point other) {
      return Math.hypot(x - other.x, y - other.y);
    }
  }

  /**
   * A chain of lines.
   *
   * @param points its points
   * @param closed whether the last joins the first
   * @param fill its paint
   * @param weight of the line
   * @param dash its dashes; empty for a full line
   */
  public record Path(List<Point> points, boolean closed, String fill, double weight, String dash) {

    /**
     * Gives a point of the chain.
     *
     * @param index from 0
     * @return the point
     */
    public Point at(int index) {
      return points.get(index);
    }
  }

  /**
   * A dot.
   *
   * @param at its middle
   * @param radius in user units
   */
  public record Dot(Point at, double radius) {}

  /**
   * A text.
   *
   * @param text what is written
   * @param at its anchor
   * @param turn what follows the shift: empty for an upright text
   */
  public record Text(String text, Point at, String turn) {}

  private final String svg;

  private Sketch(String svg) {
    this.svg = svg;
  }

  /**
   * Reads a drawing of a book.
   *
   * @param f what a plan tells
   * @param name the drawing's name
   * @return the drawing
   */
  public static Sketch of(Fixture f, String name) {
    String svg = f.book().drawings().get(name);
    if (svg == null) {
      throw new IllegalArgumentException("no " + name + " in " + f.book().drawings().keySet());
    }
    return new Sketch(svg);
  }

  /**
   * Gives what the drawing says of itself.
   *
   * @return its title and its description, with a line break between
   */
  public String told() {
    List<String> told = new ArrayList<>();
    Matcher m = TOLD.matcher(svg);
    while (m.find()) {
      told.add(m.group(2).replace('\u00a0', ' '));
    }
    return String.join("\n", told);
  }

  /**
   * Gives the size of the view box.
   *
   * @return its lower right corner
   */
  public Point size() {
    Matcher m = SIZE.matcher(svg);
    if (!m.find()) {
      throw new IllegalStateException("no view box");
    }
    return point(m.group(1), m.group(2));
  }

  /**
   * Gives the lines in the order of their drawing; those of the patterns of fills are not among
   * them.
   *
   * @return the lines
   */
  public List<Path> paths() {
    List<Path> paths = new ArrayList<>();
    Matcher m = PATH.matcher(svg);
    while (m.find()) {
      if (m.group(1).matches("[-0-9. L]*")) {
        List<Point> points = new ArrayList<>();
        for (String pair : m.group(1).split("L", -1)) {
          String[] xy = pair.split(" ", -1);
          points.add(point(xy[0], xy[1]));
        }
        String dash = m.group(5) == null ? "" : m.group(5);
        paths.add(
            new Path(
                points, !m.group(2).isEmpty(), m.group(3), Double.parseDouble(m.group(4)), dash));
      }
    }
    return paths;
  }

  /**
   * Gives the lines of a fill.
   *
   * @param fill its paint
   * @return the lines in the order of their drawing
   */
  public List<Path> filled(String fill) {
    return paths().stream().filter(p -> p.fill().equals(fill)).toList();
  }

  /**
   * Gives the dots.
   *
   * @return in the order of their drawing
   */
  public List<Dot> dots() {
    List<Dot> dots = new ArrayList<>();
    Matcher m = DOT.matcher(svg);
    while (m.find()) {
      dots.add(new Dot(point(m.group(1), m.group(2)), Double.parseDouble(m.group(3))));
    }
    return dots;
  }

  /**
   * Gives the texts.
   *
   * @return in the order of their drawing
   */
  public List<Text> texts() {
    List<Text> texts = new ArrayList<>();
    Matcher m = TEXT.matcher(svg);
    while (m.find()) {
      texts.add(new Text(m.group(4), point(m.group(1), m.group(2)), m.group(3)));
    }
    return texts;
  }

  /**
   * Gives the place of a text that stands once.
   *
   * @param text what is written
   * @return its anchor
   */
  public Point where(String text) {
    List<Text> found = texts().stream().filter(t -> t.text().equals(text)).toList();
    if (found.size() != 1) {
      throw new IllegalArgumentException(text + " does not stand once in " + texts());
    }
    return found.get(0).at();
  }

  /**
   * Gives the texts of a row: those at one height.
   *
   * @param y the height, to a tenth of a unit
   * @return from left to right
   */
  public List<Text> row(double y) {
    return texts().stream()
        .filter(t -> Math.abs(t.at().y() - y) < 0.1)
        .sorted(Comparator.comparingDouble(t -> t.at().x()))
        .toList();
  }

  private static Point point(String x, String y) {
    return new Point(Double.parseDouble(x), Double.parseDouble(y));
  }
}
