package ridgeproof.cli.io;

import ridgeproof.examination.Verdict;

/** What the process ends with. */
public final class ExitStatus {

  public static final int OK = 0;
  public static final int USAGE = 64;
  public static final int DEFECT = 70;
  public static final int INPUT_OUTPUT = 74;

  /** Whoever read the output stopped: as of a process that a broken pipe ended, 128 and 13. */
  public static final int READER_GONE = 141;

  private ExitStatus() {}

  public static int of(Verdict verdict) {
    return switch (verdict) {
      case READY -> OK;
      case REVIEW -> 1;
      case HOLD -> 2;
      case UNREADABLE -> 3;
    };
  }
}
