package io.github.seamstead.examples.fuzz;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.StandardCharsets;

/**
 * One case: a document made from a seed and a number alone.
 *
 * @param number which case of the run
 * @param kind how it was made
 * @param text the document
 */
public record FuzzCase(int number, String kind, byte[] text) {

  private static final ObjectMapper JSON = new ObjectMapper();
  private static final JobKeys KEYS = new JobKeys();

  /** The case of a number; equal seeds and numbers give equal cases. */
  public static FuzzCase of(long seed, int number) {
    Draw draw = new Draw(seed, number);
    Mutator mutator = new Mutator(KEYS, draw);
    double kind = draw.between(0, 1);
    if (kind < 0.1) {
      return new FuzzCase(number, "made", write((ObjectNode) KEYS.document(draw)));
    }
    ObjectNode document = Bases.one(draw);
    if (kind < 0.75) {
      mutator.sense(document);
      return new FuzzCase(number, "sense", write(document));
    }
    if (kind < 0.93) {
      mutator.form(document);
      return new FuzzCase(number, "form", write(document));
    }
    return new FuzzCase(number, "bytes", mutator.bytes(write(document)));
  }

  private static byte[] write(ObjectNode document) {
    try {
      return JSON.writerWithDefaultPrettyPrinter()
          .writeValueAsString(document)
          .getBytes(StandardCharsets.UTF_8);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException(e);
    }
  }

  /** The document as text; a broken byte becomes a mark. */
  public String document() {
    return new String(text, StandardCharsets.UTF_8);
  }
}
