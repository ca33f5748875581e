package io.github.seamstead.page;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.seamstead.api.json.JsonReader;
import io.github.seamstead.api.json.JsonWriter;
import io.github.seamstead.examples.fuzz.FuzzCase;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;

/** Plans jobs here and elsewhere with the same work, and compares results and books. */
final class Same {

  private static final Path JOBS = Path.of("../jobs");
  private static final Path ENGINE = Path.of("target/web/engine.js");
  private static final long SEED = 20_261_128L;

  private final UnaryOperator<String> other;
  private int equal;
  private int close;
  private int refused;
  private final List<String> wrong = new ArrayList<>();

  /**
   * Compares with another engine.
   *
   * @param other takes a request and gives the list of its answers, both JSON texts
   */
  Same(UnaryOperator<String> other) {
    this.other = other;
  }

  /** A page that holds nothing but the engine. */
  static Path page(Path folder) throws IOException {
    return Files.writeString(
        folder.resolve("engine.html"),
        "<!doctype html><meta charset=\"utf-8\"><script>"
            + Files.readString(ENGINE).replace("</script", "<\\/script")
            + "</script>");
  }

  /** A script that gives the answers to a request in a page that holds the engine. */
  static String script(String request) {
    return "(() => { const all = []; seamsteadEngine("
        + JsonWriter.text(request)
        + ", text => all.push(text), () => false); return '[' + all.join(',') + ']'; })()";
  }

  /** All demo jobs, and one with its diary. */
  void demos() throws IOException {
    try (Stream<Path> files = Files.list(JOBS)) {
      for (Path file : files.filter(f -> f.toString().endsWith(".json")).sorted().toList()) {
        String name = file.getFileName().toString();
        compare(name, Map.of("job", Files.readString(file)));
      }
    }
    Path diary = JOBS.resolve("diaries/seed-loft-diary.json");
    compare(
        "seed-loft with its diary",
        Map.of(
            "job", Files.readString(JOBS.resolve("seed-loft.json")),
            "diary", Files.readString(diary)));
    System.out.println("demos: " + summary());
    assertThat(wrong).isEmpty();
    assertThat(refused).isZero();
  }

  /** Random jobs; a quarter of them must be ones that can be planned. */
  void random(int count) throws IOException {
    for (int number = 0; number < count; number++) {
      FuzzCase one = FuzzCase.of(SEED, number);
      compare("case " + number + " (" + one.kind() + ")", Map.of("job", one.document()));
    }
    System.out.println("random: " + summary());
    assertThat(wrong).isEmpty();
    assertThat(equal + close).isGreaterThan(count / 4);
  }

  String summary() {
    return equal + " equal bit for bit, " + close + " to 1e-9, " + refused + " refused alike";
  }

  void compare(String name, Map<String, String> content) throws IOException {
    Map<String, Object> request = new LinkedHashMap<>(content);
    request.put("id", 1);
    request.put("kind", "plan");
    String text = JsonWriter.text(request);
    Map<?, ?> here = last(here(text));
    Map<?, ?> there = last(other.apply(text));
    Tree answers = new Tree(withoutTexts(here), withoutTexts(there));
    wrong(name, answers);
    if (!"done".equals(here.get("kind"))) {
      refused++;
      return;
    }
    Tree results = new Tree(results(here), results(there));
    wrong(name, results);
    String differs = firstDifference(String.valueOf(here.get("book")), there.get("book"));
    if (!differs.isEmpty()) {
      wrong.add(name + ": the book: " + differs);
    }
    if (results.unequalBits() == 0) {
      equal++;
    } else {
      close++;
    }
  }

  private void wrong(String name, Tree tree) {
    tree.differences().forEach(difference -> wrong.add(name + ": " + difference));
  }

  private static Object results(Map<?, ?> answer) throws IOException {
    return JsonReader.read(String.valueOf(answer.get("results")));
  }

  private static Map<Object, Object> withoutTexts(Map<?, ?> answer) {
    Map<Object, Object> rest = new LinkedHashMap<>(answer);
    rest.remove("results");
    rest.remove("book");
    return rest;
  }

  private static String firstDifference(String here, Object found) {
    String there = String.valueOf(found);
    int i = 0;
    while (i < here.length() && i < there.length() && here.charAt(i) == there.charAt(i)) {
      i++;
    }
    return i == here.length() && i == there.length()
        ? ""
        : "…" + part(here, i) + "… here, …" + part(there, i) + "… in the page";
  }

  private static String part(String text, int at) {
    return text.substring(Math.max(0, at - 60), Math.min(text.length(), at + 60));
  }

  private static Map<?, ?> last(String answers) throws IOException {
    List<?> all = (List<?>) JsonReader.read(answers);
    return (Map<?, ?>) all.get(all.size() - 1);
  }

  private static String here(String request) {
    List<String> answers = new ArrayList<>();
    Answers.answer(request, answers::add);
    return "[" + String.join(",", answers) + "]";
  }
}
