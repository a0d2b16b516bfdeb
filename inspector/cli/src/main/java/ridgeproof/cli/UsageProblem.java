package ridgeproof.cli;

import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;

/** Says in one line what is wrong with the words of a command line, and what may be meant. */
final class UsageProblem {

  private UsageProblem() {}

  static String of(ParameterException failure) {
    if (failure instanceof UnmatchedArgumentException unmatched) {
      return of(unmatched);
    }
    CommandLine command = failure.getCommandLine();
    if (failure.getValue() != null && command.getParent() == null) {
      return of(new UnmatchedArgumentException(command, List.of(failure.getValue())));
    }
    return firstLine(failure.getMessage());
  }

  private static String of(UnmatchedArgumentException failure) {
    String word = failure.getUnmatched().get(0);
    boolean command = !failure.getCommandLine().getSubcommands().isEmpty();
    String kind =
        failure.isUnknownOption()
            ? "unknown option"
            : command ? "unknown command" : "unexpected argument";
    String suggestion =
        failure.getSuggestions().stream()
            .findFirst()
            .map(nearest -> "; did you mean " + nearest + "?")
            .orElse("");
    return kind + " '" + word + "'" + suggestion;
  }

  private static String firstLine(String message) {
    int end = message.indexOf('\n');
    return end < 0 ? message : message.substring(0, end).strip();
  }
}
