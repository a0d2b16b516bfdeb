package ridgeproof.imagery.header;

/** Restart markers in entropy-coded data, which count from 0 to 7 and begin anew (T.81 F.1.1.5). */
final class RestartCount {

  private final ImageHeaderBuilder draft;
  private final int firstCode;
  private int total;
  private int expected;
  private boolean reported;

  /**
   * @param firstCode the code of restart marker 0
   */
  RestartCount(ImageHeaderBuilder draft, int firstCode) {
    this.draft = draft;
    this.firstCode = firstCode;
  }

  boolean isRestart(int code) {
    return code >= firstCode && code < firstCode + 8;
  }

  void met(int code, int position) {
    total++;
    int number = code - firstCode;
    if (number != expected && !reported) {
      draft.damage(position, "restart marker " + number + " where " + expected + " is expected");
      reported = true;
    }
    expected = (number + 1) % 8;
  }

  void scanBegins() {
    expected = 0;
  }

  int total() {
    return total;
  }
}
