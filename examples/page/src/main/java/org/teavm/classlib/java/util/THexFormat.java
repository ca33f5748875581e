package org.teavm.classlib.java.util;

/** Stands in for {@code java.util.HexFormat} in the page. */
public final class THexFormat {

  private static final String DIGITS = "0123456789abcdef";

  private THexFormat() {}

  /**
   * Gives the plain format.
   *
   * @return lower case, nothing between
   */
  public static THexFormat of() {
    return new THexFormat();
  }

  /**
   * Writes bytes.
   *
   * @param bytes any bytes
   * @return two digits for each
   */
  public String formatHex(byte[] bytes) {
    StringBuilder text = new StringBuilder();
    for (byte b : bytes) {
      text.append(DIGITS.charAt((b >> 4) & 15)).append(DIGITS.charAt(b & 15));
    }
    return text.toString();
  }
}
