package ridgeproof.spec.limit;

import ridgeproof.spec.table.Source;
import ridgeproof.spec.table.Table;

/**
 * A scanning resolution that the standard names.
 *
 * @param name a short name
 * @param ppi pixels per inch
 * @param ppmm pixels per millimetre
 * @param tolerancePercent how far a device may be off
 */
public record ResolutionClass(
    String name, double ppi, double ppmm, double tolerancePercent, Source source) {

  public static ResolutionClass of(Table.Row row) {
    return new ResolutionClass(
        row.required("class"),
        row.parse("ppi", Double::parseDouble),
        row.parse("ppmm", Double::parseDouble),
        row.parse("tolerance_percent", Double::parseDouble),
        row.source());
  }

  public boolean admits(double ppiMeasured) {
    return Math.abs(ppiMeasured - ppi) <= ppi * tolerancePercent / 100 + 1e-9;
  }

  /** The same class where another source asks for it. */
  public ResolutionClass askedBy(Source other) {
    return new ResolutionClass(name, ppi, ppmm, tolerancePercent, other);
  }
}
