package ridgeproof.desk.web;

import io.javalin.http.Context;

/** What every answer tells the browser: nothing is loaded from elsewhere, kept or framed. */
final class Headers {

  private static final String PAGE =
      "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self'; connect-src 'self';"
          + " form-action 'self'; frame-src 'self'; base-uri 'none'; frame-ancestors 'none'";

  /** Reports carry their own, stricter policy; their style has its hash there. */
  private static final String REPORT =
      "default-src 'none'; style-src 'unsafe-inline'; img-src data:; base-uri 'none';"
          + " form-action 'none'; frame-ancestors 'self'; sandbox allow-same-origin";

  private Headers() {}

  static void page(Context answer) {
    answer.header("Content-Security-Policy", PAGE);
    answer.header("X-Frame-Options", "DENY");
    answer.header("X-Content-Type-Options", "nosniff");
    // Nothing leaves; without a referrer a form of ours would be sent with the origin "null".
    answer.header("Referrer-Policy", "same-origin");
    answer.header("Cross-Origin-Opener-Policy", "same-origin");
    answer.header("Cross-Origin-Resource-Policy", "same-origin");
    answer.header("Permissions-Policy", "camera=(), geolocation=(), microphone=(), usb=()");
    answer.header("Cache-Control", "no-store");
  }

  /** A document that a page of the desk shows in a frame and in which no script runs. */
  static void report(Context answer) {
    answer.header("Content-Security-Policy", REPORT);
    answer.header("X-Frame-Options", "SAMEORIGIN");
  }

  /** A document to keep. The name is ours, since one of a file could tell of a person. */
  static void download(Context answer, String type, String name) {
    answer.contentType(type);
    answer.header("Content-Disposition", "attachment; filename=\"" + name + "\"");
  }
}
