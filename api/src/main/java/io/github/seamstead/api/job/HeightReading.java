package io.github.seamstead.api.job;

/**
 * How much higher one node is than another, by a level or water hose.
 *
 * @param from the node measured from
 * @param to the node measured to
 * @param rise height of to over from, with its standard uncertainty if known, in metres
 */
public record HeightReading(String from, String to, WrittenQuantity rise) {}
