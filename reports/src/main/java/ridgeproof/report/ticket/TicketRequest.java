package ridgeproof.report.ticket;

import java.time.Instant;
import java.util.Optional;

/**
 * What a ticket is asked to say beside what was found.
 *
 * @param generatedAt the time to print; without it no time is printed
 * @param copy what goes with the ticket so that the fault can be seen without the person
 * @param commandLine how the ticket was made, names of files left out
 * @param message what the bureau answered
 * @param controlNumber whether 1.009 is shown, by which the bureau and the vendor know the
 *     transaction and two rejections of one applicant are tied to each other
 */
public record TicketRequest(
    Optional<Instant> generatedAt,
    Optional<AttachedCopy> copy,
    Optional<String> commandLine,
    Optional<String> message,
    boolean controlNumber) {

  /** Nothing beside what was found. */
  public static TicketRequest standard() {
    return new TicketRequest(
        Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), false);
  }

  public TicketRequest withTime(Instant time) {
    return new TicketRequest(Optional.of(time), copy, commandLine, message, controlNumber);
  }

  public TicketRequest withCopy(AttachedCopy attached) {
    return new TicketRequest(
        generatedAt, Optional.of(attached), commandLine, message, controlNumber);
  }

  public TicketRequest withCommandLine(String line) {
    return new TicketRequest(generatedAt, copy, Optional.of(line), message, controlNumber);
  }

  public TicketRequest withMessage(String text) {
    return new TicketRequest(generatedAt, copy, commandLine, Optional.of(text), controlNumber);
  }

  public TicketRequest withControlNumber() {
    return new TicketRequest(generatedAt, copy, commandLine, message, true);
  }
}
