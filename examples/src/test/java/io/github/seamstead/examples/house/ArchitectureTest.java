package io.github.seamstead.examples.house;

import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaCodeUnit;
import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.domain.JavaType;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The house stands as drawn: arrows between modules, no cycles, what is internal unseen. */
class ArchitectureTest {

  private static final String ROOT = "io.github.seamstead.";
  private static final Pattern MODULE = Pattern.compile("io\\.github\\.seamstead\\.([a-z]+)\\..*");
  private static final JavaClasses CLASSES =
      new ClassFileImporter()
          .withImportOption(new ImportOption.DoNotIncludeTests())
          .withImportOption(location -> !location.contains("-tests.jar"))
          .importPackages("io.github.seamstead");

  /** What each module may use, besides itself. */
  private static final Map<String, Set<String>> ARROWS =
      Map.of(
          "shared", Set.of(),
          "geometry", Set.of("shared"),
          "materials", Set.of("shared"),
          "assembly", Set.of("shared"),
          "api", Set.of("shared", "geometry", "materials", "assembly"),
          "examples", Set.of("shared", "geometry", "materials", "assembly", "api"));

  private static String module(JavaClass type) {
    Matcher matcher = MODULE.matcher(type.getName());
    return matcher.matches() ? matcher.group(1) : "";
  }

  @Test
  void everyModuleIsSeen() {
    assertThat(CLASSES.stream().map(ArchitectureTest::module).distinct())
        .containsAll(ARROWS.keySet());
  }

  @Test
  void modulesDependAsDrawn() {
    List<String> wrong = new ArrayList<>();
    for (JavaClass type : CLASSES) {
      Set<String> allowed = ARROWS.getOrDefault(module(type), Set.of());
      type.getDirectDependenciesFromSelf().stream()
          .filter(d -> d.getTargetClass().getName().startsWith(ROOT))
          .filter(d -> !module(d.getTargetClass()).equals(module(type)))
          .filter(d -> !allowed.contains(module(d.getTargetClass())))
          .forEach(d -> wrong.add(d.getDescription()));
    }
    assertThat(wrong).isEmpty();
  }

  @Test
  void packagesHaveNoCycles() {
    slices().matching("io.github.seamstead.(**)").should().beFreeOfCycles().check(CLASSES);
  }

  @Test
  void internalPackagesAreUnseenFromOtherModules() {
    List<String> wrong =
        CLASSES.stream()
            .flatMap(type -> type.getDirectDependenciesFromSelf().stream())
            .filter(d -> d.getTargetClass().getPackageName().endsWith(".internal"))
            .filter(d -> !module(d.getTargetClass()).equals(module(d.getOriginClass())))
            .map(d -> d.getDescription())
            .toList();
    assertThat(wrong).isEmpty();
  }

  @Test
  void commonsMathStaysInside() {
    List<String> wrong = new ArrayList<>();
    for (JavaClass type : CLASSES) {
      if (!isOpen(type)) {
        continue;
      }
      type.getCodeUnits().stream()
          .filter(ArchitectureTest::isOpen)
          .filter(unit -> types(unit).anyMatch(ArchitectureTest::isCommonsMath))
          .forEach(unit -> wrong.add(unit.getFullName()));
      type.getFields().stream()
          .filter(field -> isOpen(field) && isCommonsMath(field.getType()))
          .forEach(field -> wrong.add(field.getFullName()));
    }
    assertThat(wrong).isEmpty();
  }

  private static boolean isOpen(JavaClass type) {
    return type.getModifiers().contains(JavaModifier.PUBLIC);
  }

  private static boolean isOpen(JavaCodeUnit unit) {
    return unit.getModifiers().contains(JavaModifier.PUBLIC)
        || unit.getModifiers().contains(JavaModifier.PROTECTED);
  }

  private static boolean isOpen(JavaField field) {
    return field.getModifiers().contains(JavaModifier.PUBLIC)
        || field.getModifiers().contains(JavaModifier.PROTECTED);
  }

  private static Stream<JavaType> types(JavaCodeUnit unit) {
    return Stream.of(
            Stream.of(unit.getReturnType()),
            unit.getParameterTypes().stream(),
            unit.getThrowsClause().getTypes().stream())
        .flatMap(s -> s);
  }

  private static boolean isCommonsMath(JavaType type) {
    return type.getAllInvolvedRawTypes().stream()
        .anyMatch(raw -> raw.getName().startsWith("org.apache.commons.math3."));
  }
}
