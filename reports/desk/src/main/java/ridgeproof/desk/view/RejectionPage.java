package ridgeproof.desk.view;

import java.util.List;

/** What the page on a bureau's message shows. */
public final class RejectionPage {

  private RejectionPage() {}

  /** A file that the message may be about. */
  public record Choice(String id, String name) {}

  /** What a message means, and what to do. */
  public record Meaning(String title, String meaning, String remedy) {}

  /**
   * What is known of one message.
   *
   * @param message as it was pasted
   * @param meanings the surest first
   * @param findings of the file that the message agrees with
   * @param conclusion whether it was to be foreseen
   */
  public record Answer(
      String message, List<Meaning> meanings, List<String> findings, String conclusion) {}
}
