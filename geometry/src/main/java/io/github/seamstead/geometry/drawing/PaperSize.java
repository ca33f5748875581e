package io.github.seamstead.geometry.drawing;

/** A sheet of paper, upright. */
public enum PaperSize {
  /** 210 mm by 297 mm, ISO 216. */
  A4("A4", 210, 297),
  /** 8 1/2 in by 11 in, ANSI/ASME Y14.1 size A. */
  LETTER("Letter", 215.9, 279.4);

  private final String label;
  private final double width;
  private final double height;

  PaperSize(String label, double width, double height) {
    this.label = label;
    this.width = width;
    this.height = height;
  }

  /**
   * Names the size.
   *
   * @return for example {@code A4}
   */
  public String label() {
    return label;
  }

  /**
   * Gives the short side.
   *
   * @return in millimetres
   */
  public double width() {
    return width;
  }

  /**
   * Gives the long side.
   *
   * @return in millimetres
   */
  public double height() {
    return height;
  }
}
