package io.github.seamstead.api.job;

import java.io.IOException;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Writes the builders of the records from the table of keys. A record has one if any of its keys
 * may be left out; one that needs all its values is made by its constructor. Run with the folder of
 * the sources as argument to write them anew after a change of the table, then format.
 */
final class BuilderText {

  private static final Path SOURCES =
      Path.of("src", "main", "java", "io", "github", "seamstead", "api", "job");
  private static final Pattern START = Pattern.compile("\n\n  /\\*\\*\\s+\\* Starts a builder");
  private static final Map<String, String> PLAIN =
      Map.of("Double", "double", "Integer", "int", "Boolean", "boolean");

  private BuilderText() {}

  /** Writes all builders into a checkout's {@code api} folder. */
  public static void main(String[] args) throws IOException {
    for (Shape<?> shape : shapes()) {
      Path file = file(Path.of(args[0]), shape);
      Files.writeString(file, withBuilder(Files.readString(file), shape));
    }
  }

  /** The shapes whose records have a builder. */
  static List<Shape<?>> shapes() {
    return Shapes.DOCUMENT.reachable().stream().filter(BuilderText::isBuilt).toList();
  }

  static Path file(Path module, Shape<?> shape) {
    return module.resolve(SOURCES).resolve(holder(shape) + ".java");
  }

  private static String holder(Shape<?> shape) {
    return isJob(shape) ? "Job" : shape.type().getSimpleName();
  }

  private static boolean isJob(Shape<?> shape) {
    return shape.type() == JobDocument.class;
  }

  private static boolean isBuilt(Shape<?> shape) {
    return shape.entries().stream().anyMatch(key -> !key.must());
  }

  /** The source of a record with its builder as the table has it now. */
  static String withBuilder(String source, Shape<?> shape) {
    Matcher start =
        (isJob(shape) ? Pattern.compile("\n\n  /\\*\\* Builds a job") : START).matcher(source);
    String text = start.find() ? source.substring(0, start.start()) : beforeEnd(source);
    text = text.stripTrailing();
    if (!isJob(shape) && text.contains("Set<String>") && !text.contains("java.util.Set;")) {
      throw new IllegalStateException("no import of Set in " + shape.type());
    }
    String builder = isJob(shape) ? jobBuilder(shape, source) : sectionBuilder(shape, source);
    return withImports(text + "\n\n" + builder + "}\n");
  }

  private static String beforeEnd(String source) {
    String text = source.substring(0, source.lastIndexOf('}')).stripTrailing();
    return text;
  }

  private static String withImports(String text) {
    if (text.contains("Set.of()") && !text.contains("import java.util.Set;")) {
      if (text.contains("import ")) {
        int at = text.lastIndexOf("\nimport ");
        int end = text.indexOf('\n', at + 1);
        return text.substring(0, end) + "\nimport java.util.Set;" + text.substring(end);
      }
      int end = text.indexOf(";\n");
      return text.substring(0, end + 2) + "\nimport java.util.Set;\n" + text.substring(end + 2);
    }
    return text;
  }

  private static String sectionBuilder(Shape<?> shape, String source) {
    String name = shape.type().getSimpleName();
    StringBuilder out = new StringBuilder();
    out.append(
        """
          /**
           * Starts a builder, for {@link Job#builder()}.
           *
           * @return a builder that states nothing yet
           */
          public static Builder builder() {
            return new Builder();
          }

          /**
           * Starts a builder from this record.
           *
           * @return a builder that states all that this record holds
           */
          public Builder toBuilder() {
            Builder builder = new Builder();
            builder.stateAll(this, Set.of());
            return builder;
          }

          /** Builds this section of a job; see {@link Draft}. Belongs to one thread. */
          public static final class Builder extends Draft<RECORD> {

            private Builder() {
              super(RECORD.class);
            }
        """
            .replace("RECORD", name)
            .replace("; see {@link Draft}", ""));
    setters(shape, source, out);
    return out.append("  }\n").toString();
  }

  private static String jobBuilder(Shape<?> shape, String source) {
    StringBuilder out = new StringBuilder();
    out.append(
        """
          /** Builds a job section by section. Belongs to one thread. */
          public static final class Builder extends Draft<JobDocument> {

            private final Set<String> assumed;

            private Builder() {
              super(JobDocument.class);
              assumed = Set.of();
              state("seamstead", Forms.NEWEST);
            }

            private Builder(Job job) {
              super(JobDocument.class);
              assumed = job.assumedPaths();
              stateAll(job.document, assumed);
            }

            /**
             * Checks all that is stated and assumes what is not.
             *
             * @return the job
             * @throws JobFaultsException with all faults, if there are any
             */
            public Job build() {
              return ofTree(tree("$", assumed));
            }
        """);
    String document = read(source);
    setters(shape, document, out);
    return out.append("  }\n").toString();
  }

  private static String read(String unused) {
    try {
      return Files.readString(module().resolve(SOURCES).resolve("JobDocument.java"));
    } catch (IOException e) {
      throw new IllegalStateException(unused, e);
    }
  }

  static Path module() {
    return Files.exists(SOURCES) ? Path.of("") : Path.of(System.getProperty("api", "api"));
  }

  private static void setters(Shape<?> shape, String source, StringBuilder out) {
    Map<String, String> meanings = meanings(source);
    for (Key<?> key : shape.entries()) {
      if (!key.name().equals("seamstead")) {
        String meaning = Optional.ofNullable(meanings.get(key.name())).orElseThrow();
        String type = type(shape, key.name());
        String assumed =
            key.shown().isEmpty() ? "" : "; " + key.shown() + " is assumed if left out";
        out.append(
            """

                /**
                 * States %s.
                 *
                 * @param %s %s%s
                 * @return this builder
                 */
                public Builder %s(%s %s) {
                  state("%s", %s);
                  return this;
                }
            """
                .formatted(
                    key.name(),
                    key.name(),
                    meaning,
                    assumed,
                    key.name(),
                    type,
                    key.name(),
                    key.name(),
                    key.name()));
      }
    }
  }

  private static Map<String, String> meanings(String source) {
    Map<String, String> meanings = new HashMap<>();
    Matcher param =
        Pattern.compile("\\* @param (\\w+) ([^@]*?)\\s*\\n \\*(?= @|/)", Pattern.DOTALL)
            .matcher(source.substring(0, source.indexOf("public record")));
    while (param.find()) {
      String text = param.group(2).replaceAll("\\s*\\n \\*\\s*", " ").replace(", if stated", "");
      meanings.put(param.group(1), text.strip());
      param.region(param.end() - 2, source.indexOf("public record"));
    }
    return meanings;
  }

  private static String type(Shape<?> shape, String name) {
    Type type =
        Arrays.stream(shape.type().getRecordComponents())
            .filter(component -> component.getName().equals(name))
            .map(RecordComponent::getGenericType)
            .findFirst()
            .orElseThrow();
    String text = text(strip(type));
    return PLAIN.getOrDefault(text, text);
  }

  private static Type strip(Type type) {
    return type instanceof ParameterizedType p && p.getRawType() == Optional.class
        ? p.getActualTypeArguments()[0]
        : type;
  }

  private static String text(Type type) {
    if (type instanceof ParameterizedType p) {
      List<String> arguments =
          Arrays.stream(p.getActualTypeArguments()).map(BuilderText::text).toList();
      return ((Class<?>) p.getRawType()).getSimpleName() + "<" + String.join(", ", arguments) + ">";
    }
    Class<?> plain = (Class<?>) type;
    boolean built = shapes().stream().anyMatch(shape -> shape.type() == plain);
    String name =
        plain.isMemberClass()
            ? plain.getDeclaringClass().getSimpleName() + "." + plain.getSimpleName()
            : plain.getSimpleName();
    return built ? name + ".Builder" : name;
  }
}
