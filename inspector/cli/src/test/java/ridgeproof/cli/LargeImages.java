package ridgeproof.cli;

import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.zip.CRC32;
import java.util.zip.Deflater;
import java.util.zip.DeflaterOutputStream;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.transaction.record.ByteSource;
import ridgeproof.transaction.record.CharacterEncoding;
import ridgeproof.transaction.writer.FieldDraft;
import ridgeproof.transaction.writer.RecordDraft;
import ridgeproof.transaction.writer.TransactionWriter;

/** Small files that state large images. */
final class LargeImages {

  private static final int SIDE = 1000;

  private LargeImages() {}

  /** A transaction of one black PNG image, a thousand pixels high. */
  static byte[] transaction(int megapixels) {
    return transaction(List.of(png(megapixels * SIDE, SIDE)), megapixels * SIDE, SIDE);
  }

  /** A transaction with an image record for each of these codestreams of one size. */
  static byte[] transaction(List<byte[]> images, int width, int height) {
    List<RecordDraft> records = new ArrayList<>();
    records.add(
        RecordDraft.tagged(
            1,
            List.of(
                text(1, 1, ""),
                text(1, 2, "0500"),
                text(1, 3, ""),
                text(1, 4, "MAP"),
                text(1, 5, "20260302"),
                text(1, 7, "THP000000"),
                text(1, 8, "THP000001"),
                text(1, 9, "PILOT-0001"),
                text(1, 11, "19.69"),
                text(1, 12, "19.69"))));
    for (byte[] image : images) {
      records.add(image(records.size(), image, width, height));
    }
    return new TransactionWriter(CharacterEncoding.ASCII).write(records);
  }

  private static RecordDraft image(int ordinal, byte[] image, int width, int height) {
    return RecordDraft.tagged(
        14,
        List.of(
            text(14, 1, ""),
            text(14, 2, String.format("%02d", ordinal)),
            text(14, 3, "0"),
            text(14, 4, "THP000001"),
            text(14, 5, "20260302"),
            text(14, 6, Integer.toString(width)),
            text(14, 7, Integer.toString(height)),
            text(14, 8, "1"),
            text(14, 9, "500"),
            text(14, 10, "500"),
            text(14, 11, "PNG"),
            text(14, 12, "8"),
            text(14, 13, Integer.toString(1 + (ordinal - 1) % 10)),
            FieldDraft.data(new FieldNumber(14, 999), ByteSource.of(image))));
  }

  private static FieldDraft text(int type, int field, String value) {
    return FieldDraft.text(new FieldNumber(type, field), value);
  }

  /** A black gray-scale PNG, a thousandth of its pixels in bytes. */
  static byte[] png(int width, int height) {
    ByteArrayOutputStream file = new ByteArrayOutputStream();
    try {
      file.write(new byte[] {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1A, '\n'});
      ByteArrayOutputStream header = new ByteArrayOutputStream();
      DataOutputStream numbers = new DataOutputStream(header);
      numbers.writeInt(width);
      numbers.writeInt(height);
      numbers.write(new byte[] {8, 0, 0, 0, 0});
      chunk(file, "IHDR", header.toByteArray());
      ByteArrayOutputStream pixels = new ByteArrayOutputStream();
      try (DeflaterOutputStream deflated =
          new DeflaterOutputStream(pixels, new Deflater(Deflater.BEST_COMPRESSION))) {
        for (int y = 0; y < height; y++) {
          deflated.write(new byte[width + 1]);
        }
      }
      chunk(file, "IDAT", pixels.toByteArray());
      chunk(file, "IEND", new byte[0]);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return file.toByteArray();
  }

  private static void chunk(ByteArrayOutputStream file, String type, byte[] body)
      throws IOException {
    byte[] name = type.getBytes(StandardCharsets.US_ASCII);
    CRC32 crc = new CRC32();
    crc.update(name);
    crc.update(body);
    DataOutputStream out = new DataOutputStream(file);
    out.writeInt(body.length);
    out.write(name);
    out.write(body);
    out.writeInt((int) crc.getValue());
  }
}
