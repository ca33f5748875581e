package io.github.seamstead.materials.soil;

/**
 * The texture triangle cut into n^2 equal small triangles, evaluated at their centroids: the
 * midpoint rule, whose error falls with 1/n^2 for a smooth density. Package-private.
 */
final class TextureGrid {

  /** Steps along a side of the published result: 1 % of mass. */
  static final int STEPS = 100;

  /** The grid of every published result; a grid does not change, so that all may share it. */
  static final TextureGrid PUBLISHED = new TextureGrid(STEPS);

  private final int steps;
  private final double[] clay;
  private final double[] silt;
  private final int[] clayPlace;

  TextureGrid(int steps) {
    this.steps = steps;
    clay = new double[steps * steps];
    silt = new double[steps * steps];
    clayPlace = new int[steps * steps];
    int cell = 0;
    for (int row = 0; row < steps; row++) {
      for (int k = 0; k < cellsInRow(row); k++) {
        double corner = (k & 1) == 0 ? 1 / 3.0 : 2 / 3.0;
        clay[cell] = (row + corner) / steps;
        int column = k / 2;
        silt[cell] = (column + corner) / steps;
        clayPlace[cell] = 2 * row + (k & 1);
        cell++;
      }
    }
  }

  int steps() {
    return steps;
  }

  int size() {
    return clay.length;
  }

  double clay(int cell) {
    return clay[cell];
  }

  double silt(int cell) {
    return silt[cell];
  }

  double sand(int cell) {
    // Never below zero by rounding: a centroid is at least a third of a step inside.
    return 1 - clay[cell] - silt[cell];
  }

  /** How many clay shares occur: two in each row. */
  int clayPlaces() {
    return 2 * steps;
  }

  /** Which of the clay shares that occur a cell has. */
  int clayPlace(int cell) {
    return clayPlace[cell];
  }

  /** The clay share of a place. */
  double clayAt(int place) {
    int row = place / 2;
    return (row + ((place & 1) == 0 ? 1 / 3.0 : 2 / 3.0)) / steps;
  }

  /** A row of equal clay has alternating upright and hanging triangles. */
  int cellsInRow(int row) {
    return 2 * (steps - row) - 1;
  }

  /** A likelihood at every cell; one of clay alone is evaluated twice for each row. */
  double[] evaluate(TextureLikelihood likelihood) {
    double[] values = new double[size()];
    if (likelihood instanceof ClayLikelihood byClay) {
      double[] byPlace = new double[clayPlaces()];
      for (int place = 0; place < byPlace.length; place++) {
        byPlace[place] = byClay.ofClay(clayAt(place));
      }
      for (int cell = 0; cell < values.length; cell++) {
        values[cell] = byPlace[clayPlace[cell]];
      }
    } else {
      for (int cell = 0; cell < values.length; cell++) {
        values[cell] = likelihood.at(clay[cell], silt[cell], sand(cell));
      }
    }
    return values;
  }

  /** The cell that holds a point inside the triangle. */
  int cellAt(double clayRatio, double siltRatio) {
    int row = Math.min(steps - 1, (int) (clayRatio * steps));
    int column = Math.min(steps - 1 - row, (int) (siltRatio * steps));
    boolean hanging =
        clayRatio * steps - row + siltRatio * steps - column > 1 && column < steps - 1 - row;
    int left = steps - row;
    return size() - left * left + 2 * column + (hanging ? 1 : 0);
  }
}
