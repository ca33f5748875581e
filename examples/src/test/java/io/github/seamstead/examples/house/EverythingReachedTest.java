package io.github.seamstead.examples.house;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import java.io.IOException;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/**
 * Every class of a published module is reached: by a job, a command or a lesson, or it stands in
 * the list of entries that callers of the library use without them, with the reason.
 */
class EverythingReachedTest {

  private static Set<String> reached() {
    Set<String> reached = new TreeSet<>();
    Deque<JavaClass> open = new ArrayDeque<>();
    House.CLASSES.stream()
        .filter(type -> House.module(type).equals("examples"))
        .map(House::outermost)
        .filter(type -> reached.add(type.getName()))
        .forEach(open::add);
    while (!open.isEmpty()) {
      JavaClass type = open.pop();
      House.CLASSES.stream()
          .filter(inner -> House.outermost(inner).equals(type))
          .flatMap(inner -> inner.getDirectDependenciesFromSelf().stream())
          .map(dependency -> dependency.getTargetClass().getBaseComponentType())
          .filter(target -> target.getName().startsWith(House.ROOT))
          .map(House::outermost)
          .filter(target -> reached.add(target.getName()))
          .forEach(open::add);
    }
    return reached;
  }

  @Test
  void everyClassHasACaller() throws IOException {
    Set<String> reached = reached();
    Set<String> unreached =
        House.CLASSES.stream()
            .map(House::outermost)
            .filter(type -> type.getName().startsWith(House.ROOT))
            .filter(type -> !type.getSimpleName().equals("package-info"))
            .filter(type -> !type.isAnnotation())
            .map(JavaClass::getName)
            .filter(name -> !reached.contains(name))
            .map(name -> name.substring(House.ROOT.length()))
            .collect(Collectors.toCollection(TreeSet::new));
    assertThat(unreached).isEqualTo(House.exceptions("unreached.txt").keySet());
  }
}
