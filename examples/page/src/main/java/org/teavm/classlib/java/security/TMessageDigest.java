package org.teavm.classlib.java.security;

import io.github.seamstead.page.maths.Sha256;

/** Stands in for {@code java.security.MessageDigest} in the page: SHA-256 alone. */
public final class TMessageDigest {

  private final Sha256 digest = new Sha256();

  private TMessageDigest() {}

  /**
   * Gives a digest.
   *
   * @param algorithm its name
   * @return a digest of nothing
   * @throws java.security.NoSuchAlgorithmException if it is not SHA-256
   */
  public static TMessageDigest getInstance(String algorithm)
      throws java.security.NoSuchAlgorithmException {
    if (!algorithm.equals("SHA-256")) {
      throw new java.security.NoSuchAlgorithmException(algorithm);
    }
    return new TMessageDigest();
  }

  /**
   * Adds bytes.
   *
   * @param bytes what is digested
   */
  public void update(byte[] bytes) {
    digest.add(bytes);
  }

  /**
   * Ends the digest.
   *
   * @return 32 bytes
   */
  public byte[] digest() {
    return digest.end();
  }

  /**
   * Adds bytes and ends the digest.
   *
   * @param bytes what is digested last
   * @return 32 bytes
   */
  public byte[] digest(byte[] bytes) {
    update(bytes);
    return digest();
  }
}
