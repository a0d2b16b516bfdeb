package ridgeproof.calibration.limits;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Locale;

/** Writes records one after the other, right or wrong; nothing is checked. */
final class FileSketch {

  /** The most that a file of this kind may have. */
  static final int MAX_BYTES = 2_000_000;

  private static final char FS = 0x1C;
  private static final char GS = 0x1D;
  private static final char RS = 0x1E;
  private static final char US = 0x1F;

  private final ByteArrayOutputStream records = new ByteArrayOutputStream();
  private final StringBuilder contents = new StringBuilder();
  private int count;

  int length() {
    return records.size() + contents.length();
  }

  /** A record with these fields, each a number and a value. */
  FileSketch record(int type, String... fields) {
    return record(type, 0, new byte[0], fields);
  }

  /** A print in a record of Type-14. */
  FileSketch print(int position, int impression, int width, int height, String code, byte[] image) {
    return record(
        14,
        0,
        image,
        "003",
        Integer.toString(impression),
        "006",
        Integer.toString(width),
        "007",
        Integer.toString(height),
        "008",
        "1",
        "009",
        "500",
        "010",
        "500",
        "011",
        code,
        "012",
        "8",
        "013",
        Integer.toString(position));
  }

  /**
   * @param lengthOff what is added to the length that is right
   * @param image put at the end, where there is one
   */
  FileSketch record(int type, int lengthOff, byte[] image, String... fields) {
    count++;
    contents.append(RS).append(type).append(US).append(idc(count));
    StringBuilder text = new StringBuilder();
    text.append(GS).append(type).append(".002:").append(idc(count));
    for (int i = 0; i < fields.length; i += 2) {
      text.append(GS).append(type).append('.').append(fields[i]).append(':').append(fields[i + 1]);
    }
    if (image.length > 0) {
      text.append(GS).append(type).append(".999:");
    }
    write(type, lengthOff, text.toString(), image);
    return this;
  }

  private void write(int type, int lengthOff, String text, byte[] image) {
    String tag = type + ".001:";
    int others = tag.length() + text.length() + image.length + 1;
    int length = others + 1;
    while (length != others + Integer.toString(length).length()) {
      length = others + Integer.toString(length).length();
    }
    records.writeBytes((tag + (length + lengthOff) + text).getBytes(StandardCharsets.ISO_8859_1));
    records.writeBytes(image);
    records.write(FS);
  }

  private static String idc(int number) {
    return String.format(Locale.ROOT, "%02d", number % 100);
  }

  /** The file, its Type-1 record first. */
  byte[] bytes() {
    FileSketch file = new FileSketch();
    String header =
        GS
            + "1.002:0502"
            + GS
            + "1.003:1"
            + US
            + count
            + contents
            + GS
            + "1.004:CAR"
            + GS
            + "1.005:20260301"
            + GS
            + "1.007:XXHARBOR0"
            + GS
            + "1.008:XXHARBOR1"
            + GS
            + "1.009:HOSTILE1"
            + GS
            + "1.011:00.00"
            + GS
            + "1.012:00.00";
    file.write(1, 0, header, new byte[0]);
    file.records.writeBytes(records.toByteArray());
    return file.records.toByteArray();
  }
}
