package ridgeproof.report.page;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;

/**
 * The head of a page.
 *
 * @param policy the Content-Security-Policy: nothing is loaded, no script runs, and the only style
 *     is the one of the page
 */
public record HtmlHead(String title, String policy, String style) {

  private static final String STYLE = "page.css";

  public static HtmlHead titled(String title) {
    return of(title, readStyle(STYLE));
  }

  /**
   * @param sheet a style sheet beside that of every page
   */
  public static HtmlHead titled(String title, String sheet) {
    return of(title, readStyle(STYLE) + readStyle(sheet));
  }

  /**
   * @param rules of the one page, added to its style sheet
   */
  public static HtmlHead titled(String title, String sheet, String rules) {
    return of(title, readStyle(STYLE) + readStyle(sheet) + rules);
  }

  /**
   * The head of a page of another module.
   *
   * @param style rules of CSS beside those of every page
   */
  public static HtmlHead styled(String title, String style) {
    return of(title, readStyle(STYLE) + style);
  }

  private static HtmlHead of(String title, String style) {
    String policy =
        "default-src 'none'; style-src 'sha256-"
            + hash(style)
            + "'; img-src data:; base-uri 'none'; form-action 'none'";
    return new HtmlHead(title, policy, style);
  }

  private static String readStyle(String sheet) {
    try (InputStream in = HtmlHead.class.getResourceAsStream("/ridgeproof/report/" + sheet)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String hash(String style) {
    try {
      MessageDigest digest = MessageDigest.getInstance("SHA-256");
      return Base64.getEncoder()
          .encodeToString(digest.digest(style.getBytes(StandardCharsets.UTF_8)));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }
}
