package io.github.seamstead.examples.golden;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What a person reads in a written book, as lines that can be compared and reviewed. */
final class Reading {

  /** More digits than any reader acts on, fewer than machines may differ in. */
  private static final MathContext DIGITS = new MathContext(7);

  private static final Pattern HIDDEN =
      Pattern.compile("(?s)<(style|script)\\b.*?</\\1>|<!--.*?-->");
  private static final Pattern BREAKS =
      Pattern.compile(
          "</?(p|li|tr|h\\d|div|section|table|figure|summary|details|text|ol|ul)\\b[^>]*>");
  private static final Pattern CELLS = Pattern.compile("</t[dh]>");
  private static final Pattern TAGS = Pattern.compile("<[^>]*>");

  private Reading() {}

  /** The text of a page, a line for each paragraph, row or label. */
  static List<String> page(Path html) throws IOException {
    String text = HIDDEN.matcher(Files.readString(html)).replaceAll("");
    text = text.replaceAll("\\s+", " ");
    text = CELLS.matcher(BREAKS.matcher(text).replaceAll("\n")).replaceAll(" | ");
    return TAGS.matcher(text)
        .replaceAll("")
        .replace("&lt;", "<")
        .replace("&gt;", ">")
        .replace("&quot;", "\"")
        .replace("&#39;", "'")
        .replace("&amp;", "&")
        .lines()
        .map(String::strip)
        .filter(line -> !line.isEmpty())
        .toList();
  }

  /** The results, a line for each value with its path; a row of numbers is one line. */
  static List<String> results(Path json) throws IOException {
    List<String> lines = new ArrayList<>();
    walk("$", new ObjectMapper().readTree(json.toFile()), lines);
    return lines;
  }

  private static void walk(String path, JsonNode node, List<String> lines) {
    if (node.isObject()) {
      node.properties().forEach(e -> walk(path + "." + e.getKey(), e.getValue(), lines));
    } else if (node.isArray() && !flat(node)) {
      for (int i = 0; i < node.size(); i++) {
        walk(path + "[" + i + "]", node.get(i), lines);
      }
    } else {
      lines.add(path + " = " + value(node));
    }
  }

  /** Whether an array holds numbers only, or rows of numbers only. */
  private static boolean flat(JsonNode array) {
    return array.valueStream().allMatch(n -> n.isNumber() || n.isArray() && flat(n));
  }

  private static String value(JsonNode node) {
    if (node.isArray()) {
      return node.valueStream().map(Reading::value).collect(Collectors.joining(", ", "[", "]"));
    }
    if (node.isNumber()) {
      BigDecimal number = node.decimalValue().round(DIGITS).stripTrailingZeros();
      return number.abs().compareTo(new BigDecimal("1e-9")) < 0 ? "0" : number.toPlainString();
    }
    return node.asText();
  }

  /** All lists, each under its name. */
  static List<String> lists(Path folder) throws IOException {
    List<Path> files;
    try (Stream<Path> all = Files.list(folder)) {
      files = all.sorted().toList();
    }
    List<String> lines = new ArrayList<>();
    for (Path file : files) {
      lines.add("# " + file.getFileName());
      Files.readString(file).lines().forEach(lines::add);
    }
    return lines;
  }
}
