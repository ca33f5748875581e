package io.github.seamstead.api.book;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class BookFolderTest {

  @TempDir private Path above;

  private void publish(Path target, String text) throws IOException {
    try (BookFolder folder = BookFolder.draft(target)) {
      folder.write("a/b.txt", text);
      folder.publish();
    }
  }

  private long entries() throws IOException {
    try (Stream<Path> files = Files.list(above)) {
      return files.count();
    }
  }

  @Test
  void aBookAppearsWholeAndIsReplacedByTheNextRun() throws IOException {
    Path target = above.resolve("book");
    publish(target, "one");
    publish(target, "two");
    assertThat(target.resolve("a/b.txt")).hasContent("two");
    assertThat(entries()).isEqualTo(1);
  }

  @Test
  void foldersAboveAreMade() throws IOException {
    Path target = above.resolve("x/y/book");
    publish(target, "one");
    assertThat(target.resolve("a/b.txt")).exists();
  }

  @Test
  void aDraftThatIsNotPublishedLeavesNothing() throws IOException {
    try (BookFolder folder = BookFolder.draft(above.resolve("book"))) {
      folder.write("half.txt", "half");
    }
    assertThat(entries()).isZero();
  }

  @Test
  void aFolderThatNoRunMadeIsRefusedAndStays() throws IOException {
    Path target = Files.createDirectory(above.resolve("mine"));
    Files.writeString(target.resolve("letter.txt"), "keep");
    assertThat(BookFolder.refusal(target)).get().asString().contains("no earlier run made");
    assertThatThrownBy(() -> publish(target, "x")).isInstanceOf(IllegalArgumentException.class);
    assertThat(target.resolve("letter.txt")).hasContent("keep");
    assertThat(entries()).isEqualTo(1);
  }

  @Test
  void anEmptyFolderIsTaken() throws IOException {
    Path target = Files.createDirectory(above.resolve("empty"));
    publish(target, "x");
    assertThat(target.resolve("a/b.txt")).exists();
  }

  @Test
  void aFileIsRefused() throws IOException {
    Path target = Files.writeString(above.resolve("file"), "x");
    assertThat(BookFolder.refusal(target)).get().asString().contains("a file");
    assertThat(BookFolder.refusal(target.resolve("below"))).isPresent();
  }

  @Test
  void aFolderWhereNothingCanBeWrittenIsRefused() throws IOException {
    Path locked = Files.createDirectory(above.resolve("locked"));
    assertThat(locked.toFile().setWritable(false)).isTrue();
    assumeFalse(Files.isWritable(locked), "skipped: this user may write anywhere");
    assertThat(BookFolder.refusal(locked.resolve("book"))).isPresent();
  }
}
