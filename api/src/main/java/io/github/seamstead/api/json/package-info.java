/**
 * JSON text out of plain maps, lists, texts and numbers.
 *
 * <p>First class to open: {@link io.github.seamstead.api.json.JsonWriter}.
 */
@NullMarked
package io.github.seamstead.api.json;

import org.jspecify.annotations.NullMarked;
