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

/** Powers and roots. */
final class Powers {

  private static final double P1 = 0.16666666666666602;
  private static final double P2 = -0.0027777777777015593;
  private static final double P3 = 6.613756321437934e-5;
  private static final double P4 = -1.6533902205465252e-6;
  private static final double P5 = 4.1381367970572385e-8;

  private static final double LN2_HI = 0.6931471803691238;
  private static final double LN2_LO = 1.9082149292705877e-10;
  private static final double INVLN2 = 1.4426950408889634;
  private static final double O_THRESHOLD = 709.782712893384;
  private static final double U_THRESHOLD = -745.1332191019411;

  private static final int B1 = 715094163;
  private static final int B2 = 696219795;
  private static final double C = 0.5428571428571428;
  private static final double D = -0.7053061224489796;
  private static final double E = 1.4142857142857144;
  private static final double F = 1.6071428571428572;
  private static final double G = 0.35714285714285715;

  private Powers() {}

  /** x * 2^n, rounded once. */
  static double scaled(double given, int n) {
    double x = given;
    int hx = Words.high(x);
    int k = (hx & 0x7ff00000) >> 20;
    if (k == 0) {
      if (x == 0) {
        return x;
      }
      x *= 0x1.0p54;
      hx = Words.high(x);
      k = ((hx & 0x7ff00000) >> 20) - 54;
      if (n < -50000) {
        return x * 0;
      }
    }
    if (k == 0x7ff) {
      return x + x;
    }
    k += n;
    if (k > 0x7fe || n > 50000) {
      return Math.copySign(Double.POSITIVE_INFINITY, x);
    }
    if (k > 0) {
      return Words.withHigh(x, (hx & 0x800fffff) | (k << 20));
    }
    if (k <= -54) {
      return Math.copySign(0, x);
    }
    return Words.withHigh(x, (hx & 0x800fffff) | ((k + 54) << 20)) * 0x1.0p-54;
  }

  /** The polynomial that exp and pow share. */
  static double shared(double x, double t) {
    return x - t * (P1 + t * (P2 + t * (P3 + t * (P4 + t * P5))));
  }

  static double exp(double given) {
    double x = given;
    if (Double.isNaN(x) || x > O_THRESHOLD) {
      return Double.isNaN(x) ? x : Double.POSITIVE_INFINITY;
    }
    if (x < U_THRESHOLD) {
      return 0;
    }
    int hx = Words.high(x);
    boolean negative = hx < 0;
    hx &= 0x7fffffff;
    double hi = 0;
    double lo = 0;
    int k = 0;
    if (hx > 0x3fd62e42) {
      if (hx < 0x3FF0A2B2) {
        hi = negative ? x + LN2_HI : x - LN2_HI;
        lo = negative ? -LN2_LO : LN2_LO;
        k = negative ? -1 : 1;
      } else {
        k = (int) (INVLN2 * x + (negative ? -0.5 : 0.5));
        hi = x - k * LN2_HI;
        lo = k * LN2_LO;
      }
      x = hi - lo;
    } else if (hx < 0x3e300000) {
      return 1 + x;
    }
    double c = shared(x, x * x);
    if (k == 0) {
      return 1 - ((x * c) / (c - 2.0) - x);
    }
    double y = 1 - ((lo - (x * c) / (2.0 - c)) - hi);
    if (k >= -1021) {
      return Words.withHigh(y, Words.high(y) + (k << 20));
    }
    return Words.withHigh(y, Words.high(y) + ((k + 1000) << 20)) * 0x1.0p-1000;
  }

  static double cbrt(double given) {
    double x = Math.abs(given);
    int hx = Words.high(x);
    if (hx >= 0x7ff00000 || x == 0) {
      return given;
    }
    double t;
    if (hx < 0x00100000) {
      t = 0x1.0p54 * x;
      t = Words.withHigh(t, Words.high(t) / 3 + B2);
    } else {
      t = Words.of(hx / 3 + B1, 0);
    }
    double r = t * t / x;
    double s = C + r * t;
    t *= G + F / (s + E + D / s);
    t = Words.of(Words.high(t) + 1, 0);
    s = t * t;
    r = x / s;
    double w = t + t;
    r = (r - t) / (w + r);
    t = t + t * r;
    return given < 0 ? -t : t;
  }

  static double hypot(double x, double y) {
    double a = Math.abs(x);
    double b = Math.abs(y);
    if (Double.isInfinite(a) || Double.isInfinite(b)) {
      return Double.POSITIVE_INFINITY;
    }
    if (Double.isNaN(a) || Double.isNaN(b)) {
      return Double.NaN;
    }
    if (b > a) {
      double larger = b;
      b = a;
      a = larger;
    }
    int ha = Words.high(a);
    int hb = Words.high(b);
    if (ha - hb > 0x3c00000) {
      return a + b;
    }
    int k = 0;
    if (ha > 0x5f300000) {
      ha -= 0x25800000;
      hb -= 0x25800000;
      k = 600;
      a = Words.withHigh(a, ha);
      b = Words.withHigh(b, hb);
    }
    if (hb < 0x20b00000) {
      if (b == 0) {
        return a;
      }
      if (hb < 0x00100000) {
        a *= 0x1.0p1022;
        b *= 0x1.0p1022;
        k -= 1022;
        ha = Words.high(a);
        hb = Words.high(b);
      } else {
        ha += 0x25800000;
        hb += 0x25800000;
        k -= 600;
        a = Words.withHigh(a, ha);
        b = Words.withHigh(b, hb);
      }
    }
    double w = length(a, b, ha, hb);
    return k == 0 ? w : w * Words.of(0x3ff00000 + (k << 20), 0);
  }

  private static double length(double a, double b, int ha, int hb) {
    double w = a - b;
    if (w > b) {
      double t1 = Words.of(ha, 0);
      double t2 = a - t1;
      return Math.sqrt(t1 * t1 - (b * -b - t2 * (a + t1)));
    }
    double twice = a + a;
    double y1 = Words.of(hb, 0);
    double y2 = b - y1;
    double t1 = Words.of(ha + 0x00100000, 0);
    double t2 = twice - t1;
    return Math.sqrt(t1 * y1 - (w * -w - (t1 * y2 + t2 * b)));
  }
}
