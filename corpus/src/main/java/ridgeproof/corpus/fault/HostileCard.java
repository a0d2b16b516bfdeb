package ridgeproof.corpus.fault;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.transaction.record.ByteSource;
import ridgeproof.transaction.record.CharacterEncoding;
import ridgeproof.transaction.writer.FieldDraft;
import ridgeproof.transaction.writer.RecordDraft;
import ridgeproof.transaction.writer.TransactionWriter;

/**
 * A transaction of the invented Tidewater pilots with values that try to act or to burst a page.
 */
public final class HostileCard {

  /** What a script from a value would leave in the window. */
  public static final String MARKER = "ridgeproofHostile";

  private static final String ACT = "window." + MARKER + "=1";

  /** What its fields hold. */
  public static final List<String> VALUES =
      List.of(
          "<script>" + ACT + "</script>",
          "</style></title><script>" + ACT + "</script>",
          "<img src=x onerror=\"" + ACT + "\">",
          "\"><svg onload=\"" + ACT + "\">",
          "' autofocus tabindex=1 onfocus='" + ACT,
          "<iframe srcdoc=\"<script>parent." + MARKER + "=1</script>\">",
          "<a href=\"javascript:" + ACT + "\">pilot</a>",
          "<meta http-equiv=refresh content=\"0;url=http://tide.invalid/\">",
          "<link rel=stylesheet href=http://tide.invalid/a.css><base href=http://tide.invalid/>",
          "<!-- <plaintext>",
          "\u202egnp.exe\u2066\u200f\u061c\u05e9\u05dc\u05d5\u05dd \u0645\u0631\u062d\u0628\u0627",
          "\u0001\u0007\b\u001b[31m\u007f\u0085\u009b",
          "W".repeat(100_000),
          "\u6e2f".repeat(30_000),
          "a\u0301".repeat(20_000),
          "\ud83d\udea2\ufdfd".repeat(2_000),
          "\u00a0".repeat(5_000),
          "-/".repeat(5_000));

  /** A name that tries the same. */
  public static final String FILE_NAME =
      "<script>" + ACT + "</script>" + "\u202e".repeat(3) + "pilot".repeat(40) + ".an2";

  private int next;

  private HostileCard() {}

  /** The file. */
  public static byte[] bytes() {
    return new HostileCard().written();
  }

  private byte[] written() {
    List<RecordDraft> records = new ArrayList<>();
    records.add(RecordDraft.tagged(1, header()));
    records.add(RecordDraft.tagged(2, filled(2, "00", 3, 98)));
    for (int position : new int[] {1, 2, 13, 14}) {
      records.add(RecordDraft.tagged(14, print(position)));
    }
    return new TransactionWriter(CharacterEncoding.UTF_8).write(records);
  }

  private List<FieldDraft> header() {
    List<FieldDraft> fields = new ArrayList<>();
    fields.add(text(1, 1, ""));
    fields.add(text(1, 2, "0502"));
    for (int field = 4; field <= 18; field++) {
      fields.add(text(1, field, field == 15 ? "003\u001fUTF-8\u001f" : value()));
    }
    return fields;
  }

  private List<FieldDraft> print(int position) {
    List<FieldDraft> fields = new ArrayList<>();
    fields.add(text(14, 1, ""));
    fields.add(text(14, 2, String.format(Locale.ROOT, "%02d", position)));
    fields.add(text(14, 3, "0"));
    fields.add(text(14, 4, value()));
    fields.add(text(14, 5, value()));
    fields.add(text(14, 6, "4"));
    fields.add(text(14, 7, "3"));
    fields.add(text(14, 8, position == 1 ? value() : "1"));
    fields.add(text(14, 9, "500"));
    fields.add(text(14, 10, "500"));
    fields.add(text(14, 11, position == 2 ? value() : "NONE"));
    fields.add(text(14, 12, "8"));
    fields.add(text(14, 13, Integer.toString(position)));
    fields.add(text(14, 20, value()));
    fields.add(text(14, 200, value()));
    fields.add(FieldDraft.data(new FieldNumber(14, 999), ByteSource.of(new byte[12])));
    return fields;
  }

  private List<FieldDraft> filled(int type, String idc, int first, int last) {
    List<FieldDraft> fields = new ArrayList<>();
    fields.add(text(type, 1, ""));
    fields.add(text(type, 2, idc));
    for (int field = first; field <= last; field++) {
      fields.add(text(type, field, value()));
    }
    return fields;
  }

  private static FieldDraft text(int type, int field, String value) {
    return FieldDraft.text(new FieldNumber(type, field), value);
  }

  private String value() {
    return VALUES.get(next++ % VALUES.size());
  }
}
