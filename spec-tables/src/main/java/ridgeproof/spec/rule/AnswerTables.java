package ridgeproof.spec.rule;

import java.util.List;
import ridgeproof.spec.table.Lazy;
import ridgeproof.spec.table.Table;

/** What bureaus answer, and what the vendor of a station can check. */
public final class AnswerTables {

  private final RuleCatalogue catalogue;
  private final Lazy<List<BureauMessage>> bureauMessages = new Lazy<>(this::readBureauMessages);
  private final Lazy<List<VendorCheck>> vendorChecks = new Lazy<>(this::readVendorChecks);

  /**
   * @param catalogue whose rules the rows name
   */
  public AnswerTables(RuleCatalogue catalogue) {
    this.catalogue = catalogue;
  }

  /** What bureaus say of transactions that they do not take, those with a code first. */
  public List<BureauMessage> bureauMessages() {
    return bureauMessages.get();
  }

  private List<BureauMessage> readBureauMessages() {
    return Table.resource("messages/bureau-messages.csv").rows().stream()
        .map(row -> BureauMessage.of(row, catalogue))
        .toList();
  }

  /** What the vendor of a station can check, by the rules that were met, the narrowest first. */
  public List<VendorCheck> vendorChecks() {
    return vendorChecks.get();
  }

  private List<VendorCheck> readVendorChecks() {
    return Table.resource("rules/vendor-checks.csv").rows().stream()
        .map(
            row ->
                new VendorCheck(
                    row.parse("rules", catalogue::matching), row.required("check"), row.source()))
        .toList();
  }
}
