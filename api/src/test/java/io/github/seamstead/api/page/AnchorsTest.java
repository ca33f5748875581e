package io.github.seamstead.api.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class AnchorsTest {

  private static final List<String> NAMES =
      List.of(
          "Bank",
          "bank",
          "BANK!",
          "A.b",
          "a-B",
          "a-b-2",
          "a-b",
          "\u6C34",
          "\u5730",
          "",
          "---",
          "con",
          "Gr\u00F6\u00DFe",
          "Grosse",
          "gro-e",
          "x".repeat(400),
          "x".repeat(401),
          "X".repeat(60),
          "../../etc/passwd",
          "a/b",
          "a\\b",
          "\u0130stanbul",
          "i\u0307stanbul",
          "istanbul");

  @Test
  void namesAreApartInAnyScriptAndCase() {
    Anchors anchors = new Anchors();
    List<String> given = new ArrayList<>();
    for (int i = 0; i < 3; i++) {
      NAMES.forEach(name -> given.add(anchors.unique(name)));
    }
    assertThat(given).doesNotHaveDuplicates();
    assertThat(given).allMatch(name -> name.matches("[a-z0-9-]{1,60}"));
    assertThat(given).noneMatch(name -> name.matches("con|aux|nul|prn"));
  }

  @Test
  void aPlainNameStaysReadable() {
    assertThat(Anchors.plain("Cut list & marking out!")).isEqualTo("cut-list-marking-out");
    assertThat(Anchors.plain("Gr\u00F6n sand")).isEqualTo("gron-sand");
    assertThat(Anchors.plain("\u6C34")).isEqualTo("unnamed");
  }
}
