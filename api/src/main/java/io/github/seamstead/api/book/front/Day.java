package io.github.seamstead.api.book.front;

import io.github.seamstead.materials.drying.Milestone;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** One kind of working day: what it needs, its steps, its checks. Filled once, then only read. */
final class Day {

  /** More steps than this are more than a crew keeps in mind between two looks at the sheet. */
  static final int MOST_STEPS = 9;

  /** A part of a day that is worked off with the last whole one. */
  private static final double ROUNDING = 0.05;

  /**
   * One step.
   *
   * @param text what to do, one action
   * @param wanted the number to reach, if there is one
   * @param warning what stands before the step, if it can hurt
   */
  record Step(String text, String wanted, String warning) {}

  /** The work that a day is for, in the order in which it is done. */
  enum Work {
    TILES,
    FRAME,
    CUT,
    SINGLE_PANELS,
    RING,
    RAISE,
    PEG,
    ON_THE_COVER,
    DIG,
    BED,
    LAYER,
    FINISH;

    boolean isCover() {
      return compareTo(FRAME) >= 0 && compareTo(ON_THE_COVER) <= 0;
    }
  }

  private final Work work;
  private final String subject;
  private final String title;
  private final String lead;
  private final List<Step> steps = new ArrayList<>();
  private final List<String> pause = new ArrayList<>();
  private final List<String> home = new ArrayList<>();
  private String startIf = "";
  private String tools = "";
  private String material = "";
  private String hands = "";
  private String pauseTitle = "";
  private String stops = "";
  private String nextWarning = "";
  private int people;
  private double span = 1;
  private boolean timed;
  private Optional<Milestone> waiting = Optional.empty();

  Day(Work work, String title, String lead) {
    this(work, title, title, lead);
  }

  private Day(Work work, String subject, String title, String lead) {
    this.work = work;
    this.subject = subject;
    this.title = title;
    this.lead = lead;
  }

  /** A day for a layer of the floor that is mixed. */
  static Day ofLayer(String name) {
    return new Day(Work.LAYER, name, "Lay the " + name, "");
  }

  Day startIf(String text) {
    startIf = text;
    return this;
  }

  Day tools(String text) {
    tools = text;
    return this;
  }

  /** What is used up, or must lie ready. */
  Day material(String text) {
    material = text;
    return this;
  }

  /** How the people share the work. */
  Day hands(String text) {
    hands = text;
    return this;
  }

  Day step(String text) {
    return step(text, "");
  }

  Day step(String text, String wanted) {
    if (steps.size() == MOST_STEPS) {
      throw new IllegalStateException(title + ": more than " + MOST_STEPS + " steps");
    }
    steps.add(new Step(text, wanted, nextWarning));
    nextWarning = "";
    return this;
  }

  /** Puts a line of warning before the next step. */
  Day warn(String text) {
    nextWarning = text;
    return this;
  }

  /** A point where work stops until every item is as wanted. */
  Day pause(String before, List<String> items) {
    pauseTitle = before;
    pause.addAll(items);
    return this;
  }

  Day home(String... items) {
    home.addAll(List.of(items));
    return this;
  }

  Day stops(String text) {
    stops = text;
    return this;
  }

  Day people(int count) {
    people = count;
    return this;
  }

  /** How many working days it takes by the plan; a day sheet without a time stands for one. */
  Day spans(double workingDays) {
    span = Math.max(1, Math.ceil(workingDays - ROUNDING));
    timed = true;
    return this;
  }

  /** Marks a sheet that is worked off on the day of the sheet after it, which counts the day. */
  Day andTheSameDay() {
    span = 0;
    return this;
  }

  Day thenWait(Milestone milestone) {
    waiting = Optional.of(milestone);
    return this;
  }

  Work work() {
    return work;
  }

  /** What is worked on, as its drying is spoken of: the layer, else the title. */
  String subject() {
    return subject;
  }

  String title() {
    return title;
  }

  String lead() {
    return lead;
  }

  List<Step> steps() {
    return steps;
  }

  List<String> pause() {
    return pause;
  }

  List<String> home() {
    return home;
  }

  String startIf() {
    return startIf;
  }

  String tools() {
    return tools;
  }

  String material() {
    return material;
  }

  String hands() {
    return hands;
  }

  String pauseTitle() {
    return pauseTitle;
  }

  String stops() {
    return stops;
  }

  int people() {
    return people;
  }

  double span() {
    return span;
  }

  boolean isTimed() {
    return timed;
  }

  Optional<Milestone> waiting() {
    return waiting;
  }
}
