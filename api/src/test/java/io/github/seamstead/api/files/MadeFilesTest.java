package io.github.seamstead.api.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The list of what a run made proves nothing beyond what it says. */
class MadeFilesTest {

  /** FIPS 180-4, the example of one block: SHA-256 of the three letters abc. */
  private static final String ABC =
      "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad";

  @TempDir private Path folder;

  private void mark(String text) throws IOException {
    Files.writeString(folder.resolve(BookFolder.MARK), text);
  }

  @Test
  void theHashIsThatOfTheStandard() {
    assertThat(MadeFiles.hash(MadeFiles.bytes("abc"))).isEqualTo(ABC);
  }

  @Test
  void aListIsReadAsItWasWritten() throws IOException {
    MadeFiles made = new MadeFiles();
    made.add("lists/a b.csv", ABC);
    made.add("book.html", MadeFiles.hash(MadeFiles.bytes("")));
    mark(made.text());
    MadeFiles read = MadeFiles.of(folder).orElseThrow();
    assertThat(read.text()).isEqualTo(made.text());
    assertThat(read.has("lists/a b.csv")).isTrue();
    assertThat(read.has("lists")).isFalse();
  }

  @Test
  void whatWasEditedIsNamedAndWhatWasDeletedIsNoLoss() throws IOException {
    MadeFiles made = new MadeFiles();
    made.add("same", ABC);
    made.add("edited", ABC);
    made.add("gone", ABC);
    made.add("folder", ABC);
    Files.writeString(folder.resolve("same"), "abc");
    Files.writeString(folder.resolve("edited"), "abd");
    Files.createDirectory(folder.resolve("folder"));
    assertThat(made.edited(folder)).containsExactly("edited", "folder");
    assertThat(made.isAsMade(folder, "same")).isTrue();
    assertThat(made.isAsMade(folder, "gone")).isFalse();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "# nothing but a head\n",
        "not a list\n",
        ABC + " one-blank-only\n",
        ABC + "  ../above\n",
        ABC + "  a/../../above\n",
        ABC + "  /etc/hosts\n",
        ABC + "  a//b\n",
        ABC + "  C:\\x\n",
        ABC + "  a\\b\n",
        ABC + "  .\n",
        ABC + "  good\nbad line\n"
      })
  void aListOfAnotherFormOrThatPointsOutsideProvesNothing(String text) throws IOException {
    mark(text);
    assertThat(MadeFiles.of(folder)).isEmpty();
  }

  @Test
  void bytesThatAreNoTextAndAFolderInItsPlaceProveNothing() throws IOException {
    Files.write(folder.resolve(BookFolder.MARK), new byte[] {(byte) 0xff, (byte) 0xfe, 10});
    assertThat(MadeFiles.of(folder)).isEmpty();
    Files.delete(folder.resolve(BookFolder.MARK));
    assertThat(MadeFiles.of(folder)).isEmpty();
    Files.createDirectory(folder.resolve(BookFolder.MARK));
    assertThat(MadeFiles.of(folder)).isEmpty();
  }

  @Test
  void aFewNamesAreShownAndTheOthersCounted() {
    assertThat(MadeFiles.few(List.of("a", "b", "c"))).isEqualTo("a, b, c");
    assertThat(MadeFiles.few(List.of("a", "b", "c", "d", "e"))).isEqualTo("a, b, c and 2 more");
  }
}
