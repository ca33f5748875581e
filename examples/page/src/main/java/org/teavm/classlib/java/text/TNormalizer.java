package org.teavm.classlib.java.text;

import org.teavm.jso.JSBody;

/** Stands in for {@code java.text.Normalizer} in the page: browsers normalise text themselves. */
public final class TNormalizer {

  private TNormalizer() {}

  /** The forms of Unicode Standard Annex 15. */
  public enum Form {
    /** Decomposed. */
    NFD,
    /** Composed. */
    NFC,
    /** Decomposed for compatibility. */
    NFKD,
    /** Composed for compatibility. */
    NFKC
  }

  /**
   * Normalises a text.
   *
   * @param text any text
   * @param form the form
   * @return the text in that form
   */
  public static String normalize(CharSequence text, Form form) {
    return normalize(text.toString(), form.name());
  }

  @JSBody(
      params = {"text", "form"},
      script = "return text.normalize(form);")
  private static native String normalize(String text, String form);
}
