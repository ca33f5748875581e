package io.github.seamstead.page.face;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.seamstead.examples.book.Browser;
import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The lessons follow their numbers and check answers. */
class LiveLessonsTest extends InBrowser {

  @Test
  void everyLessonOpensAndOneFollowsItsNumbers() throws IOException {
    Browser page = face().openNew(360);
    page.run(
        "hand.go('lessons').then(() => hand.until(() =>"
            + " document.querySelector('#lesson-list a'), 'lessons'))");
    List<String> links =
        page.texts("[...document.querySelectorAll('#lesson-list a')].map(a => a.hash.slice(1))");
    assertThat(links).isNotEmpty();
    int changeable = 0;
    for (String link : links) {
      page.run(
          "hand.go('"
              + link
              + "').then(() => hand.until(() => document.querySelector("
              + "'#lesson-list a[aria-current]')?.hash === '#"
              + link
              + "' && document.querySelector('#lesson-page iframe'),"
              + " 'the lesson'))");
      changeable +=
          page.run("document.querySelectorAll('#lesson-inputs input').length > 0 ? 1 : 0").asInt();
    }
    assertThat(changeable).isPositive();
    assertThat(face().complaints()).isEmpty();
  }

  @Test
  void aChangedNumberChangesTheSum() throws IOException {
    Browser page = face().openNew(360);
    page.run(
        "hand.go('lessons').then(() => hand.until(() =>"
            + " document.querySelector('#lesson-list a'), 'lessons'))");
    page.run("document.querySelector('#lesson-list a').click()");
    page.run("hand.until(() => document.querySelector('#lesson-inputs input'), 'numbers')");
    page.run(
        "hand.until(() => document.querySelector('#lesson-page"
            + " iframe').contentDocument.body.innerText, 'text')");
    page.run(
        "globalThis.was = document.querySelector('#lesson-page iframe');"
            + " globalThis.words = was.contentDocument.body.innerText; 0");
    page.run(
        "(f => hand.type(f, f.value.replace(/\\d+/, n => String(Number(n) + 1))))"
            + "(document.querySelector('#lesson-inputs input'))");
    page.run(
        "hand.until(() => { const f = document.querySelector('#lesson-page iframe'); return f !=="
            + " was && f.contentDocument.body && f.contentDocument.body.innerText &&"
            + " f.contentDocument.body.innerText !== words; }, 'another sum')");
  }

  @Test
  void aWrongAnswerIsTold() throws IOException {
    Browser page = face().openNew(360);
    page.run(
        "hand.go('lessons').then(() => hand.until(() =>"
            + " document.querySelector('#lesson-list a'), 'lessons'))");
    page.run("document.querySelector('#lesson-list a').click()");
    page.run("hand.until(() => document.querySelector('.exercises input'), 'exercises')");
    page.run(
        "hand.type(document.querySelector('.exercises input'), '-987654 m'); hand.press('Check it',"
            + " document.querySelector('.exercises'))");
    page.run(
        "hand.until(() => /Not yet/.test(document.querySelector('.exercises"
            + " [role=status]').textContent), 'the outcome')");
  }
}
