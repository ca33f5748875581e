package io.github.seamstead.materials.soil;

/**
 * A test that the other tests speak against.
 *
 * @param label the test
 * @param support how likely what was seen is given the other tests, over how likely it is for a
 *     soil of which nothing is known; below 1 the others speak against it
 * @param message what to do about it
 */
public record Conflict(String label, double support, String message) {}
