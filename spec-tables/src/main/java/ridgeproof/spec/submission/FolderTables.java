package ridgeproof.spec.submission;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import ridgeproof.spec.table.Table;

/** How files in a folder are told apart by their names. */
public final class FolderTables {

  private final Set<String> extensions =
      Table.resource("files/transaction-extensions.csv").rows().stream()
          .map(row -> row.required("extension"))
          .collect(Collectors.toUnmodifiableSet());
  private final Map<Pattern, String> systemFiles = new LinkedHashMap<>();

  /** Reads the tables that come with Ridgeproof. */
  public FolderTables() {
    for (Table.Row row : Table.resource("files/system-files.csv").rows()) {
      systemFiles.put(row.parse("pattern", Pattern::compile), row.required("what"));
    }
  }

  /** Whether stations export transactions under names that end so. */
  public boolean isTransactionExtension(String extension) {
    return extensions.contains(extension.toLowerCase(Locale.ROOT));
  }

  /** What a file of this name is, if a system or a program made it for itself. */
  public Optional<String> systemFile(String name) {
    return systemFiles.entrySet().stream()
        .filter(entry -> entry.getKey().matcher(name).matches())
        .map(Map.Entry::getValue)
        .findFirst();
  }
}
