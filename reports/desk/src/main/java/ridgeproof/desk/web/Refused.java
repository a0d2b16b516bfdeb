package ridgeproof.desk.web;

/** Ends a request with a status and a text of the bundle. */
final class Refused extends RuntimeException {

  private static final long serialVersionUID = 1L;

  private final int status;

  /**
   * @param key of the text that is shown
   */
  Refused(int status, String key) {
    super(key, null, false, false);
    this.status = status;
  }

  static Refused notFound() {
    return new Refused(404, "refused.gone");
  }

  int status() {
    return status;
  }

  String key() {
    return getMessage();
  }
}
