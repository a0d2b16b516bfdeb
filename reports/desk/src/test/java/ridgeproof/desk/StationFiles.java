package ridgeproof.desk;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import ridgeproof.corpus.year.OfficeYear;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.transaction.record.CharacterEncoding;
import ridgeproof.transaction.writer.FieldDraft;
import ridgeproof.transaction.writer.RecordDraft;
import ridgeproof.transaction.writer.TransactionWriter;

/** Files of one station of the invented office, and what the bureau answered. */
final class StationFiles {

  private static final char FIELD_END = 0x1D;
  private static final String SERIAL = "TW-002";

  private StationFiles() {}

  /** What happens to the pixels of a file. */
  interface Alteration {
    double gray(double gray, int x, int width);
  }

  /** Every file of a year by its name. */
  private static Map<String, byte[]> year(long seed, int submissions) {
    Map<String, byte[]> files = new LinkedHashMap<>();
    try {
      new OfficeYear(seed, submissions, false, false).forEach(files::put, 2);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
    return files;
  }

  /**
   * Submissions of the station, the first as they are and the others altered.
   *
   * @param altered the number of the first one that is altered
   */
  static List<Path> of(Path folder, int count, int altered, Alteration alteration) {
    List<Path> paths = new ArrayList<>();
    for (Map.Entry<String, byte[]> file : year(3, 4 * count).entrySet()) {
      String text = new String(file.getValue(), StandardCharsets.ISO_8859_1);
      if (paths.size() < count && file.getKey().endsWith("-a.an2") && text.contains(SERIAL)) {
        byte[] bytes = file.getValue();
        paths.add(
            DeskRun.file(
                folder,
                file.getKey(),
                paths.size() < altered ? bytes : altered(bytes, text, alteration)));
      }
    }
    return paths;
  }

  private static byte[] altered(byte[] file, String text, Alteration alteration) {
    byte[] altered = file.clone();
    String mark = "14.999:";
    int at = text.indexOf(mark);
    while (at >= 0) {
      int width = number(text, "14.006:", at);
      int height = number(text, "14.007:", at);
      int from = at + mark.length();
      for (int i = 0; i < width * height && from + i < file.length; i++) {
        double gray = alteration.gray(file[from + i] & 0xFF, i % width, width);
        altered[from + i] = (byte) Math.max(0, Math.min(255, Math.round(gray)));
      }
      at = text.indexOf(mark, from + width * height);
    }
    return altered;
  }

  private static int number(String text, String field, int before) {
    int at = text.lastIndexOf(field, before) + field.length();
    return Integer.parseInt(text.substring(at, text.indexOf(FIELD_END, at)));
  }

  /** The bureau's response that rejects the date of birth of a story. */
  static Path rejection(Path folder, String story) {
    Matcher control =
        Pattern.compile("PILOT-[0-9]{4}")
            .matcher(new String(DeskRun.story(story), StandardCharsets.ISO_8859_1));
    if (!control.find()) {
      throw new IllegalStateException("the story has no control number");
    }
    byte[] response =
        new TransactionWriter(CharacterEncoding.ASCII)
            .write(
                List.of(
                    RecordDraft.tagged(
                        1,
                        List.of(
                            text(1, 1, ""),
                            text(1, 2, "0502"),
                            text(1, 3, ""),
                            text(1, 4, "ERRT"),
                            text(1, 5, "20260302"),
                            text(1, 7, "THP000001"),
                            text(1, 8, "THP000000"),
                            text(1, 9, "BUREAU-0001"),
                            text(1, 10, control.group()),
                            text(1, 11, "00.00"),
                            text(1, 12, "00.00"))),
                    RecordDraft.tagged(
                        2,
                        List.of(
                            text(2, 1, ""),
                            text(2, 2, "00"),
                            text(2, 60, "E0002 2.022 invalid value")))));
    return DeskRun.file(folder, "response.an2", response);
  }

  private static FieldDraft text(int type, int field, String value) {
    return FieldDraft.text(new FieldNumber(type, field), value);
  }
}
