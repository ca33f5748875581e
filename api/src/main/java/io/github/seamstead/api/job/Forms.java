package io.github.seamstead.api.job;

import io.github.seamstead.api.Seamstead;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** The versions of the form of the documents. All of them are read; the newest is written. */
final class Forms {

  /** The version that is written. */
  static final int NEWEST = 2;

  /** The version since which the renamed keys have their present names. */
  static final int RENAMED = 2;

  private static final String KEY = "seamstead";

  private Forms() {}

  /** The kind of the key that states the version. */
  static Kind<Integer> version() {
    return Kinds.count(1, NEWEST);
  }

  /**
   * Notes the version that a document states, before anything else of it is read.
   *
   * @return false, with one fault, if it is a later one: what else it says cannot be judged here
   */
  static boolean enter(Json json, Walk walk) {
    if (!(json instanceof Json.Obj document)) {
      return true;
    }
    for (Json.Member member : document.members()) {
      if (member.key().equals(KEY) && member.value() instanceof Json.Num number) {
        // What is no finite number is no version, and is told so where the key is read.
        if (number.value() > NEWEST
            && Double.isFinite(number.value())
            && number.value() == Math.rint(number.value())) {
          walk.fault("$." + KEY, member.value(), later(number.quoted()));
          return false;
        }
        if (number.value() >= 1 && number.value() < NEWEST) {
          walk.form((int) number.value());
        }
      }
    }
    return true;
  }

  private static String later(String version) {
    String known =
        IntStream.rangeClosed(1, NEWEST)
            .mapToObj(Integer::toString)
            .collect(Collectors.joining(" or "));
    return "must be "
        + known
        + "; version "
        + version
        + " of the form needs a later release of the library than "
        + Seamstead.version();
  }
}
