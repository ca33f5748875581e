package io.github.seamstead.examples.cli;

import java.io.PrintWriter;

/** Where a command writes: results, and faults with progress. */
record Console(PrintWriter out, PrintWriter err) {}
