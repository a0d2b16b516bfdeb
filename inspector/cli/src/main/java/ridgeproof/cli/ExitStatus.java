package ridgeproof.cli;

import ridgeproof.examination.Verdict;

/** What the process ends with. */
final class ExitStatus {

  static final int OK = 0;
  static final int USAGE = 64;
  static final int DEFECT = 70;
  static final int INPUT_OUTPUT = 74;

  /** Whoever read the output stopped: as of a process that a broken pipe ended, 128 and 13. */
  static final int READER_GONE = 141;

  private ExitStatus() {}

  static int of(Verdict verdict) {
    return switch (verdict) {
      case READY -> OK;
      case REVIEW -> 1;
      case HOLD -> 2;
      case UNREADABLE -> 3;
    };
  }
}
