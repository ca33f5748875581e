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

/** The remainder of an angle after multiples of a quarter turn, as a sum of two doubles. */
final class Reduction {

  private static final double TWO24 = 0x1.0p24;
  private static final double TWON24 = 0x1.0p-24;

  private static final double INVPIO2 = 0.6366197723675814;
  private static final double PIO2_1 = 1.5707963267341256;
  private static final double PIO2_1T = 6.077100506506192e-11;
  private static final double PIO2_2 = 6.077100506303966e-11;
  private static final double PIO2_2T = 2.0222662487959506e-21;
  private static final double PIO2_3 = 2.0222662487111665e-21;
  private static final double PIO2_3T = 8.4784276603689e-32;

  /** The bits of 2 / pi after the binary point, 24 in each. */
  private static final int[] TWO_OVER_PI = {
    0xA2F983, 0x6E4E44, 0x1529FC, 0x2757D1, 0xF534DD, 0xC0DB62, 0x95993C, 0x439041, 0xFE5163,
    0xABDEBB, 0xC561B7, 0x246E3A, 0x424DD2, 0xE00649, 0x2EEA09, 0xD1921C, 0xFE1DEB, 0x1CB129,
    0xA73EE8, 0x8235F5, 0x2EBB44, 0x84E99C, 0x7026B4, 0x5F7E41, 0x3991D6, 0x398353, 0x39F49C,
    0x845F8B, 0xBDF928, 0x3B1FF8, 0x97FFDE, 0x05980F, 0xEF2F11, 0x8B5A0A, 0x6D1F6D, 0x367ECF,
    0x27CB09, 0xB74F46, 0x3F669E, 0x5FEA2D, 0x7527BA, 0xC7EBE5, 0xF17B3D, 0x0739F7, 0x8A5292,
    0xEA6BFB, 0x5FB11F, 0x8D5D08, 0x560330, 0x46FC7B, 0x6BABF0, 0xCFBC20, 0x9AF436, 0x1DA9E3,
    0x91615E, 0xE61B08, 0x659985, 0x5F14A0, 0x68408D, 0xFFD880, 0x4D7327, 0x310606, 0x1556CA,
    0x73A8C9, 0x60E27B, 0xC08C6B
  };

  /** pi / 2, 24 bits in each. */
  private static final double[] PIO2 = {
    1.570796251296997,
    7.549789415861596e-8,
    5.390302529957765e-15,
    3.282003415807913e-22,
    1.270655753080676e-29
  };

  private static final int JK = 4;

  /** High halves of the first 32 multiples of pi / 2. */
  private static final int[] MULTIPLES = multiples();

  private final double first;
  private final double rest;
  private final int quarters;

  private Reduction(double first, double rest, int quarters) {
    this.first = first;
    this.rest = rest;
    this.quarters = quarters;
  }

  private static int[] multiples() {
    int[] high = new int[32];
    for (int i = 0; i < high.length; i++) {
      high[i] = Words.high((i + 1) * (Math.PI / 2));
    }
    return high;
  }

  double first() {
    return first;
  }

  double rest() {
    return rest;
  }

  /** How many quarter turns were taken off; the last two bits count. */
  int quarters() {
    return quarters;
  }

  private Reduction negated() {
    return new Reduction(-first, -rest, -quarters);
  }

  static Reduction of(double x) {
    int hx = Words.high(x);
    int ix = hx & 0x7fffffff;
    if (ix <= 0x3fe921fb) {
      return new Reduction(x, 0, 0);
    }
    if (ix >= 0x7ff00000) {
      return new Reduction(Double.NaN, Double.NaN, 0);
    }
    double t = Math.abs(x);
    Reduction positive = ix < 0x4002d97c ? one(t, ix) : ix <= 0x413921fb ? few(t, ix) : many(t, ix);
    return hx < 0 ? positive.negated() : positive;
  }

  /** Below 3 pi / 4: one quarter turn. */
  private static Reduction one(double t, int ix) {
    double z = t - PIO2_1;
    double tail = PIO2_1T;
    if (ix == 0x3ff921fb) {
      z -= PIO2_2;
      tail = PIO2_2T;
    }
    double y = z - tail;
    return new Reduction(y, (z - y) - tail, 1);
  }

  /** Up to 2^19 quarter turns. */
  private static Reduction few(double x, int ix) {
    int n = (int) (x * INVPIO2 + 0.5);
    double fn = n;
    double r = x - fn * PIO2_1;
    double w = fn * PIO2_1T;
    double y = r - w;
    if (n >= 32 || ix == MULTIPLES[n - 1]) {
      int j = ix >> 20;
      if (j - exponent(y) > 16) {
        double t = r;
        w = fn * PIO2_2;
        r = t - w;
        w = fn * PIO2_2T - ((t - r) - w);
        y = r - w;
        if (j - exponent(y) > 49) {
          t = r;
          w = fn * PIO2_3;
          r = t - w;
          w = fn * PIO2_3T - ((t - r) - w);
          y = r - w;
        }
      }
    }
    return new Reduction(y, (r - y) - w, n);
  }

  private static int exponent(double y) {
    return (Words.high(y) >> 20) & 0x7ff;
  }

  private static Reduction many(double x, int ix) {
    int e0 = (ix >> 20) - 1046;
    double z = Words.of(ix - (e0 << 20), Words.low(x));
    double[] tx = new double[3];
    for (int i = 0; i < 2; i++) {
      tx[i] = (int) z;
      z = (z - tx[i]) * TWO24;
    }
    tx[2] = z;
    int nx = 3;
    while (tx[nx - 1] == 0) {
      nx--;
    }
    return new Payne(tx, e0, nx).reduce();
  }

  /** The reduction of large angles by the bits of 2 / pi that matter (Payne and Hanek). */
  private static final class Payne {

    private final double[] x;
    private final int jx;
    private final int jv;
    private final double[] f = new double[20];
    private final double[] q = new double[20];
    private final int[] iq = new int[20];
    private int q0;
    private int jz = JK;
    private int n;
    private int ih;
    private double z;

    Payne(double[] x, int e0, int nx) {
      this.x = x;
      jx = nx - 1;
      jv = Math.max(0, (e0 - 3) / 24);
      q0 = e0 - 24 * (jv + 1);
      int j = jv - jx;
      for (int i = 0; i <= jx + JK; i++, j++) {
        f[i] = j < 0 ? 0 : TWO_OVER_PI[j];
      }
      for (int i = 0; i <= JK; i++) {
        product(i);
      }
    }

    private void product(int i) {
      double sum = 0;
      for (int j = 0; j <= jx; j++) {
        sum += x[j] * f[jx + i - j];
      }
      q[i] = sum;
    }

    Reduction reduce() {
      distill();
      while (z == 0 && isMoreNeeded()) {
        distill();
      }
      chop();
      return sum();
    }

    private void distill() {
      z = q[jz];
      for (int i = 0, j = jz; j > 0; i++, j--) {
        double fw = (int) (TWON24 * z);
        iq[i] = (int) (z - TWO24 * fw);
        z = q[j - 1] + fw;
      }
      z = Powers.scaled(z, q0);
      z -= 8.0 * Math.floor(z * 0.125);
      n = (int) z;
      z -= n;
      ih = 0;
      if (q0 > 0) {
        int i = iq[jz - 1] >> (24 - q0);
        n += i;
        iq[jz - 1] -= i << (24 - q0);
        ih = iq[jz - 1] >> (23 - q0);
      } else if (q0 == 0) {
        ih = iq[jz - 1] >> 23;
      } else if (z >= 0.5) {
        ih = 2;
      }
      if (ih > 0) {
        complement();
      }
    }

    private void complement() {
      n += 1;
      boolean carry = false;
      for (int i = 0; i < jz; i++) {
        int j = iq[i];
        if (carry) {
          iq[i] = 0xffffff - j;
        } else if (j != 0) {
          carry = true;
          iq[i] = 0x1000000 - j;
        }
      }
      if (q0 == 1) {
        iq[jz - 1] &= 0x7fffff;
      } else if (q0 == 2) {
        iq[jz - 1] &= 0x3fffff;
      }
      if (ih == 2) {
        z = 1 - z;
        if (carry) {
          z -= Powers.scaled(1, q0);
        }
      }
    }

    private boolean isMoreNeeded() {
      int j = 0;
      for (int i = jz - 1; i >= JK; i--) {
        j |= iq[i];
      }
      if (j != 0) {
        return false;
      }
      int k = 1;
      while (iq[JK - k] == 0) {
        k++;
      }
      for (int i = jz + 1; i <= jz + k; i++) {
        f[jx + i] = TWO_OVER_PI[jv + i];
        product(i);
      }
      jz += k;
      return true;
    }

    private void chop() {
      if (z == 0) {
        jz -= 1;
        q0 -= 24;
        while (iq[jz] == 0) {
          jz--;
          q0 -= 24;
        }
        return;
      }
      z = Powers.scaled(z, -q0);
      if (z >= TWO24) {
        double fw = (int) (TWON24 * z);
        iq[jz] = (int) (z - TWO24 * fw);
        jz += 1;
        q0 += 24;
        iq[jz] = (int) fw;
      } else {
        iq[jz] = (int) z;
      }
    }

    private Reduction sum() {
      double fw = Powers.scaled(1, q0);
      for (int i = jz; i >= 0; i--) {
        q[i] = fw * iq[i];
        fw *= TWON24;
      }
      double[] fq = new double[20];
      for (int i = jz; i >= 0; i--) {
        double part = 0;
        for (int k = 0; k <= JK && k <= jz - i; k++) {
          part += PIO2[k] * q[i + k];
        }
        fq[jz - i] = part;
      }
      fw = 0;
      for (int i = jz; i >= 0; i--) {
        fw += fq[i];
      }
      double first = ih == 0 ? fw : -fw;
      fw = fq[0] - fw;
      for (int i = 1; i <= jz; i++) {
        fw += fq[i];
      }
      return new Reduction(first, ih == 0 ? fw : -fw, n & 7);
    }
  }
}
