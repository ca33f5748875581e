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

/** Logarithms. */
final class Logarithms {

  private static final double LN2_HI = 0.6931471803691238;
  private static final double LN2_LO = 1.9082149292705877e-10;
  private static final double TWO54 = 0x1.0p54;
  private static final double LG1 = 0.6666666666666735;
  private static final double LG2 = 0.3999999999940942;
  private static final double LG3 = 0.2857142874366239;
  private static final double LG4 = 0.22222198432149784;
  private static final double LG5 = 0.1818357216161805;
  private static final double LG6 = 0.15313837699209373;
  private static final double LG7 = 0.14798198605116586;

  private static final double IVLN10 = 0.4342944819032518;
  private static final double LOG10_2HI = 0.30102999566361177;
  private static final double LOG10_2LO = 3.694239077158931e-13;

  private Logarithms() {}

  static double log(double given) {
    double x = given;
    int hx = Words.high(x);
    int k = 0;
    if (hx < 0x00100000) {
      if (x == 0) {
        return Double.NEGATIVE_INFINITY;
      }
      if (hx < 0) {
        return Double.NaN;
      }
      k = -54;
      x *= TWO54;
      hx = Words.high(x);
    }
    if (hx >= 0x7ff00000) {
      return x + x;
    }
    k += (hx >> 20) - 1023;
    hx &= 0x000fffff;
    int i = (hx + 0x95f64) & 0x100000;
    x = Words.withHigh(x, hx | (i ^ 0x3ff00000));
    k += i >> 20;
    return ofReduced(x - 1, k, hx);
  }

  private static double ofReduced(double f, int k, int hx) {
    double dk = k;
    if ((0x000fffff & (2 + hx)) < 3) {
      if (f == 0) {
        return k == 0 ? 0 : dk * LN2_HI + dk * LN2_LO;
      }
      double small = f * f * (0.5 - 0.3333333333333333 * f);
      return k == 0 ? f - small : dk * LN2_HI - ((small - dk * LN2_LO) - f);
    }
    double s = f / (2.0 + f);
    double z = s * s;
    double w = z * z;
    double t1 = w * (LG2 + w * (LG4 + w * LG6));
    double t2 = z * (LG1 + w * (LG3 + w * (LG5 + w * LG7)));
    double r = t2 + t1;
    if (((hx - 0x6147a) | (0x6b851 - hx)) > 0) {
      double hfsq = 0.5 * f * f;
      return k == 0
          ? f - (hfsq - s * (hfsq + r))
          : dk * LN2_HI - ((hfsq - (s * (hfsq + r) + dk * LN2_LO)) - f);
    }
    return k == 0 ? f - s * (f - r) : dk * LN2_HI - ((s * (f - r) - dk * LN2_LO) - f);
  }

  static double log10(double given) {
    double x = given;
    int hx = Words.high(x);
    int k = 0;
    if (hx < 0x00100000) {
      if (x == 0) {
        return Double.NEGATIVE_INFINITY;
      }
      if (hx < 0) {
        return Double.NaN;
      }
      k = -54;
      x *= TWO54;
      hx = Words.high(x);
    }
    if (hx >= 0x7ff00000) {
      return x + x;
    }
    k += (hx >> 20) - 1023;
    int i = k < 0 ? 1 : 0;
    double y = k + i;
    x = Words.withHigh(x, (hx & 0x000fffff) | ((0x3ff - i) << 20));
    double z = y * LOG10_2LO + IVLN10 * log(x);
    return z + y * LOG10_2HI;
  }

  static double log1p(double x) {
    int hx = Words.high(x);
    int ax = hx & 0x7fffffff;
    if (hx < 0x3FDA827A) {
      if (ax >= 0x3ff00000) {
        return x == -1 ? Double.NEGATIVE_INFINITY : Double.NaN;
      }
      if (ax < 0x3e200000) {
        return ax < 0x3c900000 ? x : x - x * x * 0.5;
      }
      if (hx > 0 || hx <= 0xbfd2bec3) {
        return ofOneMore(x, 1, 0, 0);
      }
    }
    if (hx >= 0x7ff00000) {
      return x + x;
    }
    double u = hx < 0x43400000 ? 1 + x : x;
    int hu = Words.high(u);
    int k = (hu >> 20) - 1023;
    double c = 0;
    if (hx < 0x43400000) {
      c = (k > 0 ? 1 - (u - x) : x - (u - 1)) / u;
    }
    hu &= 0x000fffff;
    if (hu < 0x6a09e) {
      u = Words.withHigh(u, hu | 0x3ff00000);
    } else {
      k += 1;
      u = Words.withHigh(u, hu | 0x3fe00000);
      hu = (0x00100000 - hu) >> 2;
    }
    return ofOneMore(u - 1, hu, k, c);
  }

  private static double ofOneMore(double f, int hu, int k, double c) {
    double hfsq = 0.5 * f * f;
    if (hu == 0) {
      if (f == 0) {
        return k == 0 ? 0 : k * LN2_HI + (c + k * LN2_LO);
      }
      double small = hfsq * (1 - 0.6666666666666666 * f);
      return k == 0 ? f - small : k * LN2_HI - ((small - (k * LN2_LO + c)) - f);
    }
    double s = f / (2.0 + f);
    double z = s * s;
    double r = z * (LG1 + z * (LG2 + z * (LG3 + z * (LG4 + z * (LG5 + z * (LG6 + z * LG7))))));
    return k == 0
        ? f - (hfsq - s * (hfsq + r))
        : k * LN2_HI - ((hfsq - (s * (hfsq + r) + (k * LN2_LO + c))) - f);
  }
}
