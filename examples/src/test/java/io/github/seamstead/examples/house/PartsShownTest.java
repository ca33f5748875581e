package io.github.seamstead.examples.house;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaMethod;
import io.github.seamstead.api.plan.Chapters;
import java.io.IOException;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;

/** Whatever a part holds is in the results and in the book, or the list says why not. */
class PartsShownTest {

  private static boolean isRead(RecordComponent component, Predicate<JavaClass> reader) {
    JavaClass part = House.CLASSES.get(component.getDeclaringRecord());
    JavaMethod accessor = part.getMethod(component.getName());
    return accessor.getAccessesToSelf().stream()
            .anyMatch(a -> reader.test(House.outermost(a.getOriginOwner())))
        || accessor.getReferencesToSelf().stream()
            .anyMatch(a -> reader.test(House.outermost(a.getOriginOwner())));
  }

  private static boolean isFacts(JavaClass type) {
    return type.getSimpleName().endsWith("Facts");
  }

  private static boolean isPage(JavaClass type) {
    String name = type.getSimpleName();
    return type.getPackageName().startsWith(House.ROOT + "api.book")
        || name.endsWith("Pages")
        || name.endsWith("Section")
        || name.endsWith("Cards")
        || name.endsWith("Drawings")
        || name.equals("PrintSheets");
  }

  @Test
  void everyComponentIsInTheResultsAndInTheBook() throws IOException {
    Set<String> lost = new TreeSet<>();
    Chapters.all().stream()
        .map(chapter -> chapter.part())
        .flatMap(part -> Arrays.stream(part.getRecordComponents()))
        .forEach(
            component -> {
              String name =
                  component.getDeclaringRecord().getSimpleName() + "." + component.getName();
              if (!isRead(component, PartsShownTest::isFacts)) {
                lost.add(name + " in results");
              }
              if (!isRead(component, PartsShownTest::isPage)) {
                lost.add(name + " in the book");
              }
            });
    assertThat(lost).isEqualTo(House.exceptions("parts-not-shown.txt").keySet());
  }
}
