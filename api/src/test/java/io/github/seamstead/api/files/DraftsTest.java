package io.github.seamstead.api.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Duration;
import java.time.Instant;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A run tidies up after those that were killed, and touches nothing else. */
class DraftsTest {

  /** No system gives a process so high a number. */
  private static final String DEAD = "999999999999999999";

  @TempDir private Path above;
  private Path target;

  @BeforeEach
  void name() {
    target = above.resolve("book");
  }

  private Path draft(String process, String end, Duration age) throws IOException {
    Path draft = Files.createDirectory(above.resolve(".book-draft-" + process + "-" + end));
    Files.writeString(draft.resolve(BookFolder.MARK), MadeFiles.begun());
    Files.setLastModifiedTime(draft, FileTime.from(Instant.now().minus(age)));
    return draft;
  }

  @Test
  void aDraftTellsItsFolderAndItsProcessAndNoTwoAreOne() throws IOException {
    Path one = Drafts.create(above, target);
    Path other = Drafts.create(above, target);
    assertThat(one).isNotEqualTo(other).isEmptyDirectory();
    assertThat(one.getFileName().toString())
        .startsWith(".book-draft-" + ProcessHandle.current().pid() + "-");
  }

  @Test
  void theDraftOfALongNameHasAShortOne() throws IOException {
    Path named = above.resolve("ж".repeat(120));
    Path draft = Drafts.create(above, named);
    assertThat(draft.getFileName().toString().getBytes(StandardCharsets.UTF_8).length)
        .isLessThan(100);
  }

  @Test
  void draftsOfDeadRunsGoOnceTheyAreOld() throws IOException {
    Path old = draft(DEAD, "1a", Duration.ofHours(2));
    Path young = draft(DEAD, "1b", Duration.ofMinutes(30));
    Path own = draft(Long.toString(ProcessHandle.current().pid()), "1c", Duration.ofHours(2));
    Path unmarked = draft(DEAD, "1d", Duration.ofHours(2));
    Files.delete(unmarked.resolve(BookFolder.MARK));
    Files.setLastModifiedTime(unmarked, FileTime.from(Instant.now().minus(Duration.ofHours(2))));
    Path alike = Files.createDirectory(above.resolve(".book-draft-mine"));
    Path others = Files.createDirectory(above.resolve(".cook-draft-" + DEAD + "-1a"));
    Drafts.sweep(above, target);
    assertThat(old).doesNotExist();
    assertThat(young).exists();
    assertThat(own).exists();
    assertThat(unmarked).exists();
    assertThat(alike).exists();
    assertThat(others).exists();
  }

  @Test
  void anOldBookWhoseReplacementNeverCameIsPutBack() throws IOException {
    Path old = draft(DEAD, "2a" + Drafts.OLD, Duration.ZERO);
    Files.writeString(old.resolve("mine.txt"), "mine");
    Drafts.sweep(above, target);
    assertThat(target.resolve("mine.txt")).hasContent("mine");
    assertThat(old).doesNotExist();
  }

  @Test
  void anOldBookWhoseReplacementStandsGivesItWhatItLacks() throws IOException {
    Path old = draft(DEAD, "3a" + Drafts.OLD, Duration.ZERO);
    MadeFiles made = new MadeFiles();
    made.add("book.html", MadeFiles.hash(MadeFiles.bytes("old")));
    Files.writeString(old.resolve(BookFolder.MARK), made.text());
    Files.writeString(old.resolve("book.html"), "old");
    Files.writeString(old.resolve("mine.txt"), "mine");
    Files.createDirectory(target);
    Files.writeString(target.resolve("book.html"), "new");
    Drafts.sweep(above, target);
    assertThat(target.resolve("book.html")).hasContent("new");
    assertThat(target.resolve("mine.txt")).hasContent("mine");
    assertThat(old).doesNotExist();
  }

  @Test
  void anOldBookWithoutAListIsLeftAlone() throws IOException {
    Path old = draft(DEAD, "4a" + Drafts.OLD, Duration.ofHours(5));
    Files.delete(old.resolve(BookFolder.MARK));
    Files.writeString(old.resolve("mine.txt"), "mine");
    Files.createDirectory(target);
    Drafts.sweep(above, target);
    assertThat(old.resolve("mine.txt")).hasContent("mine");
  }

  @Test
  void deletingADraftFollowsNoLink() throws IOException {
    Path draft = draft(DEAD, "5a", Duration.ZERO);
    Path elsewhere = Files.createDirectory(above.resolve("elsewhere"));
    Files.writeString(elsewhere.resolve("mine.txt"), "mine");
    Files.createSymbolicLink(draft.resolve("link"), elsewhere);
    Drafts.delete(draft);
    assertThat(draft).doesNotExist();
    assertThat(elsewhere.resolve("mine.txt")).hasContent("mine");
  }
}
