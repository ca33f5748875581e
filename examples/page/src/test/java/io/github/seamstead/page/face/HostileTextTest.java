package io.github.seamstead.page.face;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.seamstead.examples.book.Browser;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** Text of the user is never read as markup. */
class HostileTextTest extends InBrowser {

  private static final String EVIL =
      "</script><img src=x onerror=alert(1)>\"'&<svg onload=alert(2)>";

  @Test
  void namesStayText() throws IOException {
    Browser page = face().openNew(360);
    Path job =
        Files.writeString(
            folder().resolve("evil.json"),
            "{\"seamstead\": 2, \"site\": {\"name\": "
                + face().quoted(EVIL)
                + ", \"note\": "
                + face().quoted(EVIL)
                + "}, \"frame\": {\"sides\": 5, \"measures\": {\"baseSide\":"
                + " \"20 cm\", \"height\": \"30 cm\"}}}");
    page.run("globalThis.alert = () => { globalThis.alarm = true; }; 0");
    face().choose(job);
    page.run("hand.until(() => hand.text('title').startsWith('</script>'), 'the job')");
    page.run("hand.go('jobs')");
    assertThat(page.run("hand.text('kept')").asText()).contains(EVIL);
    page.run("hand.go('job').then(() => hand.press('Plan the book'))");
    page.run("hand.book()");
    assertThat(
            page.run(
                    "hand.frame().contentDocument.querySelectorAll('img,script,[onload],[onerror]')"
                        + ".length")
                .asInt(-1))
        .isZero();
    assertThat(page.run("document.querySelectorAll('img,[onload],[onerror]').length").asInt(-1))
        .isZero();
    assertThat(page.run("globalThis.alarm === true").asBoolean()).isFalse();
    page.run("hand.go('job').then(() => hand.press('Save'))");
    assertThat(face().complaints()).isEmpty();
  }

  @Test
  void aFrameRunsNoScript() throws IOException {
    Browser page = face().openNew(360);
    page.run(
        "(f => { f.srcdoc = '<body onload=\"parent.alarm = 1\"><script>parent.alarm = 1</'"
            + " + 'script>'; document.body.append(f); })(document.createElement('iframe'))");
    page.run("hand.pause(300)");
    assertThat(page.run("globalThis.alarm === undefined").asBoolean())
        .as("the content policy stops what a frame would run")
        .isTrue();
  }
}
