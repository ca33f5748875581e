package io.github.seamstead.api.page;

import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Running text in which quantities lead to where they come from. */
public final class LinkedNumbers {

  /** A number with a unit, on its own between words; a rate such as kg/m3 is none. */
  private static final Pattern QUANTITY =
      Pattern.compile(
          "(?<![\\p{L}\\d.,/–-])\\d+(?:\\.\\d+)?[ \\u00a0]?(?:m[²³]|mm|min|m|kg|kN|N|t|l|h|%|°)"
              + "(?![\\p{L}\\d/²³])");

  private LinkedNumbers() {}

  /**
   * Writes a text, with a link at each quantity that has one.
   *
   * @param to where to
   * @param text the text, not yet escaped
   * @param links gives the id of the place a quantity comes from; empty if there is none
   * @return the markup
   */
  public static Markup write(Markup to, String text, Function<String, Optional<String>> links) {
    Matcher found = QUANTITY.matcher(text);
    int written = 0;
    while (found.find()) {
      Optional<String> id = links.apply(found.group());
      if (id.isPresent()) {
        to.text(text.substring(written, found.start()));
        to.element("a", found.group(), "href", "#" + id.get());
        written = found.end();
      }
    }
    return to.text(text.substring(written));
  }
}
