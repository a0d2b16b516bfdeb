package ridgeproof.calibration.fault;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ridgeproof.corpus.fault.Fault;
import ridgeproof.corpus.fault.FaultCatalogue;
import ridgeproof.corpus.fault.FaultComposer;
import ridgeproof.corpus.fault.FaultInXml;
import ridgeproof.examination.facts.Depth;

/** Examines faults in both encodings. */
public final class XmlTrial {

  private final Map<String, FaultInXml> rows = FaultCatalogue.inXml();
  private final FaultTrial traditional;
  private final FaultTrial xml;

  public XmlTrial(Depth depth) {
    traditional = new FaultTrial(depth);
    xml = new FaultTrial(depth, FaultComposer.inXml());
  }

  /** Those of the faults that XML can have, in their order. */
  public List<XmlComparison> run(List<Fault> faults) {
    List<Fault> possible = faults.stream().filter(this::existsInXml).toList();
    List<FaultResult> before = traditional.run(possible);
    List<FaultResult> after = xml.run(possible);
    List<XmlComparison> compared = new ArrayList<>();
    for (int i = 0; i < possible.size(); i++) {
      Optional<FaultInXml> row = Optional.ofNullable(rows.get(possible.get(i).id()));
      compared.add(new XmlComparison(before.get(i), after.get(i), row));
    }
    return compared;
  }

  private boolean existsInXml(Fault fault) {
    return !rows.containsKey(fault.id()) || rows.get(fault.id()).exists();
  }
}
