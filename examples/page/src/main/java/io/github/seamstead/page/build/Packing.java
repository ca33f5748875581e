package io.github.seamstead.page.build;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.zip.Deflater;
import java.util.zip.GZIPOutputStream;
import org.tukaani.xz.LZMA2Options;
import org.tukaani.xz.LZMAOutputStream;

/** Packs the parts of the page. */
final class Packing {

  /** More than the engine is long, so that a match may lie anywhere in it. */
  private static final int REACH = 1 << 22;

  /** Of text, the letter before tells the most and the place of a byte nothing. */
  private static final int LITERAL_BITS = 4;

  private Packing() {}

  /** What is short, and is unpacked by the browser's own means. */
  static byte[] gzip(String text) throws IOException {
    ByteArrayOutputStream packed = new ByteArrayOutputStream();
    try (OutputStream gzip = new Tight(packed)) {
      gzip.write(text.getBytes(StandardCharsets.UTF_8));
    }
    return packed.toByteArray();
  }

  /** The engine: a fifth shorter than by gzip, and unpacked by the page's own script. */
  static byte[] lzma(String text) throws IOException {
    byte[] plain = text.getBytes(StandardCharsets.UTF_8);
    LZMA2Options options = new LZMA2Options(LZMA2Options.PRESET_MAX);
    options.setDictSize(REACH);
    options.setLcLp(LITERAL_BITS, 0);
    options.setPb(0);
    options.setNiceLen(LZMA2Options.NICE_LEN_MAX);
    ByteArrayOutputStream packed = new ByteArrayOutputStream();
    try (OutputStream lzma = new LZMAOutputStream(packed, options, plain.length)) {
      lzma.write(plain);
    }
    return packed.toByteArray();
  }

  /** The tightest of its kind. */
  private static final class Tight extends GZIPOutputStream {
    Tight(OutputStream out) throws IOException {
      super(out);
      def.setLevel(Deflater.BEST_COMPRESSION);
    }
  }
}
