package io.github.seamstead.geometry.layout.internal;

/** The few best places seen for a piece, in rising order of loss. */
final class Kept {

  private final int most;
  final double[] loss;
  final double[] x;
  final double[] y;
  final double[] angle;
  final int[] region;
  int count;

  Kept(int most) {
    this.most = most;
    loss = new double[most + 1];
    x = new double[most + 1];
    y = new double[most + 1];
    angle = new double[most + 1];
    region = new int[most + 1];
  }

  /** What a place must fall below to be kept. */
  double limit() {
    return count < most ? Double.POSITIVE_INFINITY : loss[most - 1];
  }

  /** Keeps a place; {@code extra} takes one more than the usual number. */
  void insert(double itsLoss, int r, double px, double py, double turn, boolean extra) {
    int limit = extra ? most + 1 : most;
    int at = count < limit ? count++ : limit - 1;
    while (at > 0 && loss[at - 1] > itsLoss) {
      loss[at] = loss[at - 1];
      region[at] = region[at - 1];
      x[at] = x[at - 1];
      y[at] = y[at - 1];
      angle[at] = angle[at - 1];
      at--;
    }
    set(at, itsLoss, px, py, turn);
    region[at] = r;
  }

  /** Moves a kept place. */
  void set(int at, double itsLoss, double px, double py, double turn) {
    loss[at] = itsLoss;
    x[at] = px;
    y[at] = py;
    angle[at] = turn;
  }
}
