package io.github.seamstead.examples.lessons;

import io.github.seamstead.api.page.Drawing;
import io.github.seamstead.shared.derivation.Derivation;
import io.github.seamstead.shared.derivation.Typeset;
import java.util.List;

/** A lesson: a question from the building site, a picture, the worked answer, three exercises. */
public interface Lesson {

  /**
   * Names the lesson.
   *
   * @return a few words
   */
  String title();

  /**
   * Asks what somebody on site needs to know.
   *
   * @return one or two sentences with all numbers given
   */
  String question();

  /**
   * Draws what the question is about.
   *
   * @return a drawing that also works in black and white
   */
  Drawing picture();

  /**
   * Works the answer step by step.
   *
   * @return the derivation that the library recorded while it computed
   */
  Derivation worked();

  /**
   * Says the answer in words, and what it means on site.
   *
   * @return one to three sentences
   */
  String answer();

  /**
   * Sets three exercises.
   *
   * @return three questions with the library's answers
   */
  List<Exercise> exercises();

  /**
   * Writes the whole lesson as text for a terminal.
   *
   * @return the lesson without its picture
   */
  default String text() {
    StringBuilder text =
        new StringBuilder(title()).append("\n\n").append(question()).append("\n\n");
    text.append(Typeset.markdown(worked())).append('\n').append(answer()).append("\n\n");
    for (int i = 0; i < exercises().size(); i++) {
      Exercise exercise = exercises().get(i);
      text.append(i + 1).append(". ").append(exercise.question()).append("\n   Answer: ");
      text.append(exercise.shownAnswer()).append('\n');
    }
    return text.toString();
  }
}
