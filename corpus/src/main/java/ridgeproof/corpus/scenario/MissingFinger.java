package ridgeproof.corpus.scenario;

/**
 * A finger that the subject does not have or cannot print.
 *
 * @param finger 1 to 10
 * @param reason XX amputated, UP unable to print
 * @param undeclared whether fields 2.084 and 14.018 keep silent about it
 * @param imaged whether an image is there all the same
 */
public record MissingFinger(int finger, String reason, boolean undeclared, boolean imaged) {

  public MissingFinger {
    Defaults.within("finger", finger, 1, 10);
    reason = Defaults.orElse(reason, "XX");
  }
}
