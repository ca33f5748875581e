package io.github.seamstead.api.book;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** A few characters that tell the results of one plan from those of another. */
final class Digest {

  private static final int SHOWN = 6;

  private Digest() {}

  /** The first six hexadecimal digits of the text's SHA-256. */
  static String of(String text) {
    try {
      byte[] all =
          MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
      return HexFormat.of().formatHex(all).substring(0, SHOWN);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }
}
