package io.github.seamstead.api.job;

/**
 * A corner of a sheet of any outline.
 *
 * @param x in metres along the sheet's length, from the left edge of the rectangle it lies in
 * @param y in metres along the sheet's width, from the lower edge of that rectangle
 */
public record SheetCorner(double x, double y) {}
