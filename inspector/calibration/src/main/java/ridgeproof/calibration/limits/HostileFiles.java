package ridgeproof.calibration.limits;

import static ridgeproof.calibration.limits.FileSketch.MAX_BYTES;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Base64;
import java.util.List;
import java.util.function.Function;
import ridgeproof.imagery.GrayImage;

/** Files of two megabytes or less that state or hold far more than a transaction does. */
final class HostileFiles {

  private static final String US = "\u001F";
  private static final String RS = "\u001E";
  private static final int FINGERS = 10;
  private static final int ROLLED = 1;
  private static final int PLAIN = 0;

  private HostileFiles() {}

  static List<HostileFile> all() {
    return List.of(
        new HostileFile("10 PNG of 14 million even pixels", () -> evenPng(10, 3800)),
        new HostileFile("one PNG of 200 million even pixels", () -> evenPng(1, 14_100)),
        new HostileFile("WSQ that states 14,000 x 14,000", HostileFiles::statingWsq),
        new HostileFile("JPEG with thousands of scans", HostileFiles::scans),
        new HostileFile("JPEG 2000 of 30 million even pixels", HostileFiles::jpeg2000),
        new HostileFile("3 slaps of 6 million pixels of straight ridges", () -> slaps(true)),
        new HostileFile("3 slaps of 6 million pixels of disordered ridges", () -> slaps(false)),
        new HostileFile("20 prints of a million pixels of disordered ridges", () -> prints(1000)),
        new HostileFile("20 rolls of 800 x 750 pixels of straight ridges", HostileFiles::rolls),
        new HostileFile("150 prints of 300 x 400 disordered ridges", HostileFiles::manyPrints),
        new HostileFile("records of 8 x 8 pixels", () -> records(tinyPng(), 0)),
        new HostileFile("records without an image", () -> records(new byte[0], 0)),
        new HostileFile("records whose length is wrong", () -> records(new byte[0], 1)),
        new HostileFile("the same, with line ends translated", HostileFiles::translated),
        new HostileFile("binary records that lack a byte", HostileFiles::lackingBytes),
        new HostileFile("a million subfields", () -> field(2, "019", "A" + RS)),
        new HostileFile("a million items", () -> field(2, "047", "A" + US)),
        new HostileFile("a name of two million letters", () -> field(2, "018", "A")),
        new HostileFile("a name of commas and blanks", () -> field(2, "018", "A, ")),
        new HostileFile("a control number without end", () -> field(2, "010", "0-")),
        new HostileFile("a list of 100,000 minutiae", HostileFiles::minutiae),
        new HostileFile("100,000 segments", () -> field(14, "021", "1" + US + "1" + US + "9" + RS)),
        new HostileFile("fields of unknown numbers", HostileFiles::fields),
        new HostileFile("Base64", () -> inText(bytes -> Base64.getEncoder().encode(bytes))),
        new HostileFile("UTF-16", () -> inText(HostileFiles::utf16)));
  }

  private static byte[] evenPng(int images, int side) {
    byte[] png = HostileImages.png(HostileImages.even(side, side));
    FileSketch file = new FileSketch();
    for (int i = 1; i <= images; i++) {
      file.print(i, ROLLED, side, side, "PNG", png);
    }
    return file.bytes();
  }

  private static byte[] statingWsq() {
    byte[] wsq = HostileImages.wsq(HostileImages.labyrinth(1500, 1500), 0.75);
    return new FileSketch()
        .print(13, PLAIN, 14_000, 14_000, "WSQ20", HostileImages.wsqStating(14_000, wsq))
        .bytes();
  }

  private static byte[] scans() {
    byte[] jpeg = HostileImages.scans(HostileImages.even(3000, 3000), MAX_BYTES - 1000);
    return new FileSketch().print(13, PLAIN, 3000, 3000, "JPEGB", jpeg).bytes();
  }

  private static byte[] jpeg2000() {
    byte[] image = HostileImages.jpeg2000(HostileImages.even(5500, 5500));
    return new FileSketch().print(13, PLAIN, 5500, 5500, "JP2", image).bytes();
  }

  private static byte[] slaps(boolean straight) {
    GrayImage image =
        straight ? HostileImages.stripes(2440, 2440) : HostileImages.labyrinth(2440, 2440);
    byte[] wsq = HostileImages.wsq(image, straight ? 0.1 : 0.6);
    FileSketch file = new FileSketch();
    for (int position = 13; position <= 15; position++) {
      file.print(position, PLAIN, 2440, 2440, "WSQ20", wsq);
    }
    return file.bytes();
  }

  private static byte[] prints(int side) {
    byte[] wsq = HostileImages.wsq(HostileImages.labyrinth(side, side), 0.6);
    FileSketch file = new FileSketch();
    for (int finger = 1; finger <= FINGERS; finger++) {
      file.print(finger, ROLLED, side, side, "WSQ20", wsq);
      file.print(finger, PLAIN, side, side, "WSQ20", wsq);
    }
    return file.bytes();
  }

  private static byte[] rolls() {
    byte[] wsq = HostileImages.wsq(HostileImages.stripes(800, 750), 0.3);
    FileSketch file = new FileSketch();
    for (int i = 0; i < 2 * FINGERS; i++) {
      file.print(i % FINGERS + 1, i < FINGERS ? ROLLED : PLAIN, 800, 750, "WSQ20", wsq);
    }
    return file.bytes();
  }

  private static byte[] manyPrints() {
    byte[] wsq = HostileImages.wsq(HostileImages.labyrinth(300, 400), 0.6);
    FileSketch file = new FileSketch();
    for (int i = 0; i < 150; i++) {
      file.print(i % FINGERS + 1, i / FINGERS % 2, 300, 400, "WSQ20", wsq);
    }
    return file.bytes();
  }

  private static byte[] tinyPng() {
    return HostileImages.png(HostileImages.even(8, 8));
  }

  private static byte[] records(byte[] image, int lengthOff) {
    FileSketch file = new FileSketch();
    while (file.length() < MAX_BYTES - 1000) {
      file.record(
          14, lengthOff, image, "003", "1", "006", "8", "007", "8", "011", "PNG", "013", "1");
    }
    return file.bytes();
  }

  private static byte[] translated() {
    FileSketch file = new FileSketch();
    while (file.length() < MAX_BYTES - 20_000) {
      file.record(14, -1, "A\r\nB".getBytes(StandardCharsets.ISO_8859_1), "013", "1");
    }
    return file.bytes();
  }

  /** Sixty binary records of which each is a byte shorter than it states. */
  private static byte[] lackingBytes() {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    FileSketch file = new FileSketch();
    int length = 30_000;
    for (int i = 0; i < 60; i++) {
      file.record(4);
      byte[] record = new byte[length - 1];
      record[2] = (byte) (length >> 8);
      record[3] = (byte) length;
      record[4] = (byte) (i + 1);
      record[6] = (byte) (i % FINGERS + 1);
      out.writeBytes(record);
    }
    byte[] header = file.bytes();
    ByteArrayOutputStream whole = new ByteArrayOutputStream();
    whole.write(header, 0, new String(header, StandardCharsets.ISO_8859_1).indexOf('\u001C') + 1);
    whole.writeBytes(out.toByteArray());
    return whole.toByteArray();
  }

  private static byte[] field(int type, String number, String unit) {
    return new FileSketch()
        .record(type, number, unit.repeat((MAX_BYTES - 1000) / unit.length()))
        .bytes();
  }

  private static byte[] minutiae() {
    StringBuilder list = new StringBuilder();
    for (int i = 1; list.length() < MAX_BYTES - 1000; i++) {
      list.append(i).append(US).append("01000200090").append(US).append("60A").append(RS);
    }
    return new FileSketch().record(9, "012", list.toString()).bytes();
  }

  private static byte[] fields() {
    StringBuilder fields = new StringBuilder("A");
    for (int i = 0; fields.length() < MAX_BYTES - 1000; i++) {
      fields.append("\u001D2.").append(100 + i % 900).append(":A");
    }
    return new FileSketch().record(2, "018", fields.toString()).bytes();
  }

  private static byte[] inText(Function<byte[], byte[]> written) {
    byte[] file = prints(700);
    byte[] bytes = written.apply(file);
    return bytes.length <= MAX_BYTES ? bytes : Arrays.copyOf(bytes, MAX_BYTES);
  }

  private static byte[] utf16(byte[] bytes) {
    return new String(bytes, StandardCharsets.ISO_8859_1).getBytes(StandardCharsets.UTF_16LE);
  }
}
