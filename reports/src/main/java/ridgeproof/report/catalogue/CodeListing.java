package ridgeproof.report.catalogue;

import java.util.List;
import java.util.Locale;
import ridgeproof.spec.SpecTables;
import ridgeproof.spec.layout.Code;
import ridgeproof.spec.layout.CodeTable;
import ridgeproof.spec.table.VersionRange;

/** Code tables as text. */
public final class CodeListing {

  private CodeListing() {}

  /** A line a table. */
  public static String tables(SpecTables tables) {
    StringBuilder out = new StringBuilder();
    for (SpecTables.CodeTableTitle title : tables.codeTables()) {
      out.append(String.format(Locale.ROOT, "%-28s %s%n", title.table(), title.title()));
    }
    return out.append("To list the codes of a table: ridgeproof codes TABLE\n").toString();
  }

  /** A line a code, of those whose code or name holds the word. */
  public static String codes(CodeTable table, String word) {
    String wanted = word.toLowerCase(Locale.ROOT);
    List<Code> found =
        table.codes().stream()
            .filter(code -> holds(code.code(), wanted) || holds(code.name(), wanted))
            .toList();
    int width = found.stream().mapToInt(code -> code.code().length()).max().orElse(0);
    StringBuilder out = new StringBuilder();
    for (Code code : found) {
      out.append(code.code())
          .append(" ".repeat(width - code.code().length() + 2))
          .append(code.name())
          .append(versions(code.versions()))
          .append('\n');
    }
    return out.append(found.size()).append(found.size() == 1 ? " code\n" : " codes\n").toString();
  }

  /** A line for each code of any table whose code or name holds the word, with its table. */
  public static String find(SpecTables tables, String word) {
    String wanted = word.toLowerCase(Locale.ROOT);
    StringBuilder out = new StringBuilder();
    int found = 0;
    for (SpecTables.CodeTableTitle title : tables.codeTables()) {
      for (Code code : tables.codes(title.table()).codes()) {
        if (holds(code.code(), wanted) || holds(code.name(), wanted)) {
          found++;
          out.append(
              String.format(
                  Locale.ROOT,
                  "%-28s %-8s %s%s%n",
                  title.table(),
                  code.code(),
                  code.name(),
                  versions(code.versions())));
        }
      }
    }
    return out.append(found).append(found == 1 ? " code\n" : " codes\n").toString();
  }

  private static String versions(VersionRange range) {
    String since =
        range.since() == 0 ? "" : String.format(Locale.ROOT, " since %04d", range.since());
    String until =
        range.until() == Integer.MAX_VALUE
            ? ""
            : String.format(Locale.ROOT, " until %04d", range.until());
    return since.isEmpty() && until.isEmpty() ? "" : "  (" + (since + until).strip() + ")";
  }

  private static boolean holds(String text, String wanted) {
    return text.toLowerCase(Locale.ROOT).contains(wanted);
  }
}
