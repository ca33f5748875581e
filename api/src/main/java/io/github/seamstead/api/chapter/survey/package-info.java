/**
 * The frame as it was taped. First class: {@link
 * io.github.seamstead.api.chapter.survey.SurveyPart}.
 */
@NullMarked
package io.github.seamstead.api.chapter.survey;

import org.jspecify.annotations.NullMarked;
