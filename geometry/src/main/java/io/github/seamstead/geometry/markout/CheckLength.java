package io.github.seamstead.geometry.markout;

/**
 * A side or diagonal to measure when the template is drawn.
 *
 * @param from index of the corner where the tape starts
 * @param to index of the corner where it ends
 * @param side true for a side of the template, false for a diagonal
 * @param length true length, in metres
 * @param marked length as the tape should read, in metres
 * @param error the greatest difference from {@code length} in the template as either table draws
 *     it, in metres; a reading further off than this and the reader's own error shows a mistake
 */
public record CheckLength(
    int from, int to, boolean side, double length, double marked, double error) {}
