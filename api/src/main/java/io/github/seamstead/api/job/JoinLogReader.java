package io.github.seamstead.api.job;

import io.github.seamstead.assembly.ring.LogEntry;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Reads what a crew has joined so far. */
public final class JoinLogReader {

  private JoinLogReader() {}

  /**
   * Reads a log from a file.
   *
   * @param file a JSON file in UTF-8, such as {@code {"seamstead": 1, "log": [{"join": ["3R",
   *     "4L"]}]}}
   * @return the entries in order
   * @throws JobFaultsException with all faults, if there are any
   * @throws JobFileException if the file cannot be read
   */
  public static List<LogEntry> read(Path file) {
    JoinLogDocument document = FileText.read(FileText.bytes(file), Shapes.JOIN_LOG, new Walk());
    List<LogEntry> entries = new ArrayList<>();
    for (JoinEntry entry : document.log()) {
      entries.add(entry(entry));
    }
    return entries;
  }

  private static LogEntry entry(JoinEntry entry) {
    if (entry.undo().isPresent()) {
      List<String> edges = entry.undo().get();
      return LogEntry.undone(edges.get(0), edges.get(1));
    }
    List<String> edges = entry.join().orElseThrow();
    LogEntry joined = LogEntry.joined(edges.get(0), edges.get(1), entry.facing());
    return entry.marks().map(m -> joined.marked(m.get(0), m.get(1))).orElse(joined);
  }
}
