package io.github.seamstead.examples.house;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaCodeUnit;
import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.domain.JavaType;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * What is published is what outside teams build on, and nothing else: public types, nested ones as
 * well, in packages that a descriptor exports to all.
 */
class PublishedTypesTest {

  /** What stands beside the parts in the room of a stage, for the list of rooms; and that list. */
  private static final Pattern ROOMS =
      Pattern.compile(".*\\.api\\.(chapter\\.\\w+\\.\\w+Chapter|plan\\.Chapters)");

  /** In the jar of tests of shared. */
  private static final String TESTING = House.ROOT + "shared.testing";

  /** The number of published types may fall; a new one must be worth a line in the list. */
  @Test
  void noMoreTypesArePublishedThanTheListSays() throws IOException {
    Map<String, Integer> published = new TreeMap<>();
    House.CLASSES.stream()
        .filter(House::isPublished)
        .forEach(type -> published.merge(House.module(type), 1, Integer::sum));
    Map<String, Integer> most = new TreeMap<>();
    House.exceptions("published-types.txt")
        .forEach((module, reason) -> most.put(module, Integer.valueOf(reason)));
    assertThat(published.keySet()).isEqualTo(most.keySet());
    published.forEach(
        (module, count) ->
            assertThat(count)
                .as("published types of %s", module)
                .isLessThanOrEqualTo(most.get(module)));
  }

  @Test
  void signaturesOfPublishedTypesNamePublishedTypesAlone() {
    Set<String> wrong = new TreeSet<>();
    House.CLASSES.stream()
        .filter(House::isPublished)
        .filter(type -> !ROOMS.matcher(type.getName()).matches())
        .forEach(
            type ->
                named(type)
                    .flatMap(named -> named.getAllInvolvedRawTypes().stream())
                    .map(JavaClass::getBaseComponentType)
                    .filter(named -> named.getName().startsWith(House.ROOT))
                    .filter(named -> !House.isPublished(named))
                    .filter(named -> !isHiddenParent(type, named))
                    .forEach(named -> wrong.add(shortName(type) + ": " + shortName(named))));
    assertThat(wrong).isEmpty();
  }

  /** One habit for a number that may lack: what a job may leave out is given so as well. */
  @Test
  void aNumberThatMayLackIsAnOptional() {
    Set<String> wrong = new TreeSet<>();
    House.CLASSES.stream()
        .filter(House::isPublished)
        .forEach(
            type ->
                named(type)
                    .flatMap(named -> named.getAllInvolvedRawTypes().stream())
                    .filter(
                        named -> named.getName().matches("java\\.util\\.Optional(Double|Int|Long)"))
                    .forEach(named -> wrong.add(shortName(type) + ": " + named.getSimpleName())));
    assertThat(wrong).isEmpty();
  }

  @Test
  void everyPackageIsExportedOrUsedInsideAlone() {
    List<String> stale = new ArrayList<>();
    Set<String> packages = new TreeSet<>();
    House.CLASSES.forEach(type -> packages.add(type.getPackageName()));
    House.DESCRIPTORS.forEach(
        (module, descriptor) ->
            Stream.concat(descriptor.toAll().stream(), descriptor.toOwn().keySet().stream())
                .filter(exported -> !packages.contains(exported))
                .forEach(stale::add));
    assertThat(stale).as("exported, but there is no such package").isEmpty();
    List<String> open =
        House.DESCRIPTORS.values().stream()
            .flatMap(descriptor -> descriptor.toAll().stream())
            .filter(exported -> exported.endsWith(".internal"))
            .toList();
    assertThat(open).as("internal, but exported to all").isEmpty();
  }

  @Test
  void whatIsNotExportedIsNeitherDocumentedNorHeldCompatible() throws IOException {
    Set<String> hidden = new TreeSet<>();
    House.CLASSES.stream()
        .filter(type -> House.DESCRIPTORS.containsKey(House.module(type)))
        .map(JavaClass::getPackageName)
        .filter(name -> !name.endsWith(".internal") && !name.equals(TESTING))
        .filter(
            name -> House.DESCRIPTORS.values().stream().noneMatch(d -> d.toAll().contains(name)))
        .forEach(hidden::add);
    String pom = Files.readString(Path.of("../pom.xml"));
    assertThat(listed(pom, "<excludePackageNames>([^<]*)<", ":")).isEqualTo(hidden);
    assertThat(listed(pom, "(?s)<excludes>(.*?)</excludes>", "\\s*</?exclude>\\s*"))
        .isEqualTo(hidden);
  }

  private static Set<String> listed(String pom, String element, String between) {
    Matcher matcher = Pattern.compile(element).matcher(pom);
    assertThat(matcher.find()).isTrue();
    Set<String> listed = new TreeSet<>(Arrays.asList(matcher.group(1).split(between)));
    listed.removeIf(name -> name.isBlank() || name.endsWith(".internal"));
    return listed;
  }

  /** A parent that is not public lends its members: these alone are seen. */
  private static boolean isHiddenParent(JavaClass type, JavaClass named) {
    return named.getPackageName().equals(type.getPackageName())
        && type.getRawSuperclass().filter(named::equals).isPresent();
  }

  /** The types that a type shows: of what it extends, of its members. */
  private static Stream<JavaType> named(JavaClass type) {
    return Stream.of(
            type.getSuperclass().stream(),
            type.getInterfaces().stream(),
            type.getFields().stream()
                .filter(field -> House.isOpen(field.getModifiers()))
                .map(JavaField::getType),
            type.getCodeUnits().stream()
                .filter(unit -> House.isOpen(unit.getModifiers()))
                .filter(unit -> !unit.getModifiers().contains(JavaModifier.SYNTHETIC))
                .flatMap(PublishedTypesTest::named))
        .flatMap(types -> types);
  }

  private static Stream<JavaType> named(JavaCodeUnit unit) {
    return Stream.of(
            Stream.of(unit.getReturnType()),
            unit.getParameterTypes().stream(),
            unit.getThrowsClause().getTypes().stream())
        .flatMap(types -> types);
  }

  private static String shortName(JavaClass type) {
    return type.getName().substring(House.ROOT.length());
  }
}
