package io.github.seamstead.page.build;

import io.github.seamstead.api.job.FormTable;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Joins the compiled engine, the table of the form, the demo jobs and the face of the page into one
 * HTML file, and the engine into a script for others. Equal inputs, of which one is the compiled
 * engine, give equal files.
 */
public final class Assemble {

  /** Beyond this the page is not built, in bytes. */
  public static final long MOST_BYTES = 1_200_000;

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
    String demos = Demos.json(module.resolve("../jobs").normalize());
    marks.put("FORM", part("form", Packing.gzip(compact(FormTable.text()))));
    marks.put("DEMOS", part("demos", Packing.gzip(demos)));
    marks.put("ENGINE", part("engine", Packing.lzma(engine)));
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
    StringBuilder app = new StringBuilder("\n(async () => {\n'use strict';\n");
    List<String> order = read(face.resolve("app/order.txt")).lines().toList();
    for (String name : order) {
      if (!name.isBlank()) {
        app.append(bare(read(face.resolve("app").resolve(name.strip()))));
      }
    }
    String joined = app.append("})();\n").toString();
    if (joined.contains("</script")) {
      throw new IllegalStateException("the script of the page ends itself");
    }
    return joined;
  }

  /** Takes the indents and the comments that have lines of their own out of a script. */
  private static String bare(String script) {
    StringBuilder bare = new StringBuilder(script.length());
    boolean comment = false;
    for (String line : script.lines().map(String::strip).toList()) {
      if (line.chars().filter(c -> c == '`').count() % 2 == 1) {
        throw new IllegalStateException("a text of several lines would lose its indents: " + line);
      }
      comment |= line.startsWith("/*");
      if (!comment && !line.isEmpty() && !line.startsWith("//")) {
        bare.append(line).append('\n');
      }
      comment &= !line.endsWith("*/");
    }
    return bare.toString();
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

  private static String part(String id, byte[] packed) {
    return "<script type=\"text/plain\" id=\"" + id + "\">" + Letters.of(packed) + "</script>";
  }

  /** Takes the line breaks and indents out of JSON; texts hold none as such. */
  private static String compact(String json) {
    return json.replaceAll("\\n\\s*", "");
  }
}
