package ridgeproof.calibration.fault;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import ridgeproof.corpus.fault.Fault;
import ridgeproof.corpus.fault.FaultArea;
import ridgeproof.corpus.fault.FaultCatalogue;
import ridgeproof.corpus.fault.FaultInXml;

/** The document of the fault catalogue in XML, without dates. */
final class XmlFaultDocument {

  private final List<Fault> faults;
  private final List<XmlComparison> compared;
  private final Map<String, FaultInXml> rows = FaultCatalogue.inXml();
  private final StringBuilder text = new StringBuilder();

  XmlFaultDocument(List<Fault> faults, List<XmlComparison> compared) {
    this.faults = faults;
    this.compared = compared;
  }

  String write(String command) {
    line("# The fault catalogue in XML");
    line("");
    line("The files of [faults.md](faults.md) in both encodings, examined by");
    line("");
    line("    %s", command);
    line("");
    line("Faults of records and fields are made in a traditional file and converted; what befalls");
    line(
        "a whole file befalls its XML. *Impossible*: XML cannot have the fault. *Same*: the first");
    line("finding is of the same rule; of these, *same place* counts those at the same field or");
    line(
        "finger. *Counterpart*: it is the rule that `xml.csv` beside the catalogue names for XML.");
    line("");
    line(
        "| area | faults | impossible | examined | same | same place | counterpart | other | named first |");
    line("|---|---:|---:|---:|---:|---:|---:|---:|---:|");
    for (FaultArea area : FaultArea.values()) {
      row(area.name().toLowerCase(Locale.ROOT), fault -> fault.area() == area);
    }
    row("**all**", fault -> true);
    line("");
    differences();
    counterparts();
    impossible();
    return text.toString();
  }

  private void row(String name, Predicate<Fault> which) {
    long all = faults.stream().filter(which).count();
    List<XmlComparison> these =
        compared.stream().filter(one -> which.test(one.xml().fault())).toList();
    if (all > 0) {
      line(
          "| %s | %d | %d | %d | %d | %d | %d | %d | %d |",
          name,
          all,
          all - these.size(),
          these.size(),
          count(these, XmlComparison::isSame),
          count(these, XmlComparison::isSamePlace),
          count(these, one -> !one.isSame() && one.isAlike()),
          count(these, one -> !one.isAlike()),
          count(
              these,
              one -> one.xml().outcome() == FaultOutcome.NAMED || !one.isSame() && one.isAlike()));
    }
  }

  private static long count(List<XmlComparison> these, Predicate<XmlComparison> which) {
    return these.stream().filter(which).count();
  }

  private void differences() {
    List<XmlComparison> other = compared.stream().filter(one -> !one.isAlike()).toList();
    if (other.isEmpty()) {
      return;
    }
    line("## Another first finding");
    line("");
    line("| id | fault | traditional | XML |");
    line("|---|---|---|---|");
    for (XmlComparison one : other) {
      line(
          "| %s | %s | %s | %s |",
          one.xml().fault().id(),
          one.xml().fault().fault(),
          first(one.traditional()),
          one.xml().found().stream()
              .limit(3)
              .map(NewFinding::toString)
              .collect(Collectors.joining("; ")));
    }
    line("");
  }

  private static String first(FaultResult result) {
    return result.first().map(NewFinding::toString).orElse("");
  }

  private void counterparts() {
    line("## A counterpart in XML");
    line("");
    line("| id | fault | traditional | XML | why |");
    line("|---|---|---|---|---|");
    compared.stream()
        .filter(one -> one.row().isPresent())
        .forEach(
            one ->
                line(
                    "| %s | %s | %s | %s | %s |",
                    one.xml().fault().id(),
                    one.xml().fault().fault(),
                    first(one.traditional()),
                    first(one.xml()),
                    one.row().get().why()));
    line("");
  }

  private void impossible() {
    line("## Faults that XML cannot have");
    line("");
    Map<String, List<String>> byReason = new LinkedHashMap<>();
    for (Fault fault : faults) {
      FaultInXml row = rows.get(fault.id());
      if (row != null && !row.exists()) {
        byReason.computeIfAbsent(row.why(), why -> new ArrayList<>()).add(fault.id());
      }
    }
    byReason.forEach((why, ids) -> line("- %s: %s", why, String.join(", ", ids)));
  }

  private void line(String format, Object... arguments) {
    text.append(arguments.length == 0 ? format : String.format(Locale.ROOT, format, arguments))
        .append('\n');
  }
}
