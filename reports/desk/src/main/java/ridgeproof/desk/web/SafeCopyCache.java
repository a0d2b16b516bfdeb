package ridgeproof.desk.web;

import java.util.LinkedHashMap;
import java.util.Map;
import ridgeproof.desk.work.Examined;
import ridgeproof.examination.safecopy.SafeCopy;
import ridgeproof.report.FileFacts;
import ridgeproof.report.ticket.AttachedCopy;
import ridgeproof.transaction.record.ByteSource;

/** Safe copies of the last few files for which somebody wrote a ticket: each takes a second. */
final class SafeCopyCache {

  static final String NAME = "safe-copy.an2";
  private static final int MAX_COPIES = 4;

  private final DeskSettings settings;
  private final Map<String, AttachedCopy> copies = new LinkedHashMap<>();

  SafeCopyCache(DeskSettings settings) {
    this.settings = settings;
  }

  synchronized AttachedCopy of(String id, Examined examined) {
    AttachedCopy known = copies.get(id);
    if (known != null) {
      return known;
    }
    if (copies.size() >= MAX_COPIES) {
      copies.remove(copies.keySet().iterator().next());
    }
    AttachedCopy made = make(examined);
    copies.put(id, made);
    return made;
  }

  private AttachedCopy make(Examined examined) {
    SafeCopy copy = settings.safeCopies().get().of(examined.report());
    ByteSource bytes = copy.bytes();
    return new AttachedCopy(new FileFacts(NAME, bytes.length(), bytes.sha256()), copy);
  }

  synchronized void forget() {
    copies.clear();
  }
}
