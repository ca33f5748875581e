package io.github.seamstead.page.face;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.seamstead.examples.book.Browser;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What is opened and what is refused, and the way back. */
class FilesTest extends InBrowser {

  private Path file(String name, String text) throws IOException {
    return Files.writeString(folder().resolve(name), text);
  }

  private static String refusal(Browser page) {
    return page.run(
            "hand.until(() => document.querySelector('#refused .summary'), 'a refusal')"
                + ".then(box => box.innerText)")
        .asText();
  }

  @Test
  void aBrokenFileOpensNothingAndSaysWhyLineByLine() throws IOException {
    Browser page = face().openNew(360);
    face().choose(file("torn.json", "{\n\"seamstead\": 2,\n\"site\": {\"name\": \"Torn\"\n"));
    assertThat(refusal(page)).contains("“torn.json” was not opened").contains("Line ");
    assertThat(page.run("hand.text('title')").asText()).isEqualTo("Job without a name");
    assertThat(page.run("document.activeElement.closest('#refused') !== null").asBoolean())
        .isTrue();

    String unknown =
        "{\n\"seamstead\": 2,\n\"site\": {\"name\": \"Odd\"},\n\"frame\": {\"sides\": 6,\n"
            + "\"colour\": \"red\"},\n\"soils\": 3}";
    face().choose(file("odd.json", unknown));
    page.run("hand.until(() => /odd.json/.test(hand.text('refused')), 'the next refusal')");
    assertThat(refusal(page)).contains("Line 5").contains("colour").contains("Line 6");
    assertThat(
            page.texts("[...document.querySelectorAll('#refused button')].map(b => b.textContent)"))
        .containsExactly("Close");
    assertThat(page.run("hand.text('title')").asText()).isEqualTo("Job without a name");
  }

  @Test
  void aFileWithValuesToMendIsOpenedOnlyWhenAskedTo() throws IOException {
    Browser page = face().openNew(360);
    String half =
        "{\"seamstead\": 2, \"site\": {\"name\": \"Half\"}, \"frame\": {\"sides\": 2,"
            + " \"measures\": {\"baseSide\": \"1 m\", \"height\": \"2 m\"}}}";
    face().choose(file("half.json", half));
    assertThat(refusal(page)).contains("a whole number from 3 to 64");
    assertThat(page.run("hand.text('title')").asText()).isEqualTo("Job without a name");
    page.run("hand.press('Open it to mend it')");
    page.run("hand.until(() => hand.text('title') === 'Half', 'the job')");
    page.run("hand.go('job/frame')");
    page.run(
        "hand.until(() => /from 3 to 64/.test(hand.at('$.frame.sides', 'fault').textContent),"
            + " 'the fault beside its field')");
  }

  @Test
  void aFileOfAnEarlierVersionIsRead() throws IOException {
    Browser page = face().openNew(360);
    Path old = Face.JOBS.resolve("seed-loft.json");
    assertThat(Files.readString(old)).contains("\"seamstead\": 1").contains("\"fall\"");
    face().choose(old);
    page.run("hand.until(() => hand.text('title') === 'Seed-drying loft', 'the job')");
    page.run(Face.SOUND_JOB);
    assertThat(page.run("hand.text('saved')").asText()).startsWith("Job last saved to a file");

    face().choose(Face.JOBS.resolve("hill-hide.json"));
    page.run("hand.until(() => hand.text('title') === 'Hill hide', 'the job')");
    page.run("hand.go('job/frame')");
    assertThat(page.run("hand.at('$.frame.measures.circumradius').value").asText())
        .as("as it was written")
        .contains("ft");
  }

  @Test
  void aDiaryComesWithItsJobAndNotWithAnother() throws IOException {
    Browser page = face().openNew(360);
    Path diary = Face.JOBS.resolve("diaries/seed-loft-diary.json");
    face().choose(Face.JOBS.resolve("class-model.json"));
    page.run("hand.until(() => /Classroom/.test(hand.text('title')), 'the model')");
    face().choose(diary);
    assertThat(refusal(page)).contains("It is the diary of another job: Seed-drying loft");
    face().choose(diary, Face.JOBS.resolve("seed-loft.json"));
    page.run("hand.until(() => location.hash === '#diary', 'the diary')");
    assertThat(page.run("hand.text('title')").asText()).isEqualTo("Seed-drying loft");
    assertThat(page.run("document.querySelector('#diary-lines .count').textContent").asInt())
        .isGreaterThan(20);
    assertThat(face().complaints()).isEmpty();
    page.run("hand.press('Add a line for today')");
    assertThat(page.run("document.activeElement.closest('.folded[open]') !== null").asBoolean())
        .as("the focus is in the new line")
        .isTrue();
  }

  @Test
  void everyChangeCanBeUndoneAndDoneAgain() throws IOException {
    Browser page = face().openNew(360);
    page.run("hand.type(hand.at('$.site.name'), 'Barn'); hand.press('Add crew')");
    page.run("hand.type(hand.at('$.site.crew.people'), '4')");
    for (String step : List.of("Undo", "Undo")) {
      page.run("hand.press('" + step + "')");
    }
    assertThat(page.run("hand.at('$.site.crew') === null").asBoolean()).isTrue();
    assertThat(page.run("hand.at('$.site.name').value").asText()).isEqualTo("Barn");
    page.run("hand.press('Do again')");
    page.run("hand.press('Do again')");
    assertThat(page.run("hand.at('$.site.crew.people').value").asText()).isEqualTo("4");
  }

  @Test
  void aChangeInAnotherWindowIsSaid() throws IOException {
    Browser page = face().openNew(360);
    page.run("hand.type(hand.at('$.site.name'), 'Twice'); 0");
    page.run(
        "hand.until(() => Object.keys(localStorage).some(k => k.includes('-job-')), 'keeping')");
    page.run(
        "dispatchEvent(new StorageEvent('storage', {newValue: '{}',"
            + " key: Object.keys(localStorage).find(k => k.includes('-job-'))})); 0");
    assertThat(page.run("hand.text('notes')").asText()).contains("open in another window");
  }

  @Test
  void nothingIsThrownAwayUnasked() throws IOException {
    Browser page = face().openNew(360);
    page.run("hand.type(hand.at('$.site.name'), 'Kept'); hand.pause(600)");
    page.run("hand.pause(600).then(() => hand.go('jobs'))");
    page.run("hand.press('Remove Kept')");
    assertThat(page.run("document.querySelector('dialog').innerText").asText())
        .contains("Remove “Kept” from this device? What is in no file is lost.");
    page.run("hand.press('Keep it')");
    assertThat(page.run("hand.text('kept')").asText()).contains("Kept");
    page.run("hand.press('Remove Kept'); hand.press('Remove it')");
    page.run("hand.until(() => !/Kept/.test(hand.text('kept')), 'removal')");
  }
}
