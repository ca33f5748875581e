package io.github.seamstead.page.face;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.seamstead.examples.book.Browser;
import java.io.IOException;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The page where the device keeps nothing, or has no room. */
class StorageRefusedTest extends InBrowser {

  @BeforeAll
  static void prepare() {
    face()
        .before(
            "Object.defineProperty(window, 'localStorage',"
                + " {get() { throw new DOMException('refused', 'SecurityError'); }})");
  }

  @Test
  void allWorksAndThePageSaysThatNothingIsKept() throws IOException {
    Browser page = face().open(360);
    page.run("hand.type(hand.at('$.site.name'), 'Nowhere'); 0");
    page.run(
        "hand.until(() => /This device keeps nothing: save to a file/.test(hand.text('saved')),"
            + " 'the note')");
    page.run("hand.press('Save')");
    assertThat(face().saved("nowhere.json")).content().contains("\"name\": \"Nowhere\"");
    page.run("hand.type(hand.at('$.site.name'), 'Nowhere else'); 0");
    page.run("hand.go('jobs').then(() => hand.press('Start a job'))");
    assertThat(
            page.run(
                    "hand.until(() => document.querySelector('dialog'), 'the question')"
                        + ".then(box => box.innerText)")
                .asText())
        .contains("Opening another throws them away");
    page.run("hand.press('Go back and save')");
    assertThat(page.run("hand.text('title')").asText()).isEqualTo("Nowhere else");
    assertThat(face().complaints()).isEmpty();
  }
}
