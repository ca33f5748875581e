package io.github.seamstead.api.chapter.cover;

import io.github.seamstead.geometry.pattern.FaceDifference;

/**
 * A piece that is cut and no longer fits what is known of the frame.
 *
 * @param name the panel, or the piece beside the panels
 * @param difference how far it is off, and where
 * @param tolerance the least difference that counts, in metres
 * @param text the same in words, with numbers
 */
public record Misfit(String name, FaceDifference difference, double tolerance, String text) {}
