package ridgeproof.ledger;

import java.util.List;

/**
 * What a response says.
 *
 * @param refers keyed hash of the control number that it answers (field 1.010)
 * @param messages reasons of a rejection
 */
public record Response(String refers, ResponseOutcome outcome, List<ResponseMessage> messages) {

  public Response {
    messages = List.copyOf(messages);
  }
}
