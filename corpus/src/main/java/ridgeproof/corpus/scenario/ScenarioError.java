package ridgeproof.corpus.scenario;

/** A scenario that cannot be used, with its name and the place in it. */
public final class ScenarioError extends RuntimeException {

  private static final long serialVersionUID = 1L;

  public ScenarioError(String message) {
    super(message);
  }
}
