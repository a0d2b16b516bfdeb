package ridgeproof.examination.cause;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ridgeproof.finding.Finding;
import ridgeproof.finding.FindingLog;
import ridgeproof.finding.Location;
import ridgeproof.finding.Measure;
import ridgeproof.finding.Observed;
import ridgeproof.spec.SpecTables;
import ridgeproof.spec.table.Source;

/** Collects the causes that were established, those that reach furthest first. */
public final class CauseLog {

  private final SpecTables tables;
  private final List<Cause> causes = new ArrayList<>();
  private final List<Finding> revealed = new ArrayList<>();

  public CauseLog(SpecTables tables) {
    this.tables = tables;
  }

  /** A cause that rests on these numbers and explains these findings. */
  public void add(
      String ruleId,
      Location location,
      Observed observed,
      String required,
      List<Measure> evidence,
      Consequences consequences) {
    add(ruleId, location, observed, required, Optional.empty(), evidence, consequences);
  }

  /** As the other, where the requirement has a source of its own. */
  public void add(
      String ruleId,
      Location location,
      Observed observed,
      String required,
      Optional<Source> source,
      List<Measure> evidence,
      Consequences consequences) {
    FindingLog one = new FindingLog(tables, 1);
    one.add(ruleId, location, observed, required, source, evidence);
    causes.add(new Cause(one.findings().get(0), consequences));
  }

  /** A finding that was reported already and explains others. */
  public void add(Finding finding, Consequences consequences) {
    Consequences others = consequences.onlyWhere(other -> other != finding);
    for (int i = 0; i < causes.size(); i++) {
      if (causes.get(i).finding() == finding) {
        causes.set(i, new Cause(finding, causes.get(i).consequences().or(others)));
        return;
      }
    }
    causes.add(new Cause(finding, others));
  }

  /** Adds a finding that could only be seen once a damage was undone. */
  public void reveal(Finding finding) {
    revealed.add(finding);
  }

  public List<Finding> revealed() {
    return List.copyOf(revealed);
  }

  public List<Cause> causes() {
    return List.copyOf(causes);
  }
}
