package io.github.seamstead.examples.javadoc;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.io.IOException;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Every class that a package page names as the first to open shows how it is used, and it runs. */
class JavadocExamplesTest {

  private static final List<String> MODULES =
      List.of("shared", "geometry", "materials", "assembly", "api");
  private static final Pattern EXPORTS = Pattern.compile("exports ([\\w.]+);");
  private static final Pattern FIRST =
      Pattern.compile(
          "First class(es)? to open: \\{@link\\s+([\\w.]+)\\}(?:[^{]*\\{@link\\s+([\\w.]+)\\})?");

  /** Rooms of parts: what a plan holds, found through {@code JobPlan}. */
  private static final Pattern PARTS = Pattern.compile(".*\\.api\\.chapter\\.\\w+");

  /** The page of the whole, which names packages. */
  private static final String WHOLE = "io.github.seamstead.api";

  @TempDir private Path folder;

  private static List<Example> all() throws IOException {
    List<Example> all = new ArrayList<>();
    for (String module : MODULES) {
      all.addAll(Example.in(module));
    }
    return all;
  }

  /** Exported packages, with the first classes to open that their pages name. */
  private static Map<String, Set<String>> firstClasses() throws IOException {
    Map<String, Set<String>> packages = new TreeMap<>();
    for (String module : MODULES) {
      Path sources = Path.of("..", module, "src/main");
      Matcher exports =
          EXPORTS.matcher(Files.readString(sources.resolve("module/module-info.java")));
      while (exports.find()) {
        String page =
            Files.readString(
                    sources.resolve(
                        "java/" + exports.group(1).replace('.', '/') + "/package-info.java"))
                .replaceAll("\n \\* ?", " ");
        Set<String> names = new TreeSet<>();
        Matcher first = FIRST.matcher(page);
        if (first.find()) {
          names.add(first.group(2));
          if (first.group(1) != null) {
            names.add(first.group(3));
          }
        }
        packages.put(exports.group(1), names);
      }
    }
    return packages;
  }

  @Test
  void everyPageNamesTheFirstClassToOpen() throws IOException {
    List<String> without = new ArrayList<>();
    firstClasses()
        .forEach(
            (name, classes) -> {
              if (classes.isEmpty() && !PARTS.matcher(name).matches() && !name.equals(WHOLE)) {
                without.add(name);
              }
            });
    assertThat(without).isEmpty();
  }

  @Test
  void everyFirstClassHasAnExample() throws IOException {
    Set<String> shown = new TreeSet<>();
    all().forEach(example -> shown.add(example.toString()));
    Set<String> first = new TreeSet<>();
    firstClasses()
        .forEach(
            (name, classes) -> {
              if (!PARTS.matcher(name).matches()) {
                first.addAll(classes);
              }
            });
    assertThat(first).hasSizeGreaterThan(30);
    assertThat(shown).containsAll(first);
  }

  @Test
  void everyExampleCompilesAndGivesTheValuesThatItShows() throws Exception {
    List<Example> examples = all();
    Map<String, Set<String>> types = publishedTypes();
    List<String> arguments =
        new ArrayList<>(
            List.of(
                "-proc:none",
                "-nowarn",
                "-cp",
                System.getProperty("java.class.path"),
                "-d",
                folder.toString()));
    for (int i = 0; i < examples.size(); i++) {
      String name = "Example" + i + examples.get(i).place().replace('-', '_');
      Path file = folder.resolve(name + ".java");
      Files.writeString(file, examples.get(i).source(name, types));
      arguments.add(file.toString());
    }
    int code =
        ToolProvider.getSystemJavaCompiler()
            .run(null, null, null, arguments.toArray(String[]::new));
    assertThat(code).as("the compiler's exit code").isZero();
    List<String> wrong = new ArrayList<>();
    try (URLClassLoader loader = new URLClassLoader(new URL[] {folder.toUri().toURL()})) {
      for (int i = 0; i < examples.size(); i++) {
        String name = "Example" + i + examples.get(i).place().replace('-', '_');
        Path own = Files.createDirectory(folder.resolve("folder" + i));
        try {
          loader.loadClass(name).getMethod("run", Path.class).invoke(null, own);
        } catch (ReflectiveOperationException e) {
          wrong.add(examples.get(i) + ": " + e.getCause());
        }
      }
    }
    assertThat(wrong).isEmpty();
    assertThat(ShownValue.checked()).isGreaterThan(examples.size() / 2);
  }

  /** Simple names of public types of exported packages, with their packages. */
  private static Map<String, Set<String>> publishedTypes() throws IOException {
    JavaClasses classes =
        new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests())
            .importPackages("io.github.seamstead");
    Set<String> exported = firstClasses().keySet();
    Map<String, Set<String>> types = new HashMap<>();
    for (JavaClass type : classes) {
      if (exported.contains(type.getPackageName())
          && type.getModifiers().contains(JavaModifier.PUBLIC)
          && type.getEnclosingClass().isEmpty()) {
        types
            .computeIfAbsent(type.getSimpleName(), name -> new TreeSet<>())
            .add(type.getPackageName());
      }
    }
    return types;
  }
}
