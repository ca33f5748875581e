package io.github.seamstead.api.job;

import java.util.List;

/**
 * What the crew joined so far, in order.
 *
 * @param seamstead version of the form of the document; always the newest, in which earlier ones
 *     are read
 * @param log seams in the order in which they were made
 */
record JoinLogDocument(int seamstead, List<JoinEntry> log) {

  public JoinLogDocument {
    log = List.copyOf(log);
  }
}
