package io.github.seamstead.api.job;

/**
 * One weighing of a test tile.
 *
 * @param time time since the tile was filled, in seconds
 * @param mass mass of tile and tray, in kilograms
 */
public record TileWeighing(double time, double mass) {}
