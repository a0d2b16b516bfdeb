package ridgeproof.corpus.fault;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Base64;
import java.util.HexFormat;
import java.util.Map;
import java.util.function.UnaryOperator;
import java.util.zip.GZIPOutputStream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/** What befalls the finished file as a whole on its way. */
final class ByteVerbs {

  static final Map<String, Verb> ALL =
      Map.ofEntries(
          Map.entry("whole", ByteVerbs::whole),
          Map.entry("cut", ByteVerbs::cut),
          Map.entry("append", ByteVerbs::append),
          Map.entry("before", ByteVerbs::before),
          Map.entry("element-twice", RecordBytes::elementTwice),
          Map.entry("length", RecordBytes::length),
          Map.entry("separator", RecordBytes::separator),
          Map.entry("record-end", RecordBytes::recordEnd),
          Map.entry("raw-value", RecordBytes::rawValue),
          Map.entry("record-bytes", RecordBytes::insert),
          Map.entry("swap-records", RecordBytes::swapRecords),
          Map.entry("lose-record", RecordBytes::loseRecord));

  private static final String FILE_NAME = "card.an2";

  private ByteVerbs() {}

  /** {@code whole utf-8}: every byte of the file. */
  private static void whole(Workpiece work, StepWords words) {
    work.setBytes(edit(words.word(0)).apply(work.file()));
  }

  private static UnaryOperator<byte[]> edit(String name) {
    return switch (name) {
      case "line-feed-to-crlf" -> file -> replaced(file, "\n", "\r\n");
      case "crlf-to-line-feed" -> file -> replaced(file, "\r\n", "\n");
      case "return-to-line-feed" -> file -> replaced(file, "\r", "\n");
      case "utf-8" -> file -> latin(file).getBytes(StandardCharsets.UTF_8);
      case "utf-8-replaced" ->
          file -> new String(file, StandardCharsets.UTF_8).getBytes(StandardCharsets.UTF_8);
      case "utf-16" -> file -> latin(file).getBytes(StandardCharsets.UTF_16);
      case "question-marks" ->
          file ->
              new String(file, StandardCharsets.US_ASCII)
                  .replace('\uFFFD', '?')
                  .getBytes(StandardCharsets.US_ASCII);
      case "seven-bits" -> file -> each(file, value -> value & 0x7F);
      case "no-controls" -> file -> replaced(latin(file).replaceAll("[\\x1c-\\x1f]", " "));
      case "no-zeros" -> file -> replaced(latin(file).replace("\0", ""));
      case "ebcdic" -> file -> latin(file).getBytes(Charset.forName("IBM037"));
      case "base64" -> file -> Base64.getEncoder().encode(file);
      case "base64-lines" -> file -> Base64.getMimeEncoder().encode(file);
      case "hex" -> file -> HexFormat.of().formatHex(file).getBytes(StandardCharsets.US_ASCII);
      case "mime" -> ByteVerbs::mime;
      case "zip" -> ByteVerbs::zip;
      case "gzip" -> ByteVerbs::gzip;
      case "twice" -> file -> ImageVerbs.joined(file, file);
      case "empty" -> file -> new byte[0];
      case "zeros" -> file -> new byte[file.length];
      case "xml" ->
          file ->
              "<?xml version=\"1.0\"?>\n<itl:NISTBiometricInformationExchangePackage/>\n"
                  .getBytes(StandardCharsets.UTF_8);
      case "pdf" ->
          file ->
              "%PDF-1.7\n%\u00e2\u00e3\n1 0 obj\n<<>>\nendobj\n%%EOF\n"
                  .getBytes(StandardCharsets.ISO_8859_1);
      case "byte-order-swapped" -> ByteVerbs::pairsSwapped;
      default -> throw new IllegalArgumentException("no such edit of the whole file");
    };
  }

  private static byte[] replaced(byte[] file, String old, String other) {
    return replaced(latin(file).replace(old, other));
  }

  private static byte[] replaced(String text) {
    return text.getBytes(StandardCharsets.ISO_8859_1);
  }

  static String latin(byte[] file) {
    return new String(file, StandardCharsets.ISO_8859_1);
  }

  private static byte[] each(byte[] file, UnaryOperator<Integer> edit) {
    byte[] changed = file.clone();
    for (int i = 0; i < changed.length; i++) {
      changed[i] = (byte) (int) edit.apply(changed[i] & 0xFF);
    }
    return changed;
  }

  private static byte[] pairsSwapped(byte[] file) {
    byte[] changed = Arrays.copyOf(file, file.length + file.length % 2);
    for (int i = 0; i + 1 < changed.length; i += 2) {
      byte first = changed[i];
      changed[i] = changed[i + 1];
      changed[i + 1] = first;
    }
    return changed;
  }

  private static byte[] mime(byte[] file) {
    String head =
        "MIME-Version: 1.0\r\nContent-Type: application/octet-stream\r\n"
            + "Content-Transfer-Encoding: base64\r\n\r\n";
    return ImageVerbs.joined(
        head.getBytes(StandardCharsets.US_ASCII), Base64.getMimeEncoder().encode(file));
  }

  private static byte[] zip(byte[] file) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(out)) {
      ZipEntry entry = new ZipEntry(FILE_NAME);
      entry.setTime(0);
      zip.putNextEntry(entry);
      zip.write(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return out.toByteArray();
  }

  private static byte[] gzip(byte[] file) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (GZIPOutputStream gzip = new GZIPOutputStream(out)) {
      gzip.write(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return out.toByteArray();
  }

  /** {@code cut 60%} keeps so much of the file, {@code cut 1} takes so many bytes from its end. */
  private static void cut(Workpiece work, StepWords words) {
    byte[] file = work.file();
    String word = words.word(0);
    int left =
        word.endsWith("%")
            ? (int) (file.length * Double.parseDouble(word.replace("%", "")) / 100)
            : file.length - Integer.parseInt(word);
    work.setBytes(Arrays.copyOf(file, left));
  }

  /** {@code append zeros 512}, {@code append text ...}, {@code append base car-card}. */
  private static void append(Workpiece work, StepWords words) {
    work.setBytes(ImageVerbs.joined(work.file(), extra(work, words)));
  }

  private static void before(Workpiece work, StepWords words) {
    work.setBytes(ImageVerbs.joined(extra(work, words), work.file()));
  }

  private static byte[] extra(Workpiece work, StepWords words) {
    return switch (words.word(0)) {
      case "zeros" -> new byte[words.number(1)];
      case "text" -> replaced(words.valueFrom(1));
      case "hex" -> HexFormat.of().parseHex(words.word(1));
      case "base" -> work.composer().clean(words.word(1));
      default -> throw new IllegalArgumentException("no such bytes");
    };
  }
}
