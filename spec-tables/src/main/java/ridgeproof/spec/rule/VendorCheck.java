package ridgeproof.spec.rule;

import java.util.List;
import ridgeproof.spec.table.Source;

/**
 * What the vendor of a station can check.
 *
 * @param rules ids of the rules whose findings it answers
 * @param check in the imperative
 */
public record VendorCheck(List<String> rules, String check, Source source) {

  public VendorCheck {
    rules = List.copyOf(rules);
  }
}
