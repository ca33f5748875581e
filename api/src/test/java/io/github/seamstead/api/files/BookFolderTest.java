package io.github.seamstead.api.files;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeFalse;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import io.github.seamstead.api.book.BookWriter;
import io.github.seamstead.api.testing.DemoJobs;
import io.github.seamstead.shared.check.ArgumentFault;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.channels.Pipe;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.security.MessageDigest;
import java.time.Duration;
import java.time.Instant;
import java.util.HexFormat;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

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

  @Test
  void whatPeoplePutIntoABookIsKept() throws IOException {
    Path target = above.resolve("book");
    publish(target, "one");
    Files.writeString(target.resolve("notes.txt"), "mine");
    Files.writeString(target.resolve("a/beside.txt"), "mine too");
    Files.createDirectories(target.resolve("photos/empty"));
    Files.writeString(target.resolve("photos/door.jpg"), "door");
    Files.createSymbolicLink(target.resolve("link"), Path.of("nowhere"));
    publish(target, "two");
    publish(target, "three");
    assertThat(target.resolve("a/b.txt")).hasContent("three");
    assertThat(target.resolve("notes.txt")).hasContent("mine");
    assertThat(target.resolve("a/beside.txt")).hasContent("mine too");
    assertThat(target.resolve("photos/door.jpg")).hasContent("door");
    assertThat(target.resolve("photos/empty")).isDirectory();
    assertThat(Files.readSymbolicLink(target.resolve("link"))).isEqualTo(Path.of("nowhere"));
    assertThat(entries()).isEqualTo(1);
  }

  @Test
  void aFileThatTheNextRunNoLongerMakesGoesWithTheOldBook() throws IOException {
    Path target = above.resolve("book");
    try (BookFolder folder = BookFolder.draft(target)) {
      folder.write("old/only.txt", "once");
      folder.publish();
    }
    publish(target, "two");
    assertThat(target.resolve("old")).doesNotExist();
    assertThat(target.resolve("a/b.txt")).hasContent("two");
  }

  @Test
  void aMadeFileThatWasEditedStopsTheRunAndIsNamed() throws IOException {
    Path target = above.resolve("book");
    publish(target, "one");
    Files.writeString(target.resolve("a/b.txt"), "one, and my note");
    assertThat(BookFolder.refusal(target)).get().asString().contains("a/b.txt was edited");
    assertThatThrownBy(() -> publish(target, "two")).isInstanceOf(ArgumentFault.class);
    assertThat(target.resolve("a/b.txt")).hasContent("one, and my note");
    assertThat(entries()).isEqualTo(1);
  }

  @Test
  void anEditDuringTheRunStopsTheSwitch() throws IOException {
    Path target = above.resolve("book");
    publish(target, "one");
    try (BookFolder folder = BookFolder.draft(target)) {
      folder.write("a/b.txt", "two");
      Files.writeString(target.resolve("a/b.txt"), "edited");
      assertThatThrownBy(folder::publish).isInstanceOf(ArgumentFault.class);
    }
    assertThat(target.resolve("a/b.txt")).hasContent("edited");
    assertThat(entries()).isEqualTo(1);
  }

  @Test
  void aDeletedMadeFileIsNoLoss() throws IOException {
    Path target = above.resolve("book");
    publish(target, "one");
    Files.delete(target.resolve("a/b.txt"));
    publish(target, "two");
    assertThat(target.resolve("a/b.txt")).hasContent("two");
  }

  @Test
  void aPersonsFileOfTheNameOfOneToWriteStopsTheRun() throws IOException {
    Path target = above.resolve("book");
    publish(target, "one");
    Files.writeString(target.resolve("new.txt"), "mine");
    try (BookFolder folder = BookFolder.draft(target)) {
      folder.write("new.txt", "made");
      assertThatThrownBy(folder::publish)
          .isInstanceOf(ArgumentFault.class)
          .hasMessageContaining("no run made new.txt");
    }
    assertThat(target.resolve("new.txt")).hasContent("mine");
    assertThat(target.resolve("a/b.txt")).hasContent("one");
    assertThat(entries()).isEqualTo(1);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "An earlier run made this folder. The next run with the same --out replaces it.\n",
        "0000000000000000000000000000000000000000000000000000000000000000  ../mine.txt\n",
        "0000000000000000000000000000000000000000000000000000000000000000  /etc/hosts\n",
        "# only words\n"
      })
  void aMarkThatProvesNothingDeletesNothing(String mark) throws IOException {
    Path target = Files.createDirectory(above.resolve("book"));
    Files.writeString(target.resolve(BookFolder.MARK), mark);
    Files.writeString(target.resolve("results.json"), "old");
    assertThat(BookFolder.refusal(target)).get().asString().contains("does not say which");
    assertThatThrownBy(() -> publish(target, "x")).isInstanceOf(ArgumentFault.class);
    assertThat(target.resolve("results.json")).hasContent("old");
  }

  @Test
  void aFolderWithAMarkAloneIsAsGoodAsEmpty() throws IOException {
    Path target = Files.createDirectory(above.resolve("book"));
    Files.writeString(target.resolve(BookFolder.MARK), "");
    publish(target, "one");
    publish(target, "two");
    assertThat(target.resolve("a/b.txt")).hasContent("two");
  }

  @Test
  void aLinkIsFollowed() throws IOException {
    Path real = Files.createDirectory(above.resolve("real"));
    Path link = Files.createSymbolicLink(above.resolve("link"), real);
    publish(link, "one");
    publish(link, "two");
    assertThat(link).isSymbolicLink();
    assertThat(real.resolve("a/b.txt")).hasContent("two");
    assertThat(entries()).isEqualTo(2);
  }

  @Test
  void aLinkThatLeadsNowhereIsRefused() throws IOException {
    Path link = Files.createSymbolicLink(above.resolve("link"), above.resolve("gone"));
    assertThat(BookFolder.refusal(link)).get().asString().contains("leads nowhere");
  }

  @Test
  void anInputFromAPipeLiesInNoFolder() throws IOException {
    Path open = Path.of("/proc/self/fd");
    assumeTrue(Files.isDirectory(open), "the system shows open files under another name");
    Pipe pipe = Pipe.open();
    try (var files = Files.list(open)) {
      Path name = files.filter(BookFolderTest::isPipe).findFirst().orElseThrow();
      assertThat(BookFolder.refusal(above.resolve("new"), name)).isEmpty();
    } finally {
      pipe.sink().close();
      pipe.source().close();
    }
  }

  private static boolean isPipe(Path file) {
    try {
      return Files.readSymbolicLink(file).toString().startsWith("pipe:");
    } catch (IOException e) {
      // It was closed while the list was read.
      return false;
    }
  }

  @Test
  void aFolderThatHoldsAnInputIsRefused() throws IOException {
    Path target = above.resolve("book");
    publish(target, "one");
    Path job = Files.writeString(target.resolve("job.json"), "{}");
    assertThat(BookFolder.refusal(target, job)).get().asString().contains("job.json");
    assertThat(BookFolder.refusal(target, above.resolve("job.json"))).isEmpty();
    Path link = Files.createSymbolicLink(above.resolve("other.json"), job);
    assertThat(BookFolder.refusal(target, link)).isPresent();
  }

  @Test
  void anEmptyNameTheCurrentFolderAndTheRootAreRefused() {
    assertThat(BookFolder.refusal(Path.of(""))).get().asString().contains("empty name");
    assertThat(BookFolder.refusal(Path.of("."))).get().asString().contains("was started");
    assertThat(BookFolder.refusal(Path.of("src/.."))).isPresent();
    assertThat(BookFolder.refusal(Path.of("/"))).isPresent();
  }

  @Test
  void theFolderIsAsOpenAsTheUmaskHasIt() throws IOException {
    assumeTrue(Files.getFileStore(above).supportsFileAttributeView("posix"), "no modes here");
    Path usual = Files.createDirectory(above.resolve("usual"));
    Path target = above.resolve("book");
    publish(target, "one");
    assertThat(Files.getPosixFilePermissions(target))
        .isEqualTo(Files.getPosixFilePermissions(usual));
  }

  @Test
  void theListCanBeCheckedByASumProgram() throws Exception {
    Path target = above.resolve("book");
    publish(target, "one");
    String hash =
        HexFormat.of()
            .formatHex(MessageDigest.getInstance("SHA-256").digest(MadeFiles.bytes("one")));
    assertThat(Files.readAllLines(target.resolve(BookFolder.MARK))).contains(hash + "  a/b.txt");
  }

  /** The names that a process of this number leaves; no process has it. */
  private static String dead(String book) {
    return "." + book + "-draft-999999999999-1a";
  }

  @Test
  void anOldBookIsPutBackWhereAKillFellBetweenTheRenames() throws IOException {
    Path target = above.resolve("book");
    publish(target, "one");
    Files.writeString(target.resolve("notes.txt"), "mine");
    Files.move(target, above.resolve(dead("book") + "-old"));
    publish(target, "two");
    assertThat(target.resolve("notes.txt")).hasContent("mine");
    assertThat(target.resolve("a/b.txt")).hasContent("two");
    assertThat(entries()).isEqualTo(1);
  }

  @Test
  void whatAKilledRunLeftOfAnOldBookIsTakenUp() throws IOException {
    Path target = above.resolve("book");
    publish(target, "one");
    Files.writeString(target.resolve("late.txt"), "mine");
    Files.move(target, above.resolve(dead("book") + "-old"));
    try (BookFolder folder = BookFolder.draft(above.resolve("elsewhere"))) {
      folder.write("a/b.txt", "two");
      folder.publish();
    }
    Files.move(above.resolve("elsewhere"), target);
    publish(target, "three");
    assertThat(target.resolve("late.txt")).hasContent("mine");
    assertThat(target.resolve("a/b.txt")).hasContent("three");
    assertThat(entries()).isEqualTo(1);
  }

  @Test
  void draftsOfDeadRunsGoAfterAnHour() throws IOException {
    Path old = Files.createDirectory(above.resolve(dead("book")));
    Files.writeString(old.resolve(BookFolder.MARK), "");
    Path fresh = Files.createDirectory(above.resolve(dead("book") + "b"));
    Files.writeString(fresh.resolve(BookFolder.MARK), "");
    Path strange = Files.createDirectory(above.resolve(".book-draft-of-mine"));
    FileTime longAgo = FileTime.from(Instant.now().minus(Duration.ofHours(2)));
    Files.setLastModifiedTime(old, longAgo);
    Files.setLastModifiedTime(strange, longAgo);
    publish(above.resolve("book"), "one");
    assertThat(old).doesNotExist();
    assertThat(fresh).exists();
    assertThat(strange).exists();
  }

  @Test
  void twoFilesOfOneNameAreRefusedInWhateverCase() throws IOException {
    try (BookFolder folder = BookFolder.draft(above.resolve("book"))) {
      folder.write("lists/a.csv", "1");
      assertThatThrownBy(() -> folder.write("lists/A.csv", "2"))
          .isInstanceOf(IllegalStateException.class);
    }
  }

  @Test
  void aNameThatIsTooLongIsToldAsThat() {
    Path target = above.resolve("x".repeat(300));
    assertThatThrownBy(() -> BookWriter.write(DemoJobs.plan("clay-bank"), target))
        .isInstanceOfAny(UncheckedIOException.class, ArgumentFault.class)
        .hasMessageContaining("too long");
  }
}
