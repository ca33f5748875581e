package io.github.seamstead.api.chapter.markout;

import io.github.seamstead.api.chapter.cover.CutShape;
import io.github.seamstead.geometry.markout.MarkOut;

/**
 * How one shape is drawn with a tape.
 *
 * @param shape the shape to cut
 * @param tables the tables, about the base of the shape
 */
public record MarkoutPart(CutShape shape, MarkOut tables) {}
