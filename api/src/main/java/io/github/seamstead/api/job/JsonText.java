package io.github.seamstead.api.job;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Reads a JSON text into a tree that knows its lines. The streaming parser is used alone: data
 * binding would cost more start-up than the whole reading.
 */
final class JsonText {

  static final int DEEPEST = 32;
  private static final int LONGEST_NAME = 200;
  private static final int LONGEST_STRING = 20_000;

  private JsonText() {}

  /** Gives the tree, or notes one fault and gives nothing when the text is no JSON. */
  static @Nullable Json read(byte[] bytes, Walk walk) {
    String text = decode(bytes, walk);
    if (text == null) {
      return null;
    }
    try (JsonParser parser = factory().createParser(text)) {
      if (parser.nextToken() == null) {
        walk.fault("$", 0, "an empty text", "must be one JSON object");
        return null;
      }
      Json value = value(parser);
      if (parser.nextToken() != null) {
        int line = parser.currentLocation().getLineNr();
        walk.fault("$", line, "more text after the end", "must be one JSON object");
        return null;
      }
      return value;
    } catch (StreamConstraintsException e) {
      walk.fault(
          "$",
          line(e),
          "nesting, a name or a string beyond the limit",
          "must nest at most "
              + DEEPEST
              + " deep, with names of at most "
              + LONGEST_NAME
              + " and strings of at most "
              + LONGEST_STRING
              + " characters");
      return null;
    } catch (JsonProcessingException e) {
      walk.fault("$", line(e), "text that is not JSON", "the reader says: " + plain(e));
      return null;
    } catch (IOException e) {
      throw new IllegalStateException("a text in memory cannot fail to be read", e);
    }
  }

  private static JsonFactory factory() {
    return JsonFactory.builder()
        .streamReadConstraints(
            StreamReadConstraints.builder()
                .maxNestingDepth(DEEPEST)
                .maxNameLength(LONGEST_NAME)
                .maxStringLength(LONGEST_STRING)
                .build())
        .build();
  }

  private static @Nullable String decode(byte[] bytes, Walk walk) {
    CharsetDecoder decoder =
        StandardCharsets.UTF_8
            .newDecoder()
            .onMalformedInput(CodingErrorAction.REPORT)
            .onUnmappableCharacter(CodingErrorAction.REPORT);
    ByteBuffer in = ByteBuffer.wrap(bytes);
    CharBuffer out = CharBuffer.allocate(bytes.length + 1);
    CoderResult result = decoder.decode(in, out, true);
    if (result.isError()) {
      String text = out.flip().toString();
      int line = 1 + (int) text.chars().filter(c -> c == '\n').count();
      walk.fault(
          "$",
          line,
          "a byte that is not UTF-8 at offset " + in.position(),
          "must be a UTF-8 text; save the file again as UTF-8");
      return null;
    }
    String text = out.flip().toString();
    return text.startsWith("\uFEFF") ? text.substring(1) : text;
  }

  private static Json value(JsonParser parser) throws IOException {
    int line = parser.currentTokenLocation().getLineNr();
    return switch (parser.currentToken()) {
      case START_OBJECT -> object(parser, line);
      case START_ARRAY -> array(parser, line);
      case VALUE_STRING -> new Json.Text(line, parser.getText());
      case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT ->
          new Json.Num(line, Double.parseDouble(parser.getText()));
      case VALUE_TRUE -> new Json.Flag(line, true);
      case VALUE_FALSE -> new Json.Flag(line, false);
      case VALUE_NULL -> new Json.Nil(line);
      default -> throw new IllegalStateException("no value starts with " + parser.currentToken());
    };
  }

  private static Json object(JsonParser parser, int line) throws IOException {
    List<Json.Member> members = new ArrayList<>();
    while (parser.nextToken() != JsonToken.END_OBJECT) {
      String key = parser.currentName();
      int at = parser.currentTokenLocation().getLineNr();
      parser.nextToken();
      members.add(new Json.Member(key, at, value(parser)));
    }
    return new Json.Obj(line, members);
  }

  private static Json array(JsonParser parser, int line) throws IOException {
    List<Json> items = new ArrayList<>();
    while (parser.nextToken() != JsonToken.END_ARRAY) {
      items.add(value(parser));
    }
    return new Json.Arr(line, items);
  }

  private static int line(JsonProcessingException e) {
    JsonLocation location = e.getLocation();
    return location == null ? 0 : Math.max(0, location.getLineNr());
  }

  private static String plain(JsonProcessingException e) {
    // The parser's advice on its own settings is of no use to the writer of a document.
    return e.getOriginalMessage().replaceAll("\\s+", " ").replaceFirst(": enable .*", "");
  }
}
