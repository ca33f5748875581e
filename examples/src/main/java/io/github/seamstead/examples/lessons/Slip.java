package io.github.seamstead.examples.lessons;

/**
 * A usual mistake with the number that it gives.
 *
 * @param mistake what was done wrong, as a sentence
 * @param formula the wrong formula, in the symbols of the task
 * @param wrong what it gives, in the unit of the answer
 */
public record Slip(String mistake, String formula, double wrong) {}
