/** The page as people use it, in a real browser. */
@NullMarked
package io.github.seamstead.page.face;

import org.jspecify.annotations.NullMarked;
