package io.github.seamstead.api.job;

import io.github.seamstead.shared.uncertainty.Uncertain;

/**
 * The height of one node over the datum, by a level or water hose.
 *
 * @param node the node
 * @param height its height over the datum, with its standard uncertainty if known, in metres
 */
public record Level(String node, Uncertain height) {}
