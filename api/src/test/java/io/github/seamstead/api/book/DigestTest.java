package io.github.seamstead.api.book;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class DigestTest {

  /**
   * SHA-256 of "abc" and of the empty text, FIPS 180-4 example and its empty case (from memory).
   */
  @Test
  void showsTheFirstSixDigitsOfTheHash() {
    assertThat(Digest.of("abc")).isEqualTo("ba7816");
    assertThat(Digest.of("")).isEqualTo("e3b0c4");
  }

  @Test
  void oneLetterMakesAnotherDigest() {
    assertThat(Digest.of("plan")).isEqualTo(Digest.of("plan")).isNotEqualTo(Digest.of("plam"));
    assertThat(Digest.of("\u05d0\u6c34")).matches("[0-9a-f]{6}");
  }
}
