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

/** The inverse circular functions. */
final class Arcs {

  private static final double PIO2_HI = 1.5707963267948966;
  private static final double PIO2_LO = 6.123233995736766e-17;
  private static final double PIO4_HI = 0.7853981633974483;
  private static final double PI_LO = 1.2246467991473532e-16;

  private static final double PS0 = 0.16666666666666666;
  private static final double PS1 = -0.3255658186224009;
  private static final double PS2 = 0.20121253213486293;
  private static final double PS3 = -0.04005553450067941;
  private static final double PS4 = 0.0007915349942898145;
  private static final double PS5 = 3.479331075960212e-5;
  private static final double QS1 = -2.403394911734414;
  private static final double QS2 = 2.0209457602335057;
  private static final double QS3 = -0.6882839716054533;
  private static final double QS4 = 0.07703815055590194;

  private static final double[] ATANHI = {
    0.4636476090008061, 0.7853981633974483, 0.982793723247329, 1.5707963267948966
  };

  private static final double[] ATANLO = {
    2.2698777452961687e-17, 3.061616997868383e-17, 1.3903311031230998e-17, 6.123233995736766e-17
  };

  private static final double[] AT = {
    0.3333333333333293,
    -0.19999999999876483,
    0.14285714272503466,
    -0.11111110405462356,
    0.09090887133436507,
    -0.0769187620504483,
    0.06661073137387531,
    -0.058335701337905735,
    0.049768779946159324,
    -0.036531572744216916,
    0.016285820115365782
  };

  private Arcs() {}

  private static double p(double t) {
    return t * (PS0 + t * (PS1 + t * (PS2 + t * (PS3 + t * (PS4 + t * PS5)))));
  }

  private static double q(double t) {
    return 1 + t * (QS1 + t * (QS2 + t * (QS3 + t * QS4)));
  }

  static double asin(double x) {
    int hx = Words.high(x);
    int ix = hx & 0x7fffffff;
    if (ix >= 0x3ff00000) {
      boolean one = ((ix - 0x3ff00000) | Words.low(x)) == 0;
      return one ? x * PIO2_HI + x * PIO2_LO : Double.NaN;
    }
    if (ix < 0x3e400000) {
      return x;
    }
    if (ix < 0x3fe00000) {
      double t = x * x;
      return x + x * (p(t) / q(t));
    }
    double t = (1 - Math.abs(x)) * 0.5;
    double s = Math.sqrt(t);
    double ratio = p(t) / q(t);
    double arc;
    if (ix >= 0x3FEF3333) {
      arc = PIO2_HI - (2.0 * (s + s * ratio) - PIO2_LO);
    } else {
      double w = Words.cut(s);
      double c = (t - w * w) / (s + w);
      double low = 2.0 * s * ratio - (PIO2_LO - 2.0 * c);
      double high = PIO4_HI - 2.0 * w;
      arc = PIO4_HI - (low - high);
    }
    return hx > 0 ? arc : -arc;
  }

  static double acos(double x) {
    int hx = Words.high(x);
    int ix = hx & 0x7fffffff;
    if (ix >= 0x3ff00000) {
      if (((ix - 0x3ff00000) | Words.low(x)) == 0) {
        return hx > 0 ? 0 : Math.PI + 2.0 * PIO2_LO;
      }
      return Double.NaN;
    }
    if (ix < 0x3fe00000) {
      if (ix <= 0x3c600000) {
        return PIO2_HI + PIO2_LO;
      }
      double z = x * x;
      double r = p(z) / q(z);
      return PIO2_HI - (x - (PIO2_LO - x * r));
    }
    if (hx < 0) {
      double z = (1 + x) * 0.5;
      double s = Math.sqrt(z);
      double w = p(z) / q(z) * s - PIO2_LO;
      return Math.PI - 2.0 * (s + w);
    }
    double z = (1 - x) * 0.5;
    double s = Math.sqrt(z);
    double df = Words.cut(s);
    double c = (z - df * df) / (s + df);
    double w = p(z) / q(z) * s + c;
    return 2.0 * (df + w);
  }

  static double atan(double given) {
    double x = given;
    int hx = Words.high(x);
    int ix = hx & 0x7fffffff;
    if (ix >= 0x44100000) {
      if (Double.isNaN(x)) {
        return x;
      }
      return hx > 0 ? ATANHI[3] + ATANLO[3] : -ATANHI[3] - ATANLO[3];
    }
    int id = -1;
    if (ix < 0x3fdc0000) {
      if (ix < 0x3e200000) {
        return x;
      }
    } else {
      x = Math.abs(x);
      if (ix < 0x3fe60000) {
        id = 0;
        x = (2.0 * x - 1) / (2.0 + x);
      } else if (ix < 0x3ff30000) {
        id = 1;
        x = (x - 1) / (x + 1);
      } else if (ix < 0x40038000) {
        id = 2;
        x = (x - 1.5) / (1 + 1.5 * x);
      } else {
        id = 3;
        x = -1.0 / x;
      }
    }
    double z = x * x;
    double w = z * z;
    double s1 = z * (AT[0] + w * (AT[2] + w * (AT[4] + w * (AT[6] + w * (AT[8] + w * AT[10])))));
    double s2 = w * (AT[1] + w * (AT[3] + w * (AT[5] + w * (AT[7] + w * AT[9]))));
    if (id < 0) {
      return x - x * (s1 + s2);
    }
    double arc = ATANHI[id] - ((x * (s1 + s2) - ATANLO[id]) - x);
    return hx < 0 ? -arc : arc;
  }

  static double atan2(double y, double x) {
    if (Double.isNaN(x) || Double.isNaN(y)) {
      return Double.NaN;
    }
    if (x == 1) {
      return atan(y);
    }
    boolean up = Words.high(y) >= 0;
    boolean right = Words.high(x) >= 0;
    double arc;
    if (y != 0 && (x == 0 || (Double.isInfinite(y) && !Double.isInfinite(x)))) {
      arc = PIO2_HI;
    } else {
      double steep = slope(y, x, right);
      arc = right ? steep : Math.PI - (steep - PI_LO);
    }
    return up ? arc : -arc;
  }

  /** The arc between the ray and the nearer half of the x axis' line, from 0 to pi / 2. */
  private static double slope(double y, double x, boolean right) {
    double tall = Math.abs(y);
    double wide = Math.abs(x);
    if (tall == 0) {
      return 0;
    }
    if (Double.isInfinite(wide)) {
      return Double.isInfinite(tall) ? PIO4_HI : 0;
    }
    int k = (Words.high(tall) - Words.high(wide)) >> 20;
    if (k > 60) {
      return PIO2_HI + 0.5 * PI_LO;
    }
    return !right && k < -60 ? 0 : atan(Math.abs(y / x));
  }
}
