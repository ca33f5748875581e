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

  private static final double S1 = -0.16666666666666632;
  private static final double S2 = 0.00833333333332249;
  private static final double S3 = -0.0001984126982985795;
  private static final double S4 = 2.7557313707070068e-6;
  private static final double S5 = -2.5050760253406863e-8;
  private static final double S6 = 1.58969099521155e-10;

  private static final double C1 = 0.0416666666666666;
  private static final double C2 = -0.001388888888887411;
  private static final double C3 = 2.480158728947673e-5;
  private static final double C4 = -2.7557314351390663e-7;
  private static final double C5 = 2.087572321298175e-9;
  private static final double C6 = -1.1359647557788195e-11;

  private static final double PIO4 = 0.7853981633974483;
  private static final double PIO4LO = 3.061616997868383e-17;
  private static final double[] T = {
    0.3333333333333341,
    0.13333333333320124,
    0.05396825397622605,
    0.021869488294859542,
    0.0088632398235993,
    0.0035920791075913124,
    0.0014562094543252903,
    0.0005880412408202641,
    0.0002464631348184699,
    7.817944429395571e-5,
    7.140724913826082e-5,
    -1.8558637485527546e-5,
    2.590730518636337e-5
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
