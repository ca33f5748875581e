/** Elementary functions in plain Java, equal in every browser; start at {@link Elementary}. */
package io.github.seamstead.page.maths;
