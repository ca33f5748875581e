package io.github.seamstead.page;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.seamstead.page.maths.Sha256;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class Sha256Test {

  @Test
  void publishedExamples() {
    // NIST, Cryptographic Standards and Guidelines, example values of SHA-256: one and two blocks.
    assertThat(hex("abc"))
        .isEqualTo("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
    assertThat(hex("abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq"))
        .isEqualTo("248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1");
  }

  private static String hex(String text) {
    Sha256 digest = new Sha256();
    digest.add(text.getBytes(StandardCharsets.US_ASCII));
    return HexFormat.of().formatHex(digest.end());
  }

  @Test
  void everyLengthIsAsThePlatformHasIt() throws NoSuchAlgorithmException {
    SplittableRandom random = new SplittableRandom(256);
    for (int length = 0; length < 300; length++) {
      byte[] bytes = new byte[length];
      random.nextBytes(bytes);
      Sha256 digest = new Sha256();
      digest.add(bytes);
      assertThat(digest.end()).isEqualTo(MessageDigest.getInstance("SHA-256").digest(bytes));
    }
  }
}
