package ridgeproof.imagery.header;

import java.util.BitSet;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.StringJoiner;
import ridgeproof.finding.Quantity;
import ridgeproof.imagery.ImageDefect;
import ridgeproof.imagery.ImageFormat;
import ridgeproof.imagery.ImageHeader;
import ridgeproof.imagery.PixelDensity;
import ridgeproof.transaction.record.ByteSource;

/** Walks the marker segments of a JPEG codestream (ITU-T T.81 Annex B; JFIF is ITU-T T.871). */
final class JpegHeaderReader {

  private static final int TEM = 0x01;
  private static final int DHT = 0xC4;
  private static final int JPG = 0xC8;
  private static final int DAC = 0xCC;
  private static final int RST0 = 0xD0;
  private static final int SOI = 0xD8;
  private static final int EOI = 0xD9;
  private static final int SOS = 0xDA;
  private static final int DQT = 0xDB;
  private static final int DNL = 0xDC;
  private static final int DRI = 0xDD;
  private static final int APP0 = 0xE0;
  private static final int APP1 = 0xE1;
  private static final int APP14 = 0xEE;
  private static final int SOF55 = 0xF7;
  private static final int COM = 0xFE;
  private static final int MAX_PRECISION = 16;

  private final ImageHeaderBuilder draft;
  private final JpegMarkerReader walk;
  private final RestartCount restarts;
  private final BitSet quantizationTables = new BitSet();
  private final BitSet huffmanTables = new BitSet();
  private OptionalInt tableOfSecondClass = OptionalInt.empty();
  private final BitSet wantedQuantization = new BitSet();
  private Optional<JpegProcess> process = Optional.empty();
  private int scans;
  private int restartInterval;
  private int lines;

  JpegHeaderReader(ByteSource source) {
    this.draft = new ImageHeaderBuilder(source, ImageFormat.JPEG);
    this.restarts = new RestartCount(draft, RST0);
    this.walk =
        new JpegMarkerReader(
            draft,
            2,
            code -> code == TEM || code == SOI || code == EOI || restarts.isRestart(code));
  }

  ImageHeader read() {
    Optional<JpegMarkerReader.Segment> segment = walk.next();
    while (segment.isPresent() && segment.get().code() != EOI) {
      take(segment.get());
      segment = walk.next();
    }
    if (segment.isPresent()) {
      draft.endsAt(walk.position());
    }
    conclude();
    return draft.finish();
  }

  private void take(JpegMarkerReader.Segment segment) {
    ByteSource body = segment.body();
    int code = segment.code();
    switch (code) {
      case APP0 -> jfif(body);
      case APP1 -> exif(body);
      case APP14 -> adobe(body);
      case COM -> NistComment.keep(draft, body.latin1(0, body.length()));
      case DQT -> defineQuantization(segment);
      case DHT -> defineHuffman(segment);
      case DRI -> restartInterval(body);
      case DNL -> numberOfLines(segment);
      case SOS -> scan(segment);
      case SOI -> draft.damage(segment.position(), "a second start marker");
      default -> {
        if (isFrame(code)) {
          frame(segment);
        } else if (restarts.isRestart(code)) {
          draft.damage(segment.position(), "a restart marker outside a scan");
        }
      }
    }
  }

  private static boolean isFrame(int code) {
    return code >= 0xC0 && code <= 0xCF && code != DHT && code != JPG && code != DAC
        || code == SOF55;
  }

  private void frame(JpegMarkerReader.Segment segment) {
    ByteSource body = segment.body();
    int components = body.has(0, 6) ? body.byteAt(5) : 0;
    if (components == 0 || body.length() < 6 + 3 * components) {
      draft.damage(segment.position(), "the frame header (SOF) is too short");
      return;
    }
    if (process.isPresent()) {
      draft.damage(segment.position(), "a second frame header (SOF)");
      return;
    }
    JpegProcess stated = JpegProcess.of(segment.code());
    process = Optional.of(stated);
    draft.fact("coding process", stated.label());
    if (stated.isLossless()) {
      draft.format = ImageFormat.JPEG_LOSSLESS;
    }
    int precision = body.byteAt(0);
    draft.fact("precision", Quantity.of(precision, "bit"));
    if (precision < 2 || precision > MAX_PRECISION) {
      draft.damage(segment.position(), "a sample precision of " + Quantity.of(precision, "bit"));
    }
    // A height of 0 is allowed: DNL states it after the first scan (T.81 B.2.5).
    if (body.uint16At(1) == 0) {
      draft.width = body.uint16At(3);
    } else {
      draft.size(body.uint16At(3), body.uint16At(1), segment.position());
    }
    draft.components = components;
    draft.bitsPerPixel = components * precision;
    components(body, components);
  }

  private void components(ByteSource body, int count) {
    StringJoiner sampling = new StringJoiner(" ");
    for (int i = 0; i < count; i++) {
      int factors = body.byteAt(6 + 3 * i + 1);
      sampling.add((factors >> 4) + "x" + (factors & 0xF));
      wantedQuantization.set(body.byteAt(6 + 3 * i + 2));
    }
    draft.fact("sampling factors", sampling);
  }

  private void scan(JpegMarkerReader.Segment segment) {
    ByteSource body = segment.body();
    scans++;
    int components = body.isEmpty() ? 0 : body.byteAt(0);
    if (process.isEmpty()) {
      draft.damage(segment.position(), "a scan (SOS) before any frame header (SOF)");
    } else if (components == 0 || body.length() < 4 + 2 * components) {
      draft.damage(segment.position(), "the scan header (SOS) is too short");
    } else {
      checkTables(segment.position());
      if (process.get().isLossless() && scans == 1) {
        losslessScan(body, 1 + 2 * components);
      }
    }
    restarts.scanBegins();
    int before = restarts.total();
    walk.skipEntropyCoded(restarts);
    if (restarts.total() > before && restartInterval == 0) {
      draft.damage(segment.position(), "restart markers in a scan without a restart interval");
    }
  }

  private void checkTables(int position) {
    JpegProcess coding = process.orElseThrow();
    if (coding.usesHuffman() && huffmanTables.isEmpty()) {
      draft.damage(position, "a scan before any Huffman table (DHT)");
    }
    if (coding.usesQuantization() && wantedQuantization.stream().anyMatch(this::isUndefined)) {
      draft.damage(position, "a scan without the quantization table (DQT) it uses");
    }
  }

  private boolean isUndefined(int quantizationTable) {
    return !quantizationTables.get(quantizationTable);
  }

  private void losslessScan(ByteSource body, int position) {
    int pointTransform = body.byteAt(position + 2) & 0xF;
    if (process.orElseThrow() == JpegProcess.JPEG_LS) {
      draft.fact("near-lossless tolerance", body.byteAt(position));
      draft.lossless = Optional.of(body.byteAt(position) == 0);
      return;
    }
    draft.fact("predictor", body.byteAt(position));
    draft.fact("point transform", pointTransform);
    draft.lossless = Optional.of(pointTransform == 0);
  }

  private void defineQuantization(JpegMarkerReader.Segment segment) {
    ByteSource body = segment.body();
    int at = 0;
    while (at < body.length()) {
      int table = body.byteAt(at) & 0xF;
      int bytes = body.byteAt(at) >> 4 == 0 ? 64 : 128;
      if (!body.has(at + 1, bytes)) {
        draft.damage(segment.position(), "a quantization table (DQT) is cut off");
        return;
      }
      quantizationTables.set(table);
      at += 1 + bytes;
    }
  }

  private void defineHuffman(JpegMarkerReader.Segment segment) {
    ByteSource body = segment.body();
    int at = 0;
    while (at < body.length()) {
      int values = 0;
      for (int i = 1; i <= 16 && body.has(at, i + 1); i++) {
        values += body.byteAt(at + i);
      }
      if (!body.has(at, 17 + values)) {
        draft.damage(segment.position(), "a Huffman table (DHT) is cut off");
        return;
      }
      huffmanTables.set(body.byteAt(at));
      if (body.byteAt(at) >> 4 == 1 && tableOfSecondClass.isEmpty()) {
        tableOfSecondClass = OptionalInt.of(body.origin() + at - draft.source.origin());
      }
      at += 17 + values;
    }
  }

  private void restartInterval(ByteSource body) {
    restartInterval = body.has(0, 2) ? body.uint16At(0) : 0;
    draft.fact("restart interval", restartInterval + " MCU");
  }

  private void numberOfLines(JpegMarkerReader.Segment segment) {
    lines = segment.body().has(0, 2) ? segment.body().uint16At(0) : 0;
    if (draft.height == 0 && lines > 0) {
      draft.size(draft.width, lines, segment.position());
    }
  }

  private void jfif(ByteSource body) {
    if (!body.startsWith(0, 'J', 'F', 'I', 'F', 0) || !body.has(0, 12)) {
      return;
    }
    draft.fact(
        "JFIF version", String.format(Locale.ROOT, "%d.%02d", body.byteAt(5), body.byteAt(6)));
    int horizontal = body.uint16At(8);
    int vertical = body.uint16At(10);
    switch (body.byteAt(7)) {
      case 0 -> draft.fact("JFIF density unit", "none, aspect ratio only");
      case 1 -> {
        draft.fact("JFIF density unit", "inch");
        draft.density(new PixelDensity(horizontal, vertical));
      }
      case 2 -> {
        draft.fact("JFIF density unit", "centimetre");
        draft.density(PixelDensity.ofPpcm(horizontal, vertical));
      }
      default -> draft.fact("JFIF density unit", "unknown");
    }
  }

  private void exif(ByteSource body) {
    if (body.startsWith(0, 'E', 'x', 'i', 'f', 0, 0)) {
      draft.fact("Exif", "present");
      TiffDirectory.first(body.from(6)).flatMap(TiffDirectory::density).ifPresent(draft::density);
    }
  }

  private void adobe(ByteSource body) {
    if (body.length() >= 12 && body.latin1(0, 5).equals("Adobe")) {
      String transform =
          switch (body.byteAt(11)) {
            case 0 -> "none";
            case 1 -> "YCbCr";
            case 2 -> "YCCK";
            default -> "unknown";
          };
      draft.fact("color transform (APP14)", transform);
    }
  }

  private void conclude() {
    if (process.isEmpty()) {
      draft.damage(0, "holds no frame header (SOF)");
    } else if (draft.height == 0 || draft.width == 0) {
      draft.damage(0, "states no possible size");
    }
    if (scans == 0) {
      draft.damage(0, "holds no scan (SOS)");
    }
    // Lossless coding knows tables of class 0 alone (T.81 B.2.4.2); an old encoder writes 1.
    if (process.filter(JpegProcess::isLossless).isPresent() && tableOfSecondClass.isPresent()) {
      draft.add(
          ImageDefect.Kind.ODDITY,
          tableOfSecondClass.getAsInt(),
          "a Huffman table (DHT) of class 1 in a lossless JPEG");
    }
    if (draft.lossless.isEmpty() && process.filter(p -> !p.isLossless()).isPresent()) {
      draft.lossless = Optional.of(false);
    }
    draft.fact("scans", scans);
    draft.fact("quantization tables", quantizationTables.cardinality());
    draft.fact("Huffman tables", huffmanTables.cardinality());
    if (restartInterval > 0) {
      draft.fact("restart markers", restarts.total());
    }
  }
}
