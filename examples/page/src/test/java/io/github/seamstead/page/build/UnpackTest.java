package io.github.seamstead.page.build;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.ObjectMapper;
import io.github.seamstead.examples.book.Browser;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the build packs, the script of the page unpacks: each kind of text in a browser. */
@Tag("browser")
class UnpackTest {

  private static final Path SCRIPT = Path.of("src/main/web/app/unpack.js");
  private static final ObjectMapper JSON = new ObjectMapper();

  private static @TempDir Path folder;
  private static Optional<Browser> browser = Optional.empty();

  @BeforeAll
  static void open() throws Exception {
    Path program = Browser.orSkip();
    Browser started = Browser.start(program, folder);
    Path page = folder.resolve("unpack.html");
    Files.writeString(
        page,
        "<!doctype html><meta charset=\"utf-8\"><script>\n"
            + Files.readString(SCRIPT)
            + "globalThis.text = async (letters, way) => { const bytes ="
            + " lettersToBytes(letters); return way === 'gzip' ? gunzip(bytes) : new"
            + " TextDecoder('utf-8', {ignoreBOM: true}).decode(unpackLzma(bytes)); };</script>");
    started.open(page);
    browser = Optional.of(started);
  }

  @AfterAll
  static void close() {
    browser.ifPresent(Browser::close);
  }

  private static String unpacked(String letters, String way) throws IOException {
    return browser
        .orElseThrow()
        .run("text(" + JSON.writeValueAsString(letters) + ", '" + way + "')")
        .asText();
  }

  /**
   * Texts that use every kind of match: none, the same again, near, far, and letters of two bytes.
   */
  private static List<String> texts() throws IOException {
    SplittableRandom random = new SplittableRandom(91);
    StringBuilder noise = new StringBuilder();
    for (int i = 0; i < 20_000; i++) {
      noise.append((char) random.nextInt(32, 0xd7ff));
    }
    StringBuilder words = new StringBuilder();
    for (int i = 0; i < 60_000; i++) {
      words.append(List.of("let a=", "b.c();", "{", "}", "0x1f", "\n").get(random.nextInt(6)));
    }
    String far = noise.substring(0, 3000) + "z".repeat(300_000) + noise.substring(0, 3000);
    return List.of(
        "",
        "a",
        "ab".repeat(50_000),
        noise.toString(),
        words.toString(),
        far,
        Files.readString(SCRIPT));
  }

  @Test
  void everyTextComesBack() throws IOException {
    for (String text : texts()) {
      assertThat(unpacked(Letters.of(Packing.lzma(text)), "lzma")).isEqualTo(text);
      assertThat(unpacked(Letters.of(Packing.gzip(text)), "gzip")).isEqualTo(text);
    }
  }

  @Test
  void aPartThatIsCutOffIsNotTakenForWhole() throws IOException {
    String whole = Letters.of(Packing.lzma(Files.readString(SCRIPT)));
    assertThatThrownBy(() -> unpacked(whole.substring(0, whole.length() / 2), "lzma"))
        .hasMessageContaining("cut off");
    byte[] packed = Packing.lzma(Files.readString(SCRIPT));
    byte[] half = Arrays.copyOf(packed, packed.length / 2);
    assertThatThrownBy(() -> unpacked(Letters.of(half), "lzma")).hasMessageContaining("broken");
  }
}
