package io.github.seamstead.examples.lessons;

/**
 * A line of a derivation.
 *
 * @param equation formulas with equals signs between, in the notation of the steps; may be empty
 * @param reason why it holds
 */
public record ProofLine(String equation, String reason) {}
