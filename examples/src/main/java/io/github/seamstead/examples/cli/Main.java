package io.github.seamstead.examples.cli;

import java.io.OutputStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import picocli.CommandLine;
import picocli.CommandLine.Command;

/** The entry of the command line. */
@Command(
    name = "seamstead",
    mixinStandardHelpOptions = true,
    versionProvider = Main.Version.class,
    description = "Plans fabric covers on pyramid frames and the earthen floors under them.",
    footer = {
      "",
      "Exit codes: 0 done; 1 the job cannot be met as stated; 2 bad input, nothing written."
    })
public final class Main {

  private Main() {}

  /**
   * Runs a command and ends the process with its exit code.
   *
   * @param args the command and its arguments
   */
  public static void main(String[] args) {
    StandardOutput out = new StandardOutput();
    PrintWriter err = writer(System.err);
    System.exit(out.outcome(run(args, writer(out), err), err));
  }

  /**
   * Runs a command.
   *
   * @param args the command and its arguments
   * @param out receives the results
   * @param err receives faults and progress
   * @return 0 done, 1 the job cannot be met, 2 bad input
   */
  public static int run(String[] args, PrintWriter out, PrintWriter err) {
    Console console = new Console(out, err);
    int code = plainForm(args, console).orElseGet(() -> parse(args, console));
    out.flush();
    err.flush();
    return code;
  }

  private static Optional<Integer> plainForm(String[] args, Console console) {
    try {
      return PlanRequest.ofPlainForm(args).map(request -> request.run(console));
    } catch (RuntimeException e) {
      return Optional.of(Failures.report(e, console.err()));
    }
  }

  private static int parse(String[] args, Console console) {
    CommandLine line = new CommandLine(new Main());
    Commands.addTo(line, args, console);
    line.setOut(console.out());
    line.setErr(console.err());
    line.setExecutionExceptionHandler((e, l, result) -> Failures.report(e, console.err()));
    return line.execute(args.length == 0 ? new String[] {"--help"} : args);
  }

  private static PrintWriter writer(OutputStream stream) {
    return new PrintWriter(stream, true, StandardCharsets.UTF_8);
  }

  /** Reads the version from the jar. */
  static final class Version implements CommandLine.IVersionProvider {
    @Override
    public String[] getVersion() {
      String version = Main.class.getPackage().getImplementationVersion();
      return new String[] {"seamstead " + (version == null ? "(from sources)" : version)};
    }
  }
}
