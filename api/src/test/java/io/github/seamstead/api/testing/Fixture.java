package io.github.seamstead.api.testing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.github.seamstead.api.book.Book;
import io.github.seamstead.api.chapter.Chapter;
import io.github.seamstead.api.chapter.PlanOptions;
import io.github.seamstead.api.job.Diary;
import io.github.seamstead.api.job.JobReader;
import io.github.seamstead.api.plan.JobPlan;
import io.github.seamstead.api.plan.JobPlanner;
import io.github.seamstead.api.results.ResultsJson;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A small document planned with its worked sums, and what the plan tells of it. */
public final class Fixture {

  private static final ObjectMapper JSON = new ObjectMapper();

  private final JobPlan plan;
  private final JsonNode results;
  private Optional<Book> book = Optional.empty();

  private Fixture(JobPlan plan) {
    this.plan = plan;
    try {
      results = JSON.readTree(ResultsJson.text(plan));
    } catch (JsonProcessingException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * Plans a document.
   *
   * @param text the document
   * @param chapters those asked for; none for all
   * @return what its plan tells
   */
  public static Fixture of(String text, Chapter... chapters) {
    return new Fixture(
        JobPlanner.plan(JobReader.parse(text.getBytes(StandardCharsets.UTF_8)), options(chapters)));
  }

  /**
   * Plans what is left of a document by its diary.
   *
   * @param text the document
   * @param diary what was done
   * @return what its plan tells
   */
  public static Fixture of(String text, Diary diary) {
    return new Fixture(
        JobPlanner.plan(JobReader.parse(text.getBytes(StandardCharsets.UTF_8)), diary, options()));
  }

  /**
   * Plans what is left after the document itself was changed.
   *
   * @param was the document by which the days of the diary worked
   * @param text the document as it is now
   * @param diary what was done
   * @return what its plan tells
   */
  public static Fixture of(String was, String text, Diary diary) {
    return new Fixture(
        JobPlanner.plan(
            JobReader.parse(was.getBytes(StandardCharsets.UTF_8)),
            JobReader.parse(text.getBytes(StandardCharsets.UTF_8)),
            diary,
            options()));
  }

  /**
   * Tells what a plan tells that was made otherwise.
   *
   * @param plan the plan
   * @return what it tells
   */
  public static Fixture of(JobPlan plan) {
    return new Fixture(plan);
  }

  /**
   * Gives the default terms, with worked sums.
   *
   * @param chapters those asked for; none for all
   * @return the terms
   */
  public static PlanOptions options(Chapter... chapters) {
    PlanOptions usual = PlanOptions.defaults();
    Set<Chapter> asked =
        chapters.length == 0 ? usual.chapters() : EnumSet.copyOf(List.of(chapters));
    return new PlanOptions(
        usual.effort(),
        usual.seed(),
        true,
        asked,
        usual.timeLimit(),
        usual.progress(),
        usual.cancellation());
  }

  /**
   * Gives the plan.
   *
   * @return the plan
   */
  public JobPlan plan() {
    return plan;
  }

  /**
   * Gives a part of the results.
   *
   * @param pointer where it stands, such as {@code /floor/earth/0}
   * @return the part; a missing node where there is none
   */
  public JsonNode at(String pointer) {
    return results.at(pointer);
  }

  /**
   * Gives a number of the results.
   *
   * @param pointer where it stands
   * @return the number
   */
  public double number(String pointer) {
    JsonNode node = at(pointer);
    if (!node.isNumber()) {
      throw new IllegalArgumentException(pointer + " is no number but " + node);
    }
    return node.asDouble();
  }

  /**
   * Holds a number of the results to a sum by hand, within a billionth of it.
   *
   * @param f what a plan tells
   * @param pointer where the number stands
   * @param value the sum
   */
  public static void near(Fixture f, String pointer, double value) {
    assertThat(f.number(pointer)).as(pointer).isCloseTo(value, within(1e-9 * Math.abs(value)));
  }

  /**
   * Fills in a text with a decimal point, whatever the language of the machine.
   *
   * @param format the text, as {@link String#format} takes it
   * @param values what is filled in
   * @return the text
   */
  public static String filled(String format, Object... values) {
    return String.format(Locale.ROOT, format, values);
  }

  /**
   * Names what a part of the results holds of noughts, empty texts and lists, and of what is false.
   *
   * @param pointer where the part stands
   * @return the places, without the numbers of lists, in order of their names
   */
  public Set<String> noughts(String pointer) {
    Set<String> found = new TreeSet<>();
    noughts("", at(pointer), found);
    return found;
  }

  private static void noughts(String path, JsonNode node, Set<String> found) {
    boolean nought =
        node.isMissingNode()
            || node.isNull()
            || (node.isContainerNode() && node.isEmpty())
            || (node.isNumber() && node.asDouble() == 0)
            || (node.isTextual() && node.asText().isEmpty())
            || (node.isBoolean() && !node.asBoolean());
    if (nought) {
      found.add(path);
    }
    node.fields().forEachRemaining(f -> noughts(path + "/" + f.getKey(), f.getValue(), found));
    if (node.isArray()) {
      node.forEach(one -> noughts(path, one, found));
    }
  }

  /**
   * Names the keys that a part of the results has.
   *
   * @param pointer where the part stands
   * @return the keys in order of their names
   */
  public Set<String> keys(String pointer) {
    Set<String> keys = new TreeSet<>();
    at(pointer).fieldNames().forEachRemaining(keys::add);
    return keys;
  }

  /**
   * Names the sums that were worked.
   *
   * @param prefix the start of the identifiers asked for
   * @return their identifiers in order of their names
   */
  public Set<String> worked(String prefix) {
    Set<String> ids = new TreeSet<>();
    plan.derivations().stream()
        .map(d -> d.id())
        .filter(id -> id.startsWith(prefix))
        .forEach(ids::add);
    return ids;
  }

  /**
   * Gives the results of the sums that were worked, in their order.
   *
   * @param id the identifier of the sums
   * @return the last value of each
   */
  public List<Double> sums(String id) {
    return plan.derivations().stream()
        .filter(d -> d.id().equals(id))
        .map(d -> d.result().value())
        .toList();
  }

  /**
   * Gives the cut outline of a shape where the results lay it.
   *
   * @param place a placement of the layout
   * @return the corners, in metres along and across the stock
   */
  public List<double[]> laidAt(JsonNode place) {
    double turn = place.at("/rotation_rad").asDouble();
    double mirror = place.at("/mirrored").asBoolean() ? -1 : 1;
    List<double[]> corners = new ArrayList<>();
    for (JsonNode shape : at("/cover/shapes")) {
      if (!shape.at("/id").asText().equals(place.at("/shape").asText())) {
        continue;
      }
      for (JsonNode corner : shape.at("/cut_m")) {
        double x = corner.get(0).asDouble() * mirror;
        double y = corner.get(1).asDouble();
        corners.add(
            new double[] {
              x * Math.cos(turn) - y * Math.sin(turn) + place.at("/x_m").asDouble(),
              x * Math.sin(turn) + y * Math.cos(turn) + place.at("/y_m").asDouble()
            });
      }
    }
    return corners;
  }

  /**
   * Names what was assumed.
   *
   * @return the places of the document with the values, {@code place: value}
   */
  public List<String> assumed() {
    return plan.assumptions().stream().map(a -> a.path() + ": " + a.value()).toList();
  }

  /**
   * Gives the texts of the cautions of a chapter.
   *
   * @param chapter the chapter
   * @return the texts in their order
   */
  public List<String> cautions(Chapter chapter) {
    return plan.cautions().stream()
        .filter(c -> c.chapter() == chapter)
        .map(c -> c.caution().text())
        .toList();
  }

  /**
   * Gives what cannot be met in a chapter.
   *
   * @param chapter the chapter
   * @return the texts in their order
   */
  public List<String> unmet(Chapter chapter) {
    return plan.unmet().stream().filter(u -> u.chapter() == chapter).map(u -> u.what()).toList();
  }

  /**
   * Gives what is left out in a chapter.
   *
   * @param chapter the chapter
   * @return the reasons in their order
   */
  public List<String> skipped(Chapter chapter) {
    return plan.notPlanned().stream()
        .filter(n -> n.chapter() == chapter)
        .map(n -> n.reason())
        .toList();
  }

  /**
   * Gives the book.
   *
   * @return the book, made once
   */
  public Book book() {
    if (book.isEmpty()) {
      book = Optional.of(Book.of(plan));
    }
    return book.orElseThrow();
  }

  /**
   * Gives the lists of the book.
   *
   * @return texts by file name
   */
  public Map<String, String> lists() {
    return book().lists();
  }

  /**
   * Gives the page of a chapter.
   *
   * @param chapter the chapter
   * @return its markup
   */
  public String page(Chapter chapter) {
    String html = book().html();
    int start = html.indexOf(">" + chapter.title() + "</h2>");
    if (start < 0) {
      throw new IllegalArgumentException("no page of " + chapter);
    }
    int end = html.indexOf("<h2", start);
    return html.substring(start, end < 0 ? html.length() : end);
  }

  /**
   * Gives the page of a chapter as it is read: one line for each row, paragraph and heading.
   *
   * @param chapter the chapter
   * @return the lines, the cells of a row with {@code " | "} between
   */
  public List<String> read(Chapter chapter) {
    List<String> lines = new ArrayList<>();
    Matcher blocks =
        Pattern.compile("<(tr|p|h3|li|caption|figcaption)\\b[^>]*>(.*?)</\\1>", Pattern.DOTALL)
            .matcher(page(chapter));
    while (blocks.find()) {
      lines.add(
          blocks
              .group(2)
              .replaceAll("</t[dh]>\\s*<t[dh][^>]*>", " | ")
              .replaceAll("<[^>]*>", "")
              .replace('\u00a0', ' ')
              .strip());
    }
    return lines;
  }
}
