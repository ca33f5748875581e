package io.github.seamstead.examples.lessons;

import io.github.seamstead.api.page.Drawing;
import io.github.seamstead.api.page.LessonTitle;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/** A lesson: what is said, what is drawn and the kinds of question that it teaches. */
public final class Lesson {

  private final String title;
  private String aim = "";
  private int minutes = 45;
  private String scene = "";
  private String build = "";
  private String check = "";
  private String onSite = "";
  private Function<Task, Drawing> figure = Lesson::noFigure;
  private final List<String> needs = new ArrayList<>();
  private final List<String> materials = new ArrayList<>();
  private final List<ProofLine> proof = new ArrayList<>();
  private final List<Why> whys = new ArrayList<>();
  private final List<Problem> problems = new ArrayList<>();

  private Lesson(String title) {
    this.title = title;
  }

  static Lesson named(LessonTitle title) {
    return new Lesson(title.title());
  }

  Lesson aim(String text, int minutesNeeded) {
    aim = text;
    minutes = minutesNeeded;
    return this;
  }

  Lesson needs(String... known) {
    needs.addAll(List.of(known));
    return this;
  }

  Lesson materials(String... things) {
    materials.addAll(List.of(things));
    return this;
  }

  Lesson scene(String text) {
    scene = text;
    return this;
  }

  Lesson figure(Function<Task, Drawing> drawn) {
    figure = drawn;
    return this;
  }

  /** Adds a line of the derivation. */
  Lesson because(String equation, String reason) {
    proof.add(new ProofLine(equation, reason));
    return this;
  }

  Lesson why(String question, String right, String wrong) {
    whys.add(new Why(question, right, wrong));
    return this;
  }

  Lesson build(String text) {
    build = text;
    return this;
  }

  Lesson check(String text) {
    check = text;
    return this;
  }

  Lesson onSite(String text) {
    onSite = text;
    return this;
  }

  /** Adds a kind of question; the first is the one of the worked example. */
  Lesson problem(Problem problem) {
    problems.add(problem);
    return this;
  }

  /**
   * Names the lesson.
   *
   * @return a few words
   */
  public String title() {
    return title;
  }

  /**
   * Says what a pupil can do afterwards.
   *
   * @return a sentence
   */
  public String aim() {
    return aim;
  }

  /**
   * Says how long it takes without the building.
   *
   * @return minutes
   */
  public int minutes() {
    return minutes;
  }

  /**
   * Lists what must be known before.
   *
   * @return at least one
   */
  public List<String> needs() {
    return List.copyOf(needs);
  }

  /**
   * Lists what must lie on the table.
   *
   * @return at least one
   */
  public List<String> materials() {
    return List.copyOf(materials);
  }

  /**
   * Says where on the site the question comes up.
   *
   * @return a sentence or two
   */
  public String scene() {
    return scene;
  }

  /**
   * Gives the derivation of the formula.
   *
   * @return three to five lines
   */
  public List<ProofLine> proof() {
    return List.copyOf(proof);
  }

  /**
   * Asks after reasons.
   *
   * @return two questions
   */
  public List<Why> whys() {
    return List.copyOf(whys);
  }

  /**
   * Says what to build, measure or try.
   *
   * @return sentences with the shelter's numbers
   */
  public String build() {
    return example().fill(build);
  }

  /**
   * Says how the result is checked by another way, and when it has failed.
   *
   * @return sentences with the shelter's numbers
   */
  public String check() {
    return example().fill(check);
  }

  /**
   * Says what the result means on site.
   *
   * @return a sentence
   */
  public String onSite() {
    return example().fill(onSite);
  }

  /**
   * Draws the example.
   *
   * @return a drawing with the letters and numbers of {@link #example()}
   */
  public Drawing figure() {
    return figure(example());
  }

  /** Draws any task of the first kind. */
  Drawing figure(Task task) {
    return figure.apply(task);
  }

  /**
   * Gives the worked example.
   *
   * @return the first kind of question with the shelter's numbers
   */
  public Task example() {
    return problems.get(0).ofShelter();
  }

  List<Problem> problems() {
    return problems;
  }

  private static Drawing noFigure(Task task) {
    throw new IllegalStateException("no figure for: " + task.question());
  }
}
