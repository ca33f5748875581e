/**
 * Quantity text: the one place where numbers meet units.
 *
 * <p>Inside the library every number is a {@code double} in SI. Text such as {@code 5.2 m}, {@code
 * 17 ft 3 1/2 in} or {@code 680 g/m2} is read and written here and nowhere else, over a table of
 * factors that are exact by definition. The one departure from coherent SI: temperatures are in
 * degrees Celsius, the SI unit that thermometers on site show.
 *
 * <p>First class to open: {@link io.github.seamstead.shared.quantity.QuantityText}.
 */
@NullMarked
package io.github.seamstead.shared.quantity;

import org.jspecify.annotations.NullMarked;
