package io.github.seamstead.examples.house;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.core.domain.JavaModifier;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * Published values do not change, so that threads share them without a thought; what does change
 * says in its documentation whether threads may share it.
 */
class ThreadSafetyTest {

  @Test
  void nothingIsKeptInStaticFieldsThatChange() {
    assertThat(fields().filter(f -> isStatic(f) && !isFinal(f)).map(JavaField::getFullName))
        .isEmpty();
  }

  @Test
  void publishedTypesThatChangeSayWhetherThreadsMayShareThem() throws IOException {
    Set<String> silent = new TreeSet<>();
    for (JavaClass type : House.CLASSES) {
      if (House.isPublished(type)
          && canChange(type)
          && isHandedOut(type)
          && !speaksOfThreads(type)) {
        silent.add(type.getName());
      }
    }
    assertThat(silent).isEmpty();
  }

  private static Stream<JavaField> fields() {
    return House.CLASSES.stream()
        .flatMap(type -> type.getFields().stream())
        .filter(field -> !field.getModifiers().contains(JavaModifier.SYNTHETIC));
  }

  private static boolean canChange(JavaClass type) {
    return type.getAllFields().stream()
        .filter(f -> f.getOwner().getName().startsWith(House.ROOT))
        .anyMatch(f -> !isStatic(f) && !isFinal(f));
  }

  /** Whether a caller can hold one: some classes make themselves for the length of a call. */
  private static boolean isHandedOut(JavaClass type) {
    return type.getConstructors().stream()
            .anyMatch(made -> !made.getModifiers().contains(JavaModifier.PRIVATE))
        || type.getMethodsWithReturnTypeOfSelf().stream()
            .anyMatch(method -> House.isOpen(method.getModifiers()));
  }

  private static boolean isStatic(JavaField field) {
    return field.getModifiers().contains(JavaModifier.STATIC);
  }

  private static boolean isFinal(JavaField field) {
    return field.getModifiers().contains(JavaModifier.FINAL);
  }

  private static boolean speaksOfThreads(JavaClass type) throws IOException {
    JavaClass outer = House.outermost(type);
    String file = outer.getName().replace('.', '/') + ".java";
    Path source = Path.of("..", House.module(outer), "src/main/java", file);
    List<String> lines = Files.readAllLines(source);
    return lines.stream()
        .takeWhile(line -> !line.contains(" " + type.getSimpleName() + " "))
        .anyMatch(
            line ->
                line.strip().startsWith("*") && line.toLowerCase(Locale.ROOT).contains("thread"));
  }
}
