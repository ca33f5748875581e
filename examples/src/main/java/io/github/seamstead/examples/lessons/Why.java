package io.github.seamstead.examples.lessons;

/**
 * A question after a reason, with two to choose from.
 *
 * @param question why something is so
 * @param right the reason that holds
 * @param wrong a reason that sounds alike and does not
 */
public record Why(String question, String right, String wrong) {}
