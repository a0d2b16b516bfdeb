package ridgeproof.calibration.fault;

import java.util.List;
import java.util.Optional;
import ridgeproof.corpus.fault.FaultInXml;

/**
 * One fault in both encodings.
 *
 * @param traditional how it fares in the traditional encoding
 * @param xml how it fares in XML
 * @param row what the catalogue says of it in XML; empty where it is to be the same
 */
public record XmlComparison(FaultResult traditional, FaultResult xml, Optional<FaultInXml> row) {

  /** Whether both begin with the same rule, or XML with the counterpart that its row names. */
  public boolean isAlike() {
    return row.map(FaultInXml::rules)
        .map(rules -> xml.first().map(NewFinding::rule).filter(rules::contains).isPresent())
        .orElseGet(this::isSame);
  }

  boolean isSame() {
    return rule(traditional).equals(rule(xml));
  }

  /** Whether the same finding also lies in the same field, finger or file. */
  boolean isSamePlace() {
    return isSame() && places(traditional).equals(places(xml));
  }

  private static Optional<String> rule(FaultResult result) {
    return result.first().map(NewFinding::rule);
  }

  private static List<Object> places(FaultResult result) {
    return result.first().stream()
        .map(found -> (Object) List.of(found.positions(), found.field()))
        .toList();
  }

  /** One line for a list of what is not as it should be. */
  public String line() {
    return traditional.first().map(NewFinding::toString).orElse("nothing") + " but " + xml.line();
  }
}
