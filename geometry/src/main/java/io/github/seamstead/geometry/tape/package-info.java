/**
 * The measuring tape: its accuracy class and the corrections of its readings for temperature, pull,
 * sag, slope and its own standard.
 *
 * <p>First class to open: {@link io.github.seamstead.geometry.tape.TapeCorrections}.
 */
@NullMarked
package io.github.seamstead.geometry.tape;

import org.jspecify.annotations.NullMarked;
