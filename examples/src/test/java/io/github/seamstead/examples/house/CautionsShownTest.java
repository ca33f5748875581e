package io.github.seamstead.examples.house;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaMethod;
import com.tngtech.archunit.core.domain.JavaModifier;
import io.github.seamstead.shared.caution.Caution;
import java.io.IOException;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Whatever caution a result carries is shown: a chapter asks for it, or the list says why not. */
class CautionsShownTest {

  private static boolean givesCautions(JavaMethod method) {
    return method.getReturnType().getAllInvolvedRawTypes().stream()
        .anyMatch(type -> type.isEquivalentTo(Caution.class));
  }

  private static boolean isCalledByAChapter(JavaMethod method, Set<JavaMethod> seen) {
    return method.getAccessesToSelf().stream()
        .anyMatch(
            access -> {
              JavaClass from = access.getOriginOwner();
              if (from.getPackageName().startsWith(House.ROOT + "api.chapter")) {
                return true;
              }
              // Cautions of a part are often gathered by the result that holds it.
              return access.getOrigin() instanceof JavaMethod caller
                  && givesCautions(caller)
                  && seen.add(caller)
                  && isCalledByAChapter(caller, seen);
            });
  }

  @Test
  void everyPublicCautionIsAskedForByAChapter() throws IOException {
    Set<String> lost =
        House.CLASSES.stream()
            .filter(
                type -> Set.of("geometry", "materials", "assembly").contains(House.module(type)))
            .flatMap(type -> type.getMethods().stream())
            .filter(method -> method.getModifiers().contains(JavaModifier.PUBLIC))
            .filter(CautionsShownTest::givesCautions)
            .filter(method -> !isCalledByAChapter(method, new java.util.HashSet<>()))
            .map(m -> m.getOwner().getName().substring(House.ROOT.length()) + "." + m.getName())
            .collect(Collectors.toCollection(TreeSet::new));
    assertThat(lost).isEqualTo(House.exceptions("cautions-not-shown.txt").keySet());
  }
}
