package ridgeproof.corpus.scenario;

/**
 * What an area that is not there yet is to report.
 *
 * @param area for instance RDG
 * @param rule the rule where its number is settled; empty where it is not
 * @param box the image it is about, 0 where it is about none in particular
 * @param what in words
 */
public record LaterExpectation(String area, String rule, int box, String what) {

  public LaterExpectation {
    Given.required("area", area);
    rule = Given.orElse(rule, "");
    Given.within("box", box, 0, 99);
    Given.required("what", what);
  }
}
