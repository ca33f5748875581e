package io.github.seamstead.page.build;

import io.github.seamstead.api.job.FormTable;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.zip.Deflater;
import java.util.zip.GZIPOutputStream;

/**
 * Joins the compiled engine, the table of the form, the demo jobs and the face of the page into one
 * HTML file, and the engine into a script for others. Equal inputs, of which one is the compiled
 * engine, give equal files.
 */
public final class Assemble {

  /** Beyond this the page is not built, in bytes. The aim is 1,200,000. */
  public static final long MOST_BYTES = 1_500_000;

  private static final String FACE = "src/main/web";

  private final Path module;
  private final Path out;

  private Assemble(Path module, Path out) {
    this.module = module;
    this.out = out;
  }

  /**
   * Joins all. The compiled engine lies in {@code compiled/engine.js} of the folder for the files.
   *
   * @param args the folder of this module and the folder for the files
   * @throws IOException if a file cannot be read or written
   * @throws IllegalStateException if the page is larger than {@link #MOST_BYTES}
   */
  public static void main(String[] args) throws IOException {
    new Assemble(Path.of(args[0]), Path.of(args[1])).run();
  }

  private void run() throws IOException {
    String compiled = read(out.resolve("compiled/engine.js"));
    String engine = compiled + "\n" + read(module.resolve("src/main/script/worker.js"));
    Path web = Files.createDirectories(out.resolve("web"));
    Files.writeString(web.resolve("engine.js"), engine);
    Files.writeString(web.resolve("form.json"), FormTable.text());
    String library = read(module.resolve("src/main/script/library.js"));
    Files.writeString(out.resolve("seamstead.js"), library.replace("/*ENGINE*/", compiled));
    String page = page(engine);
    Path file = out.resolve("seamstead-page.html");
    Files.writeString(file, page);
    long size = Files.size(file);
    if (size > MOST_BYTES) {
      throw new IllegalStateException(
          file + " has " + size + " bytes, must have at most " + MOST_BYTES);
    }
    System.out.println(file + ": " + size + " bytes; the engine " + engine.length() + " unpacked");
  }

  private static String read(Path file) throws IOException {
    return Files.readString(file).replace("\r\n", "\n");
  }

  private String page(String engine) throws IOException {
    Path face = module.resolve(FACE);
    String app = app(face);
    Map<String, String> marks = new LinkedHashMap<>();
    marks.put("POLICY", policy(app));
    marks.put("CSS", "<style>\n" + read(face.resolve("page.css")) + "</style>");
    marks.put("FORM", json("form", compact(FormTable.text())));
    marks.put(
        "DEMOS",
        "<script type=\"text/plain\" id=\"demos\">"
            + Base64.getEncoder()
                .encodeToString(packed(Demos.json(module.resolve("../jobs").normalize())))
            + "</script>");
    marks.put(
        "ENGINE",
        "<script type=\"text/plain\" id=\"engine\">" + Letters.of(packed(engine)) + "</script>");
    marks.put("APP", "<script>" + app + "</script>");
    String page = read(face.resolve("index.html"));
    for (Map.Entry<String, String> mark : marks.entrySet()) {
      String place = "<!--" + mark.getKey() + "-->";
      if (!page.contains(place)) {
        throw new IllegalStateException("index.html has no mark " + place);
      }
      page = page.replace(place, mark.getValue());
    }
    return page;
  }

  private static String app(Path face) throws IOException {
    StringBuilder app = new StringBuilder("\n(() => {\n'use strict';\n");
    List<String> order = read(face.resolve("app/order.txt")).lines().toList();
    for (String name : order) {
      if (!name.isBlank()) {
        app.append(read(face.resolve("app").resolve(name.strip())));
      }
    }
    String joined = app.append("})();\n").toString();
    if (joined.contains("</script")) {
      throw new IllegalStateException("the script of the page ends itself");
    }
    return joined;
  }

  /** Nothing is fetched, and no script runs but the one of this hash and what it makes a worker. */
  private static String policy(String app) {
    return "<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; script-src"
        + " 'sha256-"
        + digest(app)
        + "'; worker-src blob:; style-src 'unsafe-inline'; img-src data: blob:; base-uri 'none';"
        + " form-action 'none'\">";
  }

  private static String digest(String text) {
    try {
      byte[] digest =
          MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
      return Base64.getEncoder().encodeToString(digest);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }

  private static String json(String id, String text) {
    return "<script type=\"application/json\" id=\""
        + id
        + "\">"
        + text.replace("<", "\\u003c")
        + "</script>";
  }

  /** Takes the line breaks and indents out of JSON; texts hold none as such. */
  private static String compact(String json) {
    return json.replaceAll("\\n\\s*", "");
  }

  private static byte[] packed(String text) throws IOException {
    ByteArrayOutputStream packed = new ByteArrayOutputStream();
    try (OutputStream gzip = new Tight(packed)) {
      gzip.write(text.getBytes(StandardCharsets.UTF_8));
    }
    return packed.toByteArray();
  }

  /** The tightest packing. */
  private static final class Tight extends GZIPOutputStream {
    Tight(OutputStream out) throws IOException {
      super(out);
      def.setLevel(Deflater.BEST_COMPRESSION);
    }
  }
}
