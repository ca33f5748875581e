/**
 * The local soils, the mixes and their trial samples. First class: {@link
 * io.github.seamstead.api.chapter.soil.SoilPart}.
 */
@NullMarked
package io.github.seamstead.api.chapter.soil;

import org.jspecify.annotations.NullMarked;
