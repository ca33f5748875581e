package io.github.seamstead.api.job;

import io.github.seamstead.shared.uncertainty.Uncertain;

/**
 * One taped distance between two nodes.
 *
 * @param from the node where the tape starts
 * @param to the node where it is read
 * @param distance the reading, with its standard uncertainty if known, in metres
 */
public record Reading(String from, String to, Uncertain distance) {}
