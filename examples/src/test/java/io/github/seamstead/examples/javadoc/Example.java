package io.github.seamstead.examples.javadoc;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A block of code in the comments of a class or of a package.
 *
 * @param packageName the package
 * @param place the class, or package-info
 * @param lines the lines of the block
 */
record Example(String packageName, String place, List<String> lines) {

  private static final Pattern BLOCK =
      Pattern.compile(
          "^ *\\* <pre>\\{@code\n(.*?)^ *\\* \\}</pre>", Pattern.DOTALL | Pattern.MULTILINE);
  private static final Pattern NAME = Pattern.compile("(?<![\\w.])[A-Z]\\w*");
  private static final Pattern SHOWN =
      Pattern.compile("(?:(?:[\\w<>\\[\\], .]+) (\\w+) = )?(\\S.*); +// (.*)");
  private static final String JAVA =
      "import com.fasterxml.jackson.databind.ObjectMapper;\n"
          + "import java.nio.file.*;\n"
          + "import java.time.*;\n"
          + "import java.util.*;\n"
          + "import java.util.concurrent.*;\n";

  /** All blocks in the main sources of a module. */
  static List<Example> in(String module) throws IOException {
    List<Example> examples = new ArrayList<>();
    Path root = Path.of("..", module, "src/main/java");
    try (Stream<Path> files = Files.walk(root)) {
      for (Path file : files.filter(f -> f.toString().endsWith(".java")).sorted().toList()) {
        String packageName =
            root.relativize(file.getParent())
                .toString()
                .replace(file.getFileSystem().getSeparator(), ".");
        String place = file.getFileName().toString().replace(".java", "");
        Matcher block = BLOCK.matcher(Files.readString(file));
        while (block.find()) {
          List<String> lines =
              block.group(1).lines().map(line -> line.replaceFirst("^ *\\* ?", "")).toList();
          examples.add(new Example(packageName, place, lines));
        }
      }
    }
    return examples;
  }

  /**
   * Writes a class that runs the block; methods of the block stand beside its {@code run}.
   *
   * @param name name of the class
   * @param types names of published types to the packages that have one of that name
   */
  String source(String name, Map<String, Set<String>> types) {
    boolean isMethod = lines.get(0).startsWith("static ");
    StringBuilder source = new StringBuilder(imports(types)).append(JAVA);
    source.append("@SuppressWarnings(\"unused\")\npublic class ").append(name).append(" {\n");
    if (isMethod) {
      source.append(String.join("\n", lines)).append("\n");
    }
    source.append("public static void run(Path folder) throws Exception {\n");
    if (!isMethod) {
      source.append(checked());
    }
    return source.append("}\n}\n").toString();
  }

  private String imports(Map<String, Set<String>> types) {
    Set<String> names = new TreeSet<>();
    for (String line : lines) {
      Matcher name =
          NAME.matcher(line.replaceAll("\"(\\\\.|[^\"\\\\])*\"", "").replaceFirst("//.*", ""));
      while (name.find()) {
        names.add(name.group());
      }
    }
    return names.stream()
        .filter(types::containsKey)
        .map(type -> "import " + home(types.get(type), type) + "." + type + ";\n")
        .collect(Collectors.joining());
  }

  private String home(Set<String> packages, String type) {
    if (packages.contains(packageName)) {
      return packageName;
    }
    // Of two namesakes the one of the same module is meant.
    String module = packageName.split("\\.", 5)[3];
    List<String> near =
        packages.stream().filter(name -> name.split("\\.", 5)[3].equals(module)).toList();
    List<String> homes = near.isEmpty() ? List.copyOf(packages) : near;
    if (homes.size() > 1) {
      throw new IllegalStateException(this + ": " + type + " is in each of " + homes);
    }
    return homes.get(0);
  }

  /** The lines, each value that has a comment held to it. */
  private String checked() {
    StringBuilder checked = new StringBuilder();
    boolean starts = true;
    for (String line : lines) {
      Matcher shown = SHOWN.matcher(line.strip());
      if (starts && shown.matches() && !shown.group(2).startsWith("return")) {
        String text = '"' + shown.group(3).replace("\\", "\\\\").replace("\"", "\\\"") + '"';
        String value = shown.group(1) == null ? shown.group(2) : shown.group(1);
        if (shown.group(1) != null) {
          checked.append(line).append('\n');
        }
        checked.append(ShownValue.class.getName()).append(".check(");
        checked.append(value).append(", ").append(text).append(");\n");
      } else {
        checked.append(line).append('\n');
      }
      String code = line.replaceFirst("//.*", "").strip();
      starts = code.isEmpty() || code.endsWith(";") || code.endsWith("{") || code.endsWith("}");
    }
    return checked.toString();
  }

  @Override
  public String toString() {
    return packageName + "." + place;
  }
}
