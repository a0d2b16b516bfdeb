package ridgeproof.gate;

/** The gate cannot do what was asked; the message says why, in a sentence for the user. */
public final class GateFailure extends RuntimeException {

  private static final long serialVersionUID = 1L;

  public GateFailure(String message) {
    super(message);
  }
}
