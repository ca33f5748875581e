package io.github.seamstead.api.page;

import io.github.seamstead.shared.text.Escapes;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Set;

/**
 * Builds HTML or SVG text that is escaped and well nested by construction. Attributes are given as
 * name, value, name, value. Not thread-safe.
 */
public final class Markup {

  private static final Set<String> VOID_HTML =
      Set.of("meta", "link", "br", "hr", "img", "input", "col", "wbr");

  private final StringBuilder text = new StringBuilder();
  private final Deque<String> open = new ArrayDeque<>();

  /** Creates empty markup. */
  public Markup() {}

  /**
   * Opens an element.
   *
   * @param tag the element's name
   * @param attributes names and values in turn
   * @return this markup
   */
  public Markup open(String tag, String... attributes) {
    start(tag, attributes);
    text.append('>');
    if (!VOID_HTML.contains(tag)) {
      open.push(tag);
    }
    return this;
  }

  /**
   * Closes the innermost open element.
   *
   * @return this markup
   */
  public Markup close() {
    text.append("</").append(open.pop()).append('>');
    return this;
  }

  /**
   * Closes the innermost open element and starts a new line of source text.
   *
   * @return this markup
   */
  public Markup closeLine() {
    close();
    text.append('\n');
    return this;
  }

  /**
   * Writes an element with a text inside.
   *
   * @param tag the element's name
   * @param content the text, not yet escaped
   * @param attributes names and values in turn
   * @return this markup
   */
  public Markup element(String tag, String content, String... attributes) {
    return open(tag, attributes).text(content).close();
  }

  /**
   * Writes an element without content, closed by a slash as in SVG.
   *
   * @param tag the element's name
   * @param attributes names and values in turn
   * @return this markup
   */
  public Markup empty(String tag, String... attributes) {
    start(tag, attributes);
    text.append("/>");
    return this;
  }

  /**
   * Writes escaped text.
   *
   * @param content the text, not yet escaped
   * @return this markup
   */
  public Markup text(String content) {
    text.append(escape(content));
    return this;
  }

  /**
   * Writes markup as it is. Only for markup made by this library.
   *
   * @param markup well-formed markup
   * @return this markup
   */
  public Markup raw(String markup) {
    text.append(markup);
    return this;
  }

  /**
   * Gives the markup.
   *
   * @return the text
   * @throws IllegalStateException if an element is still open
   */
  @Override
  public String toString() {
    if (!open.isEmpty()) {
      throw new IllegalStateException("elements still open: " + open);
    }
    return text.toString();
  }

  /**
   * Escapes text for element content and quoted attributes, as {@link Escapes#xml(String)} does.
   *
   * @param content any text
   * @return the escaped text
   */
  public static String escape(String content) {
    return Escapes.xml(content);
  }

  /**
   * Makes an anchor from a title, as {@link Anchors#plain(String)} does.
   *
   * @param title any text
   * @return for example {@code cut-list}
   */
  public static String anchor(String title) {
    return Anchors.plain(title);
  }

  private void start(String tag, String... attributes) {
    if (attributes.length % 2 != 0) {
      throw new IllegalArgumentException("attributes of " + tag + ": a name without a value");
    }
    text.append('<').append(tag);
    for (int i = 0; i < attributes.length; i += 2) {
      text.append(' ').append(attributes[i]).append("=\"");
      text.append(escape(attributes[i + 1])).append('"');
    }
  }
}
