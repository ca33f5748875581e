package io.github.seamstead.api.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What people put into a book's folder is in the new one, and nowhere lost. */
class KeptFilesTest {

  @TempDir private Path above;
  private Path old;
  private Path draft;
  private final MadeFiles made = new MadeFiles();

  @BeforeEach
  void twoFolders() throws IOException {
    old = Files.createDirectory(above.resolve("old"));
    draft = Files.createDirectory(above.resolve("draft"));
    made("made/a.txt", "of the run");
    put(old, BookFolder.MARK, made.text());
  }

  private void made(String name, String text) throws IOException {
    put(old, name, text);
    made.add(name, MadeFiles.hash(MadeFiles.bytes(text)));
  }

  private static void put(Path folder, String name, String text) throws IOException {
    Path file = folder.resolve(name);
    Files.createDirectories(file.getParent());
    Files.writeString(file, text);
  }

  @Test
  void filesFoldersAndLinksAreCarriedAndMadeOnesAreNot() throws IOException {
    put(old, "made/note.txt", "mine");
    put(old, "photos/1/a.jpg", "mine too");
    Files.createDirectory(old.resolve("empty"));
    Files.createSymbolicLink(old.resolve("link"), Path.of("nowhere"));
    assertThat(KeptFiles.carry(old, made, draft)).isEmpty();
    assertThat(draft.resolve("made/note.txt")).hasContent("mine");
    assertThat(draft.resolve("photos/1/a.jpg")).hasContent("mine too");
    assertThat(draft.resolve("empty")).isEmptyDirectory();
    assertThat(Files.readSymbolicLink(draft.resolve("link"))).isEqualTo(Path.of("nowhere"));
    assertThat(draft.resolve("made/a.txt")).doesNotExist();
    assertThat(draft.resolve(BookFolder.MARK)).doesNotExist();
  }

  @Test
  void aFolderOfMadeFilesAloneIsNotCarried() throws IOException {
    KeptFiles.carry(old, made, draft);
    assertThat(draft).isEmptyDirectory();
  }

  @Test
  void namesThatTheDraftHoldsAreToldAndLeftAsTheyAre() throws IOException {
    put(old, "notes.txt", "mine");
    put(old, "lists/x.csv", "mine");
    put(draft, "notes.txt", "of the new run");
    put(draft, "lists", "a file where a folder was");
    assertThat(KeptFiles.carry(old, made, draft)).containsExactlyInAnyOrder("notes.txt", "lists");
    assertThat(draft.resolve("notes.txt")).hasContent("of the new run");
    assertThat(old.resolve("notes.txt")).hasContent("mine");
  }

  @Test
  void theOldFolderLosesOnlyWhatIsMadeOrElsewhere() throws IOException {
    put(old, "carried.txt", "mine");
    KeptFiles.carry(old, made, draft);
    put(old, "late.txt", "put in while the run went on");
    put(old, "sub/late.txt", "this too");
    put(old, "other.txt", "one");
    put(draft, "other.txt", "another");
    Files.createSymbolicLink(old.resolve("same"), Path.of("x"));
    Files.createSymbolicLink(draft.resolve("same"), Path.of("x"));
    Files.createSymbolicLink(old.resolve("differs"), Path.of("x"));
    Files.createSymbolicLink(draft.resolve("differs"), Path.of("y"));
    KeptFiles.discard(old, made, draft);
    assertThat(draft.resolve("carried.txt")).hasContent("mine");
    assertThat(draft.resolve("late.txt")).hasContent("put in while the run went on");
    assertThat(draft.resolve("sub/late.txt")).hasContent("this too");
    assertThat(draft.resolve("other.txt")).hasContent("another");
    assertThat(old.resolve("other.txt")).hasContent("one");
    assertThat(Files.exists(old.resolve("differs"), LinkOption.NOFOLLOW_LINKS)).isTrue();
    try (var left = Files.list(old)) {
      assertThat(left).hasSize(2);
    }
  }

  @Test
  void aMadeFileThatWasEditedIsMovedOver() throws IOException {
    put(old, "made/a.txt", "of the run, with my notes");
    KeptFiles.discard(old, made, draft);
    assertThat(draft.resolve("made/a.txt")).hasContent("of the run, with my notes");
    assertThat(old).doesNotExist();
  }
}
