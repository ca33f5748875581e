package io.github.seamstead.examples.lessons;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.seamstead.api.page.LessonTitle;
import io.github.seamstead.examples.reference.PublishedCalculations;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** The lessons that the worked sums name are lessons that there are. */
class SumsToLessonsTest {

  @Test
  void everyLessonNamedIsALesson() {
    List<String> titles = Lessons.all().stream().map(Lesson::title).toList();
    Set<String> named = new TreeSet<>();
    for (String id : PublishedCalculations.all().keySet()) {
      LessonTitle.of(id).map(LessonTitle::title).ifPresent(named::add);
    }
    assertThat(titles).containsAll(named);
    assertThat(named).hasSizeGreaterThanOrEqualTo(titles.size() - 2);
  }
}
