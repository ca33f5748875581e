package io.github.seamstead.examples.cli;

import io.github.seamstead.shared.check.ArgumentFault;
import io.github.seamstead.shared.text.Escapes;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Writes the whole tool as one page that opens in a browser, from a file, without network. */
@Command(
    name = "page",
    mixinStandardHelpOptions = true,
    description = "Writes the whole tool as one page for a browser: no Java, no network needed.")
final class PageCommand implements Callable<Integer> {

  /** Where the launcher, which builds the page, says that it lies. */
  static final String BUILT = "seamstead.page";

  private final Console console;

  @Option(
      names = "--out",
      required = true,
      paramLabel = "FILE",
      description = "The HTML file to write; must not exist yet.")
  private Path out = Path.of("");

  PageCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    Path built = Path.of(System.getProperty(BUILT, ""));
    if (!Files.isRegularFile(built)) {
      throw ArgumentFault.finding(
          "the page is not built here",
          "start this command by examples/seamstead, which builds it");
    }
    Outputs.fresh(out);
    Outputs.written("the page", out, () -> Files.copy(built, out));
    console
        .out()
        .println("The page is in " + Escapes.terminal(out.toString()) + "; open it in a browser");
    return 0;
  }
}
