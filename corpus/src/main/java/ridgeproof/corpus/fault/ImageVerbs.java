package ridgeproof.corpus.fault;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Base64;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import ridgeproof.imagery.GrayImage;

/** Pixels and codestreams that are not what they should be. */
final class ImageVerbs {

  static final Map<String, Verb> ALL =
      Map.of(
          "pixels", ImageVerbs::pixels,
          "over", ImageVerbs::over,
          "store", ImageVerbs::store,
          "stream", ImageVerbs::stream);

  private ImageVerbs() {}

  /** {@code pixels 7 mirror}, {@code pixels all scale 50}. */
  private static void pixels(Workpiece work, StepWords words) {
    UnaryOperator<GrayImage> edit = ImageChange.edit(words.word(1), words.numbersFrom(2));
    changeAll(work, words, piece -> stored(work, piece, edit.apply(piece.image().orElseThrow())));
  }

  /** {@code over 7 8}: box 8 was captured on top of box 7. */
  private static void over(Workpiece work, StepWords words) {
    GrayImage other = work.box(words.number(1)).image().orElseThrow();
    work.changeBox(
        words.number(0),
        piece -> stored(work, piece, ImageChange.darker(piece.image().orElseThrow(), other)));
  }

  private static Piece stored(Workpiece work, Piece piece, GrayImage image) {
    var plan = work.scenario().prints();
    byte[] bytes =
        switch (plan.compression()) {
          case NONE -> image.toArray();
          case WSQ -> StoredImage.wsq(image, plan.bitsPerPixel(), plan.ppi());
          case PNG -> StoredImage.png(image, plan.ppi());
        };
    return piece.withImage(image, bytes);
  }

  /** {@code store 7 jpeg}: in another format; what the record says of it stays as it was. */
  private static void store(Workpiece work, StepWords words) {
    int ppi = work.scenario().prints().ppi();
    changeAll(
        work,
        words,
        piece -> {
          GrayImage image = piece.image().orElseThrow();
          return piece.withCodestream(
              switch (words.word(1)) {
                case "raw" -> image.toArray();
                case "wsq" ->
                    StoredImage.wsq(
                        image, words.decimal(2), words.size() > 3 ? words.number(3) : ppi);
                case "png" -> StoredImage.png(image, words.size() > 2 ? words.number(2) : ppi);
                case "jpeg" -> StoredImage.jpeg(image);
                case "jpeg2000" -> StoredImage.jpeg2000(image);
                case "bmp", "tiff", "gif" -> StoredImage.other(image, words.word(1));
                case "color-png" -> StoredImage.color(image, "png");
                case "color-jpeg" -> StoredImage.color(image, "jpeg");
                case "bilevel-png" -> StoredImage.bilevel(image);
                default -> throw new IllegalArgumentException("no such format");
              });
        });
  }

  /** {@code stream 7 cut 50}: bytes of the image as it is stored. */
  private static void stream(Workpiece work, StepWords words) {
    changeAll(
        work,
        words,
        piece -> {
          byte[] bytes = piece.codestream().toArray();
          int at = (int) (bytes.length * (words.size() > 2 ? words.decimal(2) : 0) / 100);
          return piece.withCodestream(
              switch (words.word(1)) {
                case "cut" -> Arrays.copyOf(bytes, at);
                case "zeros" -> overwritten(bytes, at, words.number(3), 0);
                case "ones" -> overwritten(bytes, at, words.number(3), 0xFF);
                case "drop" -> without(bytes, at, words.number(3));
                case "append" -> joined(bytes, new byte[words.number(2)]);
                case "twice" -> joined(bytes, bytes);
                case "none" -> new byte[0];
                case "base64" -> Base64.getEncoder().encode(bytes);
                case "hex" -> HexFormat.of().formatHex(bytes).getBytes(StandardCharsets.US_ASCII);
                case "padded" -> Arrays.copyOf(bytes, Math.max(bytes.length, words.number(2)));
                default -> throw new IllegalArgumentException("no such edit");
              });
        });
  }

  private static byte[] overwritten(byte[] bytes, int at, int count, int value) {
    Arrays.fill(bytes, at, Math.min(bytes.length, at + count), (byte) value);
    return bytes;
  }

  private static byte[] without(byte[] bytes, int at, int count) {
    return joined(
        Arrays.copyOf(bytes, at),
        Arrays.copyOfRange(bytes, Math.min(bytes.length, at + count), bytes.length));
  }

  static byte[] joined(byte[]... parts) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    for (byte[] part : parts) {
      out.writeBytes(part);
    }
    return out.toByteArray();
  }

  /** In the boxes named, in all, or in all rolls. */
  private static void changeAll(Workpiece work, StepWords words, UnaryOperator<Piece> change) {
    List<Integer> boxes =
        switch (words.word(0)) {
          case "all" -> boxes(work, 15);
          case "rolls" -> boxes(work, 10);
          default -> words.boxes(0);
        };
    boxes.forEach(box -> work.changeBox(box, change));
  }

  private static List<Integer> boxes(Workpiece work, int most) {
    return work.pieces().stream()
        .filter(Piece::isPrint)
        .map(piece -> piece.box().getAsInt())
        .filter(box -> box <= most)
        .toList();
  }
}
