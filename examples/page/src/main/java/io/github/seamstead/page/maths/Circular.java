package io.github.seamstead.page.maths;

/*
 * After fdlibm, release 5.3:
 * ====================================================
 * Copyright (C) 1993, 2004 by Sun Microsystems, Inc. All rights reserved.
 *
 * Developed at SunSoft, a Sun Microsystems, Inc. business.
 * Permission to use, copy, modify, and distribute this
 * software is freely granted, provided that this notice
 * is preserved.
 * ====================================================
 */

/** Sine, cosine and tangent. */
final class Circular {

  private static final double S1 = -1.66666666666666324348e-01;
  private static final double S2 = 8.33333333332248946124e-03;
  private static final double S3 = -1.98412698298579493134e-04;
  private static final double S4 = 2.75573137070700676789e-06;
  private static final double S5 = -2.50507602534068634195e-08;
  private static final double S6 = 1.58969099521155010221e-10;

  private static final double C1 = 4.16666666666666019037e-02;
  private static final double C2 = -1.38888888888741095749e-03;
  private static final double C3 = 2.48015872894767294178e-05;
  private static final double C4 = -2.75573143513906633035e-07;
  private static final double C5 = 2.08757232129817482790e-09;
  private static final double C6 = -1.13596475577881948265e-11;

  private static final double PIO4 = 7.85398163397448278999e-01;
  private static final double PIO4LO = 3.06161699786838301793e-17;
  private static final double[] T = {
    3.33333333333334091986e-01,
    1.33333333333201242699e-01,
    5.39682539762260521377e-02,
    2.18694882948595424599e-02,
    8.86323982359930005737e-03,
    3.59207910759131235356e-03,
    1.45620945432529025516e-03,
    5.88041240820264096874e-04,
    2.46463134818469906812e-04,
    7.81794442939557092300e-05,
    7.14072491382608190305e-05,
    -1.85586374855275456654e-05,
    2.59073051863633712884e-05
  };

  /** High half of the largest number that needs no reduction, pi / 4. */
  private static final int UNREDUCED = 0x3fe921fb;

  private Circular() {}

  static double sin(double x) {
    if ((Words.high(x) & 0x7fffffff) <= UNREDUCED) {
      return sine(x, 0, false);
    }
    Reduction r = Reduction.of(x);
    return switch (r.quarters() & 3) {
      case 0 -> sine(r.first(), r.rest(), true);
      case 1 -> cosine(r.first(), r.rest());
      case 2 -> -sine(r.first(), r.rest(), true);
      default -> -cosine(r.first(), r.rest());
    };
  }

  static double cos(double x) {
    if ((Words.high(x) & 0x7fffffff) <= UNREDUCED) {
      return cosine(x, 0);
    }
    Reduction r = Reduction.of(x);
    return switch (r.quarters() & 3) {
      case 0 -> cosine(r.first(), r.rest());
      case 1 -> -sine(r.first(), r.rest(), true);
      case 2 -> -cosine(r.first(), r.rest());
      default -> sine(r.first(), r.rest(), true);
    };
  }

  static double tan(double x) {
    if ((Words.high(x) & 0x7fffffff) <= UNREDUCED) {
      return tangent(x, 0, 1);
    }
    Reduction r = Reduction.of(x);
    return tangent(r.first(), r.rest(), 1 - ((r.quarters() & 1) << 1));
  }

  private static double sine(double x, double y, boolean tailed) {
    int ix = Words.high(x) & 0x7fffffff;
    if (ix < 0x3e400000) {
      return x;
    }
    double z = x * x;
    double v = z * x;
    double r = S2 + z * (S3 + z * (S4 + z * (S5 + z * S6)));
    return tailed ? x - ((z * (0.5 * y - v * r) - y) - v * S1) : x + v * (S1 + z * r);
  }

  private static double cosine(double x, double y) {
    int ix = Words.high(x) & 0x7fffffff;
    if (ix < 0x3e400000) {
      return 1;
    }
    double z = x * x;
    double r = z * (C1 + z * (C2 + z * (C3 + z * (C4 + z * (C5 + z * C6)))));
    if (!(ix >= 0x3FD33333)) {
      return 1 - (0.5 * z - (z * r - x * y));
    }
    double qx = ix > 0x3fe90000 ? 0.28125 : Words.of(ix - 0x00200000, 0);
    double hz = 0.5 * z - qx;
    double a = 1 - qx;
    return a - (hz - (z * r - x * y));
  }

  /** Tangent (sign 1) or -1 / tangent (sign -1). */
  private static double tangent(double first, double rest, int sign) {
    double x = first;
    double y = rest;
    int hx = Words.high(x);
    int ix = hx & 0x7fffffff;
    if (ix < 0x3e300000) {
      if (((ix | Words.low(x)) | (sign + 1)) == 0) {
        return 1 / Math.abs(x);
      }
      return sign == 1 ? x : minusInverse(x + y, x, y);
    }
    boolean large = ix >= 0x3FE59428;
    if (large) {
      if (hx < 0) {
        x = -x;
        y = -y;
      }
      x = (PIO4 - x) + (PIO4LO - y);
      y = 0;
    }
    double z = x * x;
    double w = z * z;
    double r = T[1] + w * (T[3] + w * (T[5] + w * (T[7] + w * (T[9] + w * T[11]))));
    double v = z * (T[2] + w * (T[4] + w * (T[6] + w * (T[8] + w * (T[10] + w * T[12])))));
    double s = z * x;
    r = y + z * (s * (r + v) + y);
    r += T[0] * s;
    w = x + r;
    if (large) {
      v = sign;
      return (1 - ((hx >> 30) & 2)) * (v - 2.0 * (x - (w * w / (w + v) - r)));
    }
    return sign == 1 ? w : minusInverse(w, x, r);
  }

  /** -1 / (x + y), where w is the rounded sum. */
  private static double minusInverse(double w, double x, double y) {
    double z = Words.cut(w);
    double v = y - (z - x);
    double a = -1 / w;
    double t = Words.cut(a);
    double s = 1 + t * z;
    return t + a * (s + t * v);
  }
}
