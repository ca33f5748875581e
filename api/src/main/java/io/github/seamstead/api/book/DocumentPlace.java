package io.github.seamstead.api.book;

import java.util.Locale;

/** Says in words where a value stands in the job document. */
final class DocumentPlace {

  private DocumentPlace() {}

  /**
   * Turns a path into words: indices fall away, names written together are taken apart.
   *
   * @param path for example {@code $.floor.layers[3].rollWidth}, or words in brackets
   * @return for example {@code floor, layers: roll width}
   */
  static String words(String path) {
    if (!path.startsWith("$.")) {
      return path.replaceAll("^\\((.*)\\)$", "$1");
    }
    String[] names = path.substring(2).replaceAll("\\[[^\\]]*\\]", "").split("\\.", -1);
    StringBuilder words = new StringBuilder();
    for (int i = 0; i < names.length; i++) {
      words.append(i == 0 ? "" : i == names.length - 1 ? ": " : ", ");
      words.append(names[i].replaceAll("(?<=[a-z])(?=[A-Z])", " ").toLowerCase(Locale.ROOT));
    }
    return words.toString();
  }
}
