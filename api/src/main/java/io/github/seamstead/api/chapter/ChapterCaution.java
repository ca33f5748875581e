package io.github.seamstead.api.chapter;

import io.github.seamstead.shared.caution.Caution;

/**
 * A caution with the chapter whose result it travels with.
 *
 * @param chapter the chapter
 * @param caution the caution
 */
public record ChapterCaution(Chapter chapter, Caution caution) {}
