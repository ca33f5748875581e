package io.github.seamstead.examples.house;

import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaCodeUnit;
import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.domain.JavaType;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The house stands as drawn: arrows between modules, no cycles, what is internal unseen. */
class ArchitectureTest {

  private static final String ROOT = House.ROOT;
  private static final JavaClasses CLASSES = House.CLASSES;

  /** The rooms of the chapters and of the book: they read numbers of the trade and hold none. */
  private static final String NUMBERLESS =
      Pattern.quote(ROOT + "api.") + "(chapter|book|compare|doubt)(\\..*)?";

  /** What draws and writes holds sizes on the page, which are no numbers of the trade. */
  private static final Pattern DRAWN =
      Pattern.compile(
          ".*(Drawings?|Pages|Section|Sheets|SheetMap|Words|Sketch|Cards?|Miniature|Chart)");

  /** Functions of Math that may differ by a unit in the last place between machines. */
  private static final Set<String> ELEMENTARY =
      Set.of(
          "sin", "cos", "tan", "asin", "acos", "atan", "atan2", "exp", "expm1", "log", "log10",
          "log1p", "pow", "cbrt", "hypot", "sinh", "cosh", "tanh");

  /**
   * An SI unit as a word of a name, but for a rate or a height that the trade says with its unit.
   */
  private static final Pattern SI_UNIT =
      Pattern.compile(
          "(^|(?<![pP]er(Cubic|Square)?|Two)(?=[A-Z]))(?i:metres?|kg|kilograms?|seconds|pascals?|newtons?|radians?)"
              + "(?![a-z])");

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
    return House.module(type);
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
  void modulesSeeOfOneAnotherWhatIsExportedToThem() throws IOException {
    Map<String, Descriptor> descriptors = Descriptor.all();
    List<String> wrong =
        CLASSES.stream()
            // What runs on the class path sees all; see the next test.
            .filter(type -> descriptors.containsKey(module(type)))
            .flatMap(type -> type.getDirectDependenciesFromSelf().stream())
            .filter(d -> d.getTargetClass().getName().startsWith(ROOT))
            .filter(d -> !module(d.getTargetClass()).equals(module(d.getOriginClass())))
            .filter(
                d ->
                    !descriptors
                        .get(module(d.getTargetClass()))
                        .isSeenBy(module(d.getOriginClass()), d.getTargetClass().getPackageName()))
            .map(d -> d.getDescription())
            .toList();
    assertThat(wrong).isEmpty();
  }

  @Test
  void examplesUseNothingInternal() {
    List<String> wrong =
        CLASSES.stream()
            .filter(type -> module(type).equals("examples"))
            .flatMap(type -> type.getDirectDependenciesFromSelf().stream())
            .filter(d -> d.getTargetClass().getPackageName().endsWith(".internal"))
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

  @Test
  void chaptersAndComparisonsHoldNoTradeNumbers() throws IOException {
    List<String> wrong =
        CLASSES.stream()
            .filter(type -> type.getPackageName().matches(NUMBERLESS))
            .filter(type -> !DRAWN.matcher(type.getSimpleName()).matches())
            .flatMap(type -> type.getFields().stream())
            .filter(field -> field.getModifiers().contains(JavaModifier.STATIC))
            .filter(field -> field.getRawType().getName().matches("double|float|\\[D|\\[F"))
            .map(field -> field.getFullName().substring(ROOT.length()))
            .sorted()
            .toList();
    assertThat(wrong)
        .as("a number of the trade belongs to the module that owns it")
        .containsExactlyElementsOf(House.exceptions("numbers-in-api.txt").keySet());
  }

  @Test
  void numbersAreInSiSoThatNoNameSaysIt() {
    List<String> wrong =
        CLASSES.stream()
            .filter(type -> !Set.of("api", "examples").contains(module(type)))
            .filter(type -> !type.getPackageName().equals(ROOT + "shared.quantity"))
            .flatMap(type -> type.getMethods().stream())
            .filter(ArchitectureTest::isOpen)
            .filter(method -> SI_UNIT.matcher(method.getName()).find())
            .map(method -> method.getFullName().substring(ROOT.length()))
            .sorted()
            .toList();
    assertThat(wrong).as("the unit stands in the Javadoc").isEmpty();
  }

  @Test
  void elementaryFunctionsGiveTheSameBitsOnEveryMachine() {
    List<String> wrong =
        CLASSES.stream()
            .flatMap(type -> type.getMethodCallsFromSelf().stream())
            .filter(call -> call.getTargetOwner().isEquivalentTo(Math.class))
            .filter(call -> ELEMENTARY.contains(call.getTarget().getName()))
            .map(
                call ->
                    call.getOrigin().getFullName() + " calls Math." + call.getTarget().getName())
            .sorted()
            .toList();
    assertThat(wrong).as("StrictMath is promised bit for bit, Math is not").isEmpty();
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
