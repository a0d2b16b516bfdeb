package ridgeproof.cli.io;

import java.nio.file.Path;

/** Ends a command with one line for the user. */
public final class CommandFailure extends RuntimeException {

  private static final long serialVersionUID = 1L;

  private final int status;

  private CommandFailure(int status, String message) {
    super(message);
    this.status = status;
  }

  public static CommandFailure usage(String message) {
    return new CommandFailure(ExitStatus.USAGE, message);
  }

  public static CommandFailure inputOutput(String message) {
    return new CommandFailure(ExitStatus.INPUT_OUTPUT, message);
  }

  /** The reader of standard output wants no more, which is nothing to tell of. */
  static CommandFailure readerGone() {
    return new CommandFailure(ExitStatus.READER_GONE, "the reader of standard output is gone");
  }

  /**
   * Too little memory.
   *
   * @param what what was to be done
   */
  public static CommandFailure outOfMemory(String what) {
    return inputOutput(
        what
            + ": not enough memory for Java; to raise it, set the environment variable"
            + " JAVA_TOOL_OPTIONS=-Xmx2g");
  }

  /** The message without the name of the file that it begins with. */
  public String reason(Path path) {
    String start = path + ": ";
    return getMessage().startsWith(start) ? getMessage().substring(start.length()) : getMessage();
  }

  /** Whether there is nothing to say. */
  public boolean isSilent() {
    return status == ExitStatus.READER_GONE;
  }

  public int status() {
    return status;
  }
}
