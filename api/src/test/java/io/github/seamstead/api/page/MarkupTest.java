package io.github.seamstead.api.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class MarkupTest {

  @Test
  void escapesTextAndAttributes() {
    assertThat(new Markup().element("p", "a < b & \"c\"\u0000", "title", "\"<").toString())
        .isEqualTo("<p title=\"&quot;&lt;\">a &lt; b &amp; &quot;c&quot;</p>");
  }

  @Test
  void refusesOpenElementsAndHalfAttributes() {
    Markup markup = new Markup().open("div").open("p").close();
    assertThatThrownBy(markup::toString).hasMessageContaining("[div]");
    assertThatThrownBy(() -> new Markup().open("p", "class")).hasMessageContaining("name without");
  }

  @Test
  void makesAnchors() {
    assertThat(Markup.anchor("Cut list & marking out!")).isEqualTo("cut-list-marking-out");
  }
}
