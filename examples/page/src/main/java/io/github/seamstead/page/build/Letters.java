package io.github.seamstead.page.build;

/**
 * Bytes as letters of ASCII that may stand in a script of HTML: 13 bits in two of 91 letters, 8 %
 * shorter than base64. In front stands the count of the bytes and a space. The page's own script
 * reads it.
 */
final class Letters {

  private static final int BASE = 91;
  private static final int BITS = 13;
  private static final String ALPHABET = alphabet();

  private Letters() {}

  /** All that are printed, without those that end a script, a text or begin an escape. */
  private static String alphabet() {
    StringBuilder letters = new StringBuilder();
    for (char c = '!'; c <= '~'; c++) {
      if (c != '<' && c != '"' && c != '\\') {
        letters.append(c);
      }
    }
    return letters.toString();
  }

  static String of(byte[] bytes) {
    StringBuilder text = new StringBuilder(bytes.length * 16 / BITS + 20);
    text.append(bytes.length).append(' ');
    int held = 0;
    int count = 0;
    for (byte b : bytes) {
      held |= (b & 0xff) << count;
      count += 8;
      if (count >= BITS) {
        put(held & ((1 << BITS) - 1), text);
        held >>>= BITS;
        count -= BITS;
      }
    }
    if (count > 0) {
      put(held, text);
    }
    return text.toString();
  }

  private static void put(int value, StringBuilder text) {
    text.append(ALPHABET.charAt(value % BASE)).append(ALPHABET.charAt(value / BASE));
  }
}
