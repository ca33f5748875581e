package io.github.seamstead.page.maths;

/**
 * The digest SHA-256. Source: NIST, FIPS 180-4, Secure Hash Standard, 2015, sections 4.1.2, 4.2.2,
 * 5 and 6.2.
 */
public final class Sha256 {

  private static final int BLOCK = 64;

  /** The first 32 bits of the fractions of the cube roots of the first 64 primes. */
  private static final int[] K = new int[BLOCK];

  /** The first 32 bits of the fractions of the square roots of the first 8 primes. */
  private static final int[] START = new int[8];

  static {
    int prime = 2;
    for (int i = 0; i < BLOCK; i++) {
      K[i] = fraction(StrictMath.cbrt(prime));
      if (i < START.length) {
        START[i] = fraction(StrictMath.sqrt(prime));
      }
      prime = next(prime);
    }
  }

  private final int[] state = START.clone();
  private final byte[] block = new byte[BLOCK];
  private int filled;
  private long length;

  /** A digest of nothing. */
  public Sha256() {}

  private static int fraction(double root) {
    return (int) (long) ((root - Math.floor(root)) * 0x1.0p32);
  }

  private static int next(int prime) {
    int candidate = prime + 1;
    for (int divisor = 2; divisor < candidate; divisor++) {
      if (candidate % divisor == 0) {
        candidate++;
        divisor = 1;
      }
    }
    return candidate;
  }

  /**
   * Adds bytes.
   *
   * @param bytes what is digested
   */
  public void add(byte[] bytes) {
    length += bytes.length;
    for (byte b : bytes) {
      put(b);
    }
  }

  private void put(byte b) {
    block[filled++] = b;
    if (filled == BLOCK) {
      mix();
      filled = 0;
    }
  }

  /**
   * Ends the digest.
   *
   * @return 32 bytes
   */
  public byte[] end() {
    long bits = length * 8;
    put((byte) 0x80);
    while (filled != BLOCK - 8) {
      put((byte) 0);
    }
    for (int i = 7; i >= 0; i--) {
      put((byte) (bits >>> (8 * i)));
    }
    byte[] digest = new byte[32];
    for (int i = 0; i < digest.length; i++) {
      digest[i] = (byte) (state[i / 4] >>> (24 - 8 * (i % 4)));
    }
    return digest;
  }

  private void mix() {
    int[] w = new int[BLOCK];
    for (int t = 0; t < 16; t++) {
      int at = 4 * t;
      w[t] =
          (block[at] & 0xff) << 24
              | (block[at + 1] & 0xff) << 16
              | (block[at + 2] & 0xff) << 8
              | (block[at + 3] & 0xff);
    }
    for (int t = 16; t < BLOCK; t++) {
      int a = w[t - 2];
      int b = w[t - 15];
      int s1 = turned(a, 17) ^ turned(a, 19) ^ (a >>> 10);
      int s0 = turned(b, 7) ^ turned(b, 18) ^ (b >>> 3);
      w[t] = s1 + w[t - 7] + s0 + w[t - 16];
    }
    int[] v = state.clone();
    for (int t = 0; t < BLOCK; t++) {
      int e = v[4];
      int choice = (e & v[5]) ^ (~e & v[6]);
      int t1 = v[7] + (turned(e, 6) ^ turned(e, 11) ^ turned(e, 25)) + choice + K[t] + w[t];
      int a = v[0];
      int majority = (a & v[1]) ^ (a & v[2]) ^ (v[1] & v[2]);
      int t2 = (turned(a, 2) ^ turned(a, 13) ^ turned(a, 22)) + majority;
      System.arraycopy(v, 0, v, 1, 7);
      v[4] += t1;
      v[0] = t1 + t2;
    }
    for (int i = 0; i < v.length; i++) {
      state[i] += v[i];
    }
  }

  private static int turned(int x, int by) {
    return x >>> by | x << (32 - by);
  }
}
