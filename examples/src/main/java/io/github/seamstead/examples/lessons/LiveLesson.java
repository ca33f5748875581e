package io.github.seamstead.examples.lessons;

import io.github.seamstead.api.page.Markup;
import io.github.seamstead.api.page.Page;
import io.github.seamstead.shared.quantity.Numbers;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A lesson whose numbers a pupil changes: the sum and its picture follow, worked by the same code
 * as the printed lesson.
 */
public final class LiveLesson {

  private static final Pattern NUMBER = Pattern.compile("[+-]?(\\d+(\\.\\d+)?|\\.\\d+)");

  private final Lesson lesson;
  private final List<Input> inputs;
  private final Map<String, String> faults;
  private final Task task;

  /**
   * A number that may be changed.
   *
   * @param symbol its symbol in the sum
   * @param name what it is
   * @param unit the unit that stands behind it; {@code °} for an angle, empty for a pure number
   * @param value the number as text
   * @param low the least allowed
   * @param high the greatest allowed
   */
  public record Input(
      String symbol, String name, String unit, String value, double low, double high) {}

  private record Range(double low, double high) {}

  private LiveLesson(Lesson lesson, List<Input> inputs, Map<String, String> faults, Task task) {
    this.lesson = lesson;
    this.inputs = inputs;
    this.faults = faults;
    this.task = task;
  }

  /**
   * Works a lesson with other numbers.
   *
   * @param number the lesson's place in {@link Lessons#all()}, from 0
   * @param texts numbers as typed, by symbol; those not named stay the shelter's
   * @return the lesson; with faults it shows the shelter's numbers where the typed ones are wrong
   */
  public static LiveLesson of(int number, Map<String, String> texts) {
    Lesson lesson = Lessons.all().get(number);
    Typed typed = new Typed(texts);
    Task task = lesson.problems().get(0).on(new Sheet(typed));
    List<Input> inputs = new ArrayList<>();
    for (Given given : task.givens()) {
      Range range = typed.ranges.get(given.symbol());
      if (range != null) {
        inputs.add(
            new Input(
                given.symbol(),
                given.name(),
                given.unit(),
                Numbers.fixed(given.printed(), given.decimals()),
                range.low(),
                range.high()));
      }
    }
    return new LiveLesson(lesson, List.copyOf(inputs), Map.copyOf(typed.faults), task);
  }

  /** Draws the typed numbers, or the shelter's. */
  private static final class Typed implements Draws {

    private final Map<String, String> texts;
    private final Map<String, Range> ranges = new LinkedHashMap<>();
    private final Map<String, String> faults = new LinkedHashMap<>();

    Typed(Map<String, String> texts) {
      this.texts = texts;
    }

    @Override
    public double of(double shelter, double low, double high, double step) {
      return shelter;
    }

    @Override
    public double named(String symbol, double shelter, double low, double high, double step) {
      ranges.put(symbol, new Range(low, high));
      String text = texts.get(symbol);
      if (text == null) {
        return shelter;
      }
      Optional<Double> number = number(text);
      // The shelter's own number is allowed, wherever the drawn ones end.
      if (number.isEmpty()
          || (number.get() != shelter && (number.get() < low || number.get() > high))) {
        faults.put(
            symbol,
            "given "
                + text.strip()
                + "; must be a number from "
                + Numbers.plain(low)
                + " to "
                + Numbers.plain(high));
        return shelter;
      }
      return number.get();
    }
  }

  /** Reads a number; what stands behind it, such as a unit, is left aside. */
  static Optional<Double> number(String text) {
    String bare = text.strip().replace(',', '.').replace('\u2212', '-');
    Matcher number = NUMBER.matcher(bare);
    return number.lookingAt() ? Optional.of(Double.parseDouble(number.group())) : Optional.empty();
  }

  /**
   * Lists the numbers that may be changed.
   *
   * @return in the order of the question
   */
  public List<Input> inputs() {
    return inputs;
  }

  /**
   * Says what is wrong with typed numbers.
   *
   * @return sentences by symbol; empty if nothing is
   */
  public Map<String, String> faults() {
    return faults;
  }

  /**
   * Writes the lesson.
   *
   * @param paper gives the look
   * @return an HTML document without script or network
   */
  public String html(Paper paper) {
    Markup body = new Markup();
    body.element("p", task.fill(lesson.scene()));
    Parts.question(body, task);
    Parts.givens(body, task);
    body.element("p", Parts.estimateText(task));
    body.open("div", "class", "figure-beside");
    Parts.figure(body, lesson.figure(task), "");
    body.open("div").element("h3", "Why the formula holds");
    Parts.proof(body, lesson);
    body.close().closeLine();
    body.element("h3", "The sum");
    Parts.sum(body, task, 0);
    body.open("p").element("strong", "Answer: " + task.shownAnswer() + ". ").closeLine();
    Page page = new Page(lesson.title(), "en");
    page.style(paper.style(lesson.title()));
    page.chapter(lesson.title(), body);
    return page.html();
  }
}
