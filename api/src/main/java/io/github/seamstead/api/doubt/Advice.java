package io.github.seamstead.api.doubt;

import io.github.seamstead.api.compare.MeasureText;
import io.github.seamstead.shared.quantity.Numbers;
import java.util.ArrayList;
import java.util.List;

/** Says what to do first, from plans that were run with half a doubt. */
public final class Advice {

  /** A range that narrows by less is not worth the work. */
  private static final double WORTH = 0.05;

  private Advice() {}

  /**
   * Writes a sentence for each doubt that was halved.
   *
   * @param matters what matters
   * @return sentences in the order of the numbers; each names the range before and after
   */
  public static List<String> of(Matters matters) {
    MeasureText text = new MeasureText(matters.imperial());
    List<String> sentences = new ArrayList<>();
    for (NumberInDoubt number : matters.numbers()) {
      for (Influence influence : number.influences()) {
        influence.halved().ifPresent(h -> sentences.add(sentence(number, influence, h, text)));
      }
    }
    return List.copyOf(sentences);
  }

  private static String sentence(
      NumberInDoubt number, Influence influence, Influence.Halved h, MeasureText text) {
    String before = range(number, h.lowBefore(), h.highBefore(), text);
    String after = range(number, h.lowAfter(), h.highAfter(), text);
    String what = number.measure().label() + ", nine times in ten " + before;
    if (h.narrowing() < WORTH) {
      return influence.remedy()
          + "? Half the doubt in "
          + influence.doubt()
          + " hardly narrows "
          + what
          + ": the other doubts fill the range.";
    }
    return influence.remedy()
        + ": half the doubt in "
        + influence.doubt()
        + " narrows "
        + what
        + ", to "
        + after
        + ", by "
        + Numbers.fixed(h.narrowing() * 100, 0)
        + " %.";
  }

  static String range(NumberInDoubt number, double low, double high, MeasureText text) {
    return text.of(number.measure(), low) + " to " + text.of(number.measure(), high);
  }
}
