package io.github.seamstead.geometry.frame;

import io.github.seamstead.geometry.frame.FrameSolution.Comparison;
import io.github.seamstead.shared.quantity.Numbers;
import java.util.Collection;
import java.util.stream.Collectors;

/** The sentences in which the solver explains itself. */
final class SolverWords {

  private SolverWords() {}

  static String tooFew(Collection<PyramidMeasure> given) {
    if (given.size() < 2) {
      return "measures: given "
          + (given.isEmpty() ? "none" : "only the " + names(given))
          + ", must be two independent ones.";
    }
    boolean plan = given.iterator().next().kind() == PyramidMeasure.Kind.PLAN;
    return "measures: given "
        + names(given)
        + (plan
            ? ", all of the plan alone; give a height, slope, edge, area of cover or volume as"
                + " well."
            : ", all angles, which leave the size open; give a length, area or volume as well.");
  }

  static String contradiction(
      Comparison c, PyramidMeasure first, PyramidMeasure second, double agreement) {
    String unit = " " + c.measure().unit();
    return c.measure().label()
        + ": given "
        + Numbers.significant(c.given(), 7)
        + unit
        + ", but "
        + first.label()
        + " and "
        + second.label()
        + " make it "
        + Numbers.significant(c.found(), 7)
        + unit
        + " ("
        + Numbers.significant(100 * c.relativeDifference(), 3)
        + " % apart, at most "
        + Numbers.significant(100 * agreement, 3)
        + " % allowed).";
  }

  static String both(
      PyramidMeasure first, PyramidMeasure second, RegularPyramid flat, RegularPyramid steep) {
    return "Two pyramids have this "
        + first.label()
        + " and "
        + second.label()
        + ": base side "
        + sized(flat)
        + ", and base side "
        + sized(steep)
        + "; one further measure decides.";
  }

  static String barely(PyramidMeasure first, PyramidMeasure second, double magnification) {
    String effect =
        Double.isInfinite(magnification)
            ? "two solutions touch here, so that a small change of either makes two pyramids or"
                + " none"
            : "an error of 1 % in one of them can move base or height by "
                + Numbers.significant(magnification, 2)
                + " %";
    return first.label()
        + " and "
        + second.label()
        + " barely determine the pyramid: "
        + effect
        + "; measure the base and the height as well.";
  }

  private static String sized(RegularPyramid pyramid) {
    return Numbers.significant(pyramid.baseSide(), 7)
        + " m with height "
        + Numbers.significant(pyramid.apexHeight(), 7)
        + " m";
  }

  private static String names(Collection<PyramidMeasure> measures) {
    return measures.stream().map(PyramidMeasure::label).collect(Collectors.joining(" and "));
  }
}
