package io.github.seamstead.api.book;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.seamstead.api.testing.DemoJobs;
import org.junit.jupiter.api.Test;

class DocumentPlaceTest {

  @Test
  void aPathBecomesWords() {
    assertThat(DocumentPlace.words("$.floor.layers[3].rollWidth"))
        .isEqualTo("floor, layers: roll width");
    assertThat(DocumentPlace.words("$.floor.mixes[*].plasticLimit"))
        .isEqualTo("floor, mixes: plastic limit");
    assertThat(DocumentPlace.words("$.site.crew")).isEqualTo("site: crew");
    assertThat(DocumentPlace.words("(raising)")).isEqualTo("raising");
  }

  @Test
  void theBookHasNoPathsAndSaysEachAssumptionOnce() {
    String html = Book.of(DemoJobs.plan("seed-loft")).html();
    String chapter = html.substring(html.indexOf("id=\"what-was-assumed\""));
    assertThat(chapter).contains("floor, mixes: density spread");
    assertThat(chapter.split("floor, mixes: density spread", -1)).hasSize(2);
    assertThat(html.substring(html.indexOf("<main>"), html.indexOf("<script>")))
        .doesNotContain("$.");
  }
}
