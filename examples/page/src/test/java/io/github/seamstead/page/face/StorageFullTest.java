package io.github.seamstead.page.face;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.seamstead.examples.book.Browser;
import java.io.IOException;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The page where the device has no room left. */
class StorageFullTest extends InBrowser {

  @BeforeAll
  static void prepare() {
    face()
        .before(
            "Object.defineProperty(Storage.prototype, 'setItem',"
                + " {value() { throw new DOMException('full', 'QuotaExceededError'); }})");
  }

  @Test
  void aFullStoreIsSaid() throws IOException {
    Browser page = face().open(360);
    page.run("hand.type(hand.at('$.site.name'), 'Too much'); 0");
    page.run("hand.until(() => /There is no room left/.test(hand.text('notes')), 'the note')");
    assertThat(page.run("hand.text('saved')").asText()).contains("This device is full");
    page.run("hand.press('Save')");
    assertThat(face().saved("too-much.json")).content().contains("Too much");
  }
}
