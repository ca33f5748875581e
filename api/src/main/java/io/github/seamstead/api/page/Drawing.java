package io.github.seamstead.api.page;

/**
 * A finished drawing with its text alternative.
 *
 * @param name a file name without ending, unique in a book
 * @param title a few words
 * @param description what a person who cannot see it needs to know
 * @param width width of the view box, in user units (millimetres for a true-size drawing)
 * @param height height of the view box, in user units
 * @param trueSize whether a user unit is a millimetre on paper
 * @param body the elements inside the svg element
 */
public record Drawing(
    String name,
    String title,
    String description,
    double width,
    double height,
    boolean trueSize,
    String body) {

  /**
   * Gives the same drawing under another name.
   *
   * @param other a file name without ending, unique in a book
   * @return the drawing so named
   */
  public Drawing named(String other) {
    return new Drawing(other, title, description, width, height, trueSize, body);
  }

  /**
   * Writes the drawing for the inside of an HTML page: it takes the width it is given.
   *
   * @return an svg element
   */
  public String inline() {
    return svg("", "width", "100%").toString();
  }

  /**
   * Writes a true-size drawing for the inside of an HTML page: as large as on paper, unless the
   * page is narrower.
   *
   * @return an svg element
   */
  public String printed() {
    return svg("", "width", Canvas.number(width) + "mm", "height", Canvas.number(height) + "mm")
        .toString();
  }

  /**
   * Writes the drawing as a file of its own.
   *
   * @return an SVG document; a true-size drawing states its size in millimetres
   */
  public String file() {
    String unit = trueSize ? "mm" : "";
    return "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n"
        + svg(
            Canvas.DEFINITIONS,
            "width",
            Canvas.number(width) + unit,
            "height",
            Canvas.number(height) + unit)
        + "\n";
  }

  private Markup svg(String definitions, String... size) {
    String[] attributes = new String[size.length + 8];
    System.arraycopy(size, 0, attributes, 0, size.length);
    String[] rest = {
      "xmlns",
      "http://www.w3.org/2000/svg",
      "viewBox",
      "0 0 " + Canvas.number(width) + " " + Canvas.number(height),
      "role",
      "img",
      "aria-labelledby",
      name + "_title " + name + "_text"
    };
    System.arraycopy(rest, 0, attributes, size.length, rest.length);
    return new Markup()
        .open("svg", attributes)
        .element("title", title, "id", name + "_title")
        .element("desc", description, "id", name + "_text")
        .raw(definitions)
        .raw(body)
        .close();
  }
}
