package ridgeproof.desk.view;

import java.util.List;

/** What the page on a bureau's message shows. */
public final class RejectionPage {

  private RejectionPage() {}

  /**
   * A file that the message may be about.
   *
   * @param chosen whether it is the one to begin with
   */
  public record Choice(String id, String name, boolean chosen) {}

  /**
   * What the page begins with.
   *
   * @param message empty where it is still to be pasted
   * @param note what a response on the desk refers to; empty without one
   */
  public record Beginning(List<Choice> files, String message, String note) {}

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
