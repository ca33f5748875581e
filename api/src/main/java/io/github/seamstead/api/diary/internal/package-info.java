/** How a diary is read into what is done, and into the job. */
@NullMarked
package io.github.seamstead.api.diary.internal;

import org.jspecify.annotations.NullMarked;
