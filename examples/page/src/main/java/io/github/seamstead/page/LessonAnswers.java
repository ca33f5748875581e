package io.github.seamstead.page;

import io.github.seamstead.api.page.Markup;
import io.github.seamstead.examples.lessons.ExerciseCheck;
import io.github.seamstead.examples.lessons.Lesson;
import io.github.seamstead.examples.lessons.Lessons;
import io.github.seamstead.examples.lessons.LiveLesson;
import io.github.seamstead.examples.lessons.Paper;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The lessons, their numbers to be changed, and their exercises. A lesson's name is its number. */
final class LessonAnswers {

  private static final long SEED = 1;
  private static final Paper PAPER = Paper.of("a4");

  private LessonAnswers() {}

  static Map<String, Object> lesson(Request request) {
    if (request.maybeText("name").isEmpty()) {
      return Answers.of("done", Map.of("list", list()));
    }
    int number = number(request.text("name"));
    LiveLesson live = LiveLesson.of(number, request.texts("values"));
    if (!live.faults().isEmpty()) {
      List<Map<String, Object>> faults = new ArrayList<>();
      live.faults().forEach((symbol, text) -> faults.add(Map.of("path", symbol, "text", text)));
      return Answers.of("faults", Map.of("faults", faults));
    }
    long seed = request.number("seed").map(Double::longValue).orElse(SEED);
    Map<String, Object> said = new LinkedHashMap<>();
    said.put("html", live.html(PAPER));
    said.put("inputs", live.inputs().stream().map(LessonAnswers::input).toList());
    said.put("exercises", exercises(number, seed));
    return Answers.of("done", said);
  }

  private static List<Map<String, Object>> list() {
    List<Map<String, Object>> list = new ArrayList<>();
    for (Lesson lesson : Lessons.all()) {
      list.add(Map.of("id", String.valueOf(list.size() + 1), "title", lesson.title()));
    }
    return list;
  }

  private static int number(String name) {
    int count = Lessons.all().size();
    for (int i = 1; i <= count; i++) {
      if (name.equals(String.valueOf(i))) {
        return i - 1;
      }
    }
    throw new IllegalArgumentException("no lesson " + name + ": there are 1 to " + count);
  }

  private static Map<String, Object> input(LiveLesson.Input input) {
    Map<String, Object> said = new LinkedHashMap<>();
    said.put("key", input.symbol());
    said.put("label", input.name());
    said.put("unit", input.unit());
    said.put("value", input.value());
    said.put("least", input.low());
    said.put("most", input.high());
    return said;
  }

  private static List<Map<String, Object>> exercises(int lesson, long seed) {
    List<Map<String, Object>> exercises = new ArrayList<>();
    for (String question : ExerciseCheck.questions(lesson, seed)) {
      String html = new Markup().element("p", question).toString();
      exercises.add(Map.of("exercise", exercises.size(), "seed", seed, "html", html));
    }
    return exercises;
  }

  static Map<String, Object> answer(Request request) {
    ExerciseCheck check =
        ExerciseCheck.of(
            number(request.text("lesson")),
            request.whole("exercise").orElse(0),
            request.number("seed").map(Double::longValue).orElse(SEED),
            request.text("given"),
            PAPER);
    Map<String, Object> said = new LinkedHashMap<>();
    said.put("right", check.right());
    check.wrongStep().ifPresent(step -> said.put("wrongStep", step));
    said.put("solution", check.solution());
    return said;
  }
}
