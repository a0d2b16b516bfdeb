package ridgeproof.cli;

import java.io.File;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.codegen.docgen.manpage.ManPageGenerator;
import ridgeproof.cli.io.Console;

/** Writes a manual page in AsciiDoc for each command, which the profile {@code dist} formats. */
public final class ManPages {

  private ManPages() {}

  public static void main(String[] arguments) throws IOException {
    write(new File(arguments[0]), arguments[1]);
  }

  /** One page for the whole and one for each command of this version. */
  static void write(File folder, String version) throws IOException {
    CommandLine line = RidgeproofCommand.commandLine(Console.system());
    List<CommandSpec> commands = new ArrayList<>();
    commands.add(line.getCommandSpec());
    line.getSubcommands().values().forEach(command -> commands.add(command.getCommandSpec()));
    commands.forEach(OptionGroups::arrange);
    commands.forEach(command -> command.versionProvider(null).version("ridgeproof " + version));
    int status =
        ManPageGenerator.generateManPage(folder, null, new boolean[0], false, commands.get(0));
    if (status != 0) {
      throw new IOException("the manual pages could not be written to " + folder);
    }
  }
}
