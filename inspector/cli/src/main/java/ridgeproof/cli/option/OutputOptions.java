package ridgeproof.cli.option;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Collection;
import picocli.CommandLine.Option;
import ridgeproof.cli.io.Console;
import ridgeproof.cli.io.OutputFile;
import ridgeproof.cli.io.ReportTarget;

/** Where a command writes to. */
public final class OutputOptions {

  @Option(
      names = "--output",
      paramLabel = "FILE",
      description = "write to this file instead of standard output")
  public Path output;

  @Option(names = "--overwrite", description = "replace an existing output file")
  public boolean overwrite;

  /** Fails where nothing could be written, so that this is known before the work. */
  public void refuse(Collection<Path> inputs) {
    if (output != null) {
      OutputFile.refuse(output, overwrite, inputs);
    }
  }

  public void write(String text, Console console, Collection<Path> inputs) {
    if (output == null) {
      console.print(text);
    } else {
      String whole = text.endsWith("\n") ? text : text + "\n";
      OutputFile.write(output, whole.getBytes(StandardCharsets.UTF_8), overwrite, inputs);
    }
  }

  /** Where text goes as it is made. */
  public ReportTarget open(Console console, Collection<Path> inputs) {
    return output == null
        ? ReportTarget.standardOutput(console)
        : ReportTarget.file(OutputFile.open(output, overwrite, inputs));
  }

  public void write(byte[] bytes, Console console, Collection<Path> inputs) {
    if (output == null) {
      console.print(bytes);
    } else {
      OutputFile.write(output, bytes, overwrite, inputs);
    }
  }
}
