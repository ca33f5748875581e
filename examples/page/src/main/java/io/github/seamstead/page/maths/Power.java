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

/** A number to the power of another. */
final class Power {

  private static final double[] BP = {1, 1.5};
  private static final double[] DP_H = {0, 0.5849624872207642};
  private static final double[] DP_L = {0, 1.350039202129749e-8};
  private static final double L1 = 0.5999999999999946;
  private static final double L2 = 0.4285714285785502;
  private static final double L3 = 0.33333332981837743;
  private static final double L4 = 0.272728123808534;
  private static final double L5 = 0.23066074577556175;
  private static final double L6 = 0.20697501780033842;
  private static final double LG2 = 0.6931471805599453;
  private static final double LG2_H = 0.6931471824645996;
  private static final double LG2_L = -1.904654299957768e-9;
  private static final double OVT = 8.008566259537294e-17;
  private static final double CP = 0.9617966939259756;
  private static final double CP_H = 0.9617967009544373;
  private static final double CP_L = -7.028461650952758e-9;
  private static final double IVLN2 = 1.4426950408889634;
  private static final double IVLN2_H = 1.4426950216293335;
  private static final double IVLN2_L = 1.9259629911266175e-8;

  /** The logarithm to base 2 of the base, as a sum of two doubles. */
  private double t1;

  private double t2;

  private Power() {}

  static double of(double x, double y) {
    if (y == 0) {
      return 1;
    }
    if (Double.isNaN(x) || Double.isNaN(y)) {
      return Double.NaN;
    }
    double ax = Math.abs(x);
    if (Double.isInfinite(y)) {
      return ax == 1 ? Double.NaN : (ax > 1) == (y > 0) ? Double.POSITIVE_INFINITY : 0;
    }
    if (y == 1) {
      return x;
    }
    if (y == -1) {
      return 1 / x;
    }
    if (y == 2) {
      return x * x;
    }
    int yisint = Words.high(x) < 0 ? whole(Math.abs(y)) : 0;
    if (ax == 0 || ax == 1 || Double.isInfinite(ax)) {
      return special(x, ax, y, yisint);
    }
    if (x < 0 && yisint == 0) {
      return Double.NaN;
    }
    if (y == 0.5) {
      return Math.sqrt(x);
    }
    double sign = x < 0 && yisint == 1 ? -1 : 1;
    return new Power().general(ax, y, sign);
  }

  /** 0 for a number that is not whole, 1 for an odd one, 2 for an even one. */
  private static int whole(double y) {
    if (y >= 0x1.0p53) {
      return 2;
    }
    if (y != Math.floor(y)) {
      return 0;
    }
    return y % 2 == 1 ? 1 : 2;
  }

  private static double special(double x, double ax, double y, int yisint) {
    double z = y < 0 ? 1 / ax : ax;
    if (Words.high(x) >= 0) {
      return z;
    }
    if (ax == 1 && yisint == 0) {
      return Double.NaN;
    }
    return yisint == 1 ? -z : z;
  }

  private double general(double ax, double y, double sign) {
    int ix = Words.high(ax);
    int iy = Words.high(y) & 0x7fffffff;
    if (iy > 0x41e00000) {
      boolean far = iy > 0x43f00000;
      if (ix < 0x3fefffff || (far && ix <= 0x3fefffff)) {
        return far && y < 0 ? Double.POSITIVE_INFINITY : y < 0 ? sign / 0.0 : far ? 0 : sign * 0;
      }
      if (ix > 0x3ff00000 || far) {
        return far && y > 0 ? Double.POSITIVE_INFINITY : y > 0 ? sign / 0.0 : far ? 0 : sign * 0;
      }
      nearOne(ax);
    } else {
      logarithm(ax, ix);
    }
    double y1 = Words.cut(y);
    double low = (y - y1) * t1 + y * t2;
    double high = y1 * t1;
    double z = low + high;
    int j = Words.high(z);
    if (j >= 0x40900000) {
      if (z != 1024 || low + OVT > z - high) {
        return sign / 0.0;
      }
    } else if ((j & 0x7fffffff) >= 0x4090cc00) {
      if (z != -1075 || low <= z - high) {
        return sign * 0;
      }
    }
    return sign * exponential(high, low, j);
  }

  private void nearOne(double ax) {
    double t = ax - 1;
    double w = (t * t) * (0.5 - t * (0.3333333333333333 - t * 0.25));
    double u = IVLN2_H * t;
    double v = t * IVLN2_L - w * IVLN2;
    t1 = Words.cut(u + v);
    t2 = v - (t1 - u);
  }

  private void logarithm(double base, int high) {
    double ax = base;
    int ix = high;
    int n = 0;
    if (ix < 0x00100000) {
      ax *= 0x1.0p53;
      n = -53;
      ix = Words.high(ax);
    }
    n += (ix >> 20) - 0x3ff;
    int j = ix & 0x000fffff;
    ix = j | 0x3ff00000;
    int k = 0;
    if (j > 0x3988E && j < 0xBB67A) {
      k = 1;
    } else if (j >= 0xBB67A) {
      n += 1;
      ix -= 0x00100000;
    }
    ax = Words.withHigh(ax, ix);
    double u = ax - BP[k];
    double v = 1 / (ax + BP[k]);
    double ss = u * v;
    double sh = Words.cut(ss);
    double th = Words.of(((ix >> 1) | 0x20000000) + 0x00080000 + (k << 18), 0);
    double tl = ax - (th - BP[k]);
    double sl = v * ((u - sh * th) - sh * tl);
    double s2 = ss * ss;
    double r = s2 * s2 * (L1 + s2 * (L2 + s2 * (L3 + s2 * (L4 + s2 * (L5 + s2 * L6)))));
    r += sl * (sh + ss);
    s2 = sh * sh;
    th = Words.cut(3.0 + s2 + r);
    tl = r - ((th - 3.0) - s2);
    u = sh * th;
    v = sl * th + tl * ss;
    double ph = Words.cut(u + v);
    double pl = v - (ph - u);
    double zh = CP_H * ph;
    double zl = CP_L * ph + pl * CP + DP_L[k];
    double t = n;
    t1 = Words.cut(((zh + zl) + DP_H[k]) + t);
    t2 = zl - (((t1 - t) - DP_H[k]) - zh);
  }

  /** Two to the power of a sum of two doubles. */
  private static double exponential(double highPart, double low, int j) {
    double high = highPart;
    int i = j & 0x7fffffff;
    int n = 0;
    if (i > 0x3fe00000) {
      int k = (i >> 20) - 0x3ff;
      n = j + (0x00100000 >> (k + 1));
      k = ((n & 0x7fffffff) >> 20) - 0x3ff;
      double t = Words.of(n & ~(0x000fffff >> k), 0);
      n = ((n & 0x000fffff) | 0x00100000) >> (20 - k);
      if (j < 0) {
        n = -n;
      }
      high -= t;
    }
    double t = Words.cut(low + high);
    double u = t * LG2_H;
    double v = (low - (t - high)) * LG2 + t * LG2_L;
    double z = u + v;
    double w = v - (z - u);
    double p = Powers.shared(z, z * z);
    double r = (z * p) / (p - 2.0) - (w + z * w);
    z = 1 - (r - z);
    int scaled = Words.high(z) + (n << 20);
    return (scaled >> 20) <= 0 ? Powers.scaled(z, n) : Words.withHigh(z, scaled);
  }
}
