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

  private static final double PIO2_HI = 1.57079632679489655800e+00;
  private static final double PIO2_LO = 6.12323399573676603587e-17;
  private static final double PIO4_HI = 7.85398163397448278999e-01;
  private static final double PI_LO = 1.2246467991473531772E-16;

  private static final double PS0 = 1.66666666666666657415e-01;
  private static final double PS1 = -3.25565818622400915405e-01;
  private static final double PS2 = 2.01212532134862925881e-01;
  private static final double PS3 = -4.00555345006794114027e-02;
  private static final double PS4 = 7.91534994289814532176e-04;
  private static final double PS5 = 3.47933107596021167570e-05;
  private static final double QS1 = -2.40339491173441421878e+00;
  private static final double QS2 = 2.02094576023350569471e+00;
  private static final double QS3 = -6.88283971605453293030e-01;
  private static final double QS4 = 7.70381505559019352791e-02;

  private static final double[] ATANHI = {
    4.63647609000806093515e-01,
    7.85398163397448278999e-01,
    9.82793723247329054082e-01,
    1.57079632679489655800e+00
  };

  private static final double[] ATANLO = {
    2.26987774529616870924e-17,
    3.06161699786838301793e-17,
    1.39033110312309984516e-17,
    6.12323399573676603587e-17
  };

  private static final double[] AT = {
    3.33333333333329318027e-01,
    -1.99999999998764832476e-01,
    1.42857142725034663711e-01,
    -1.11111104054623557880e-01,
    9.09088713343650656196e-02,
    -7.69187620504482999495e-02,
    6.66107313738753120669e-02,
    -5.83357013379057348645e-02,
    4.97687799461593236017e-02,
    -3.65315727442169155270e-02,
    1.62858201153657823623e-02
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
