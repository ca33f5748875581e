package io.github.seamstead.examples.reference;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.regex.Pattern;

/** Reads the comparisons that the tests of each module leave in {@code target/outside-checks}. */
public final class ReferenceFiles {

  private static final List<String> MODULES =
      List.of("shared", "geometry", "materials", "assembly", "api", "examples");

  private ReferenceFiles() {}

  /**
   * Reads the comparisons of all modules.
   *
   * @param project the project's top folder
   * @return the comparisons by calculation, each as often as different tests made it; empty if no
   *     test ran
   * @throws IOException if a file cannot be read
   */
  public static List<CheckedValue> read(Path project) throws IOException {
    LinkedHashSet<CheckedValue> values = new LinkedHashSet<>();
    for (Path folder : folders(project)) {
      try (DirectoryStream<Path> files = Files.newDirectoryStream(folder, "*.tsv")) {
        List<Path> sorted = new ArrayList<>();
        files.forEach(sorted::add);
        sorted.sort(Comparator.naturalOrder());
        for (Path file : sorted) {
          Files.readAllLines(file).forEach(line -> values.add(CheckedValue.parse(line)));
        }
      }
    }
    return List.copyOf(values);
  }

  /**
   * Names the modules whose tests left nothing.
   *
   * @param project the project's top folder
   * @return those of the modules that compute, empty after a full build
   */
  public static List<String> missing(Path project) {
    return MODULES.subList(0, MODULES.indexOf("api")).stream()
        .filter(module -> !Files.isDirectory(folder(project, module)))
        .toList();
  }

  /**
   * Tells whether a compiled test class names a class of the library.
   *
   * @param project the project's top folder
   * @param test the test's name
   * @param type the library class's name
   * @return true if the test's class file names it; false also where that file is missing
   * @throws UncheckedIOException if the file cannot be read
   */
  public static boolean uses(Path project, String test, String type) {
    Pattern named = Pattern.compile(Pattern.quote(type.replace('.', '/')) + "(?![A-Za-z0-9_])");
    for (String module : MODULES) {
      Path file =
          project
              .resolve(module)
              .resolve("target/test-classes/" + test.replace('.', '/') + ".class");
      if (!test.isEmpty() && Files.isRegularFile(file)) {
        try {
          return named.matcher(Files.readString(file, StandardCharsets.ISO_8859_1)).find();
        } catch (IOException e) {
          throw new UncheckedIOException("a compiled test cannot be read", e);
        }
      }
    }
    return false;
  }

  private static List<Path> folders(Path project) {
    return MODULES.stream()
        .map(module -> folder(project, module))
        .filter(Files::isDirectory)
        .toList();
  }

  private static Path folder(Path project, String module) {
    return project.resolve(module).resolve("target/outside-checks");
  }
}
