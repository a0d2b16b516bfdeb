package ridgeproof.report.ticket;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import ridgeproof.examination.FindingsReport;
import ridgeproof.examination.facts.Depth;
import ridgeproof.examination.facts.ExaminedImage;
import ridgeproof.imagery.ImageFormat;
import ridgeproof.imagery.ImageHeader;
import ridgeproof.report.PilotCard;
import ridgeproof.report.Reports;
import ridgeproof.report.ticket.Ticket.Line;
import ridgeproof.transaction.record.ByteRange;

/** What a ticket says of the station and of the encoder. */
class TicketFactsTest {

  private static FindingsReport examined(PilotCard card) {
    return Reports.examine(card.bytes(), Depth.STRUCTURE);
  }

  private static Map<String, String> map(String... keysAndValues) {
    Map<String, String> map = new LinkedHashMap<>();
    for (int i = 0; i < keysAndValues.length; i += 2) {
      map.put(keysAndValues[i], keysAndValues[i + 1]);
    }
    return map;
  }

  private static ImageHeader header(
      Optional<Boolean> lossless, Map<String, String> facts, Map<String, String> comments) {
    return new ImageHeader(
        ImageFormat.WSQ,
        32,
        24,
        8,
        1,
        Optional.empty(),
        lossless,
        OptionalDouble.empty(),
        new ByteRange(0, 1),
        comments,
        facts,
        List.of());
  }

  private static ImageHeader commented(Map<String, String> comments) {
    return header(Optional.empty(), Map.of(), comments);
  }

  /** The images of a card, of which the first ones have these headers. */
  private static List<Line> encoder(ImageHeader... headers) {
    FindingsReport report = examined(PilotCard.ascii());
    List<ExaminedImage> images = new ArrayList<>(report.images());
    for (int i = 0; i < headers.length; i++) {
      images.set(
          i, images.get(i).opened(headers[i], Optional.empty(), List.of(), Optional.empty()));
    }
    return new TicketFacts(MadeTicket.with(report, Depth.IMAGES, images)).encoder();
  }

  private static List<Line> encodings(int number) {
    return encoder(
        IntStream.rangeClosed(1, number)
            .mapToObj(i -> header(Optional.empty(), map("rate", "0." + i), Map.of()))
            .toArray(ImageHeader[]::new));
  }

  @Test
  void aFileThatNamesNoStationAsksForItsName() {
    assertEquals(
        List.of(
            new Line.Prose(
                "The file does not name the station. Please add make, model and software"
                    + " version.")),
        new TicketFacts(examined(PilotCard.ascii())).station());
  }

  @Test
  void eachStationIsNamedOnceWithoutItsSerialNumber() {
    PilotCard card =
        PilotCard.ascii()
            .particular(67, "HARBORLIGHT\u001fTENFOLD 3\u001fSN-1\u001eHARBORLIGHT\u001fTWOFOLD")
            .print(904, "HARBORLIGHT\u001fTENFOLD\u001b 3\u001fSN-1");
    assertEquals(
        List.of(
            new Line.Fact("Image capture equipment (2.067)", "HARBORLIGHT | TENFOLD 3 | [masked]"),
            new Line.Fact("Image capture equipment (2.067)", "HARBORLIGHT | TWOFOLD"),
            new Line.Fact(
                "Make, model and serial number (14.904)",
                "HARBORLIGHT | TENFOLD\\x1B 3 | [masked]")),
        new TicketFacts(examined(card)).station());
  }

  @Test
  void aFieldThatTheVersionLeavesToUsersIsMasked() {
    PilotCard card =
        PilotCard.ascii().header(2, "0400").print(904, "HARBORLIGHT\u001fTENFOLD\u001fSN-1");
    assertEquals(
        List.of(new Line.Fact("User-defined fields (14.904)", "3 items [masked]")),
        new TicketFacts(examined(card)).station());
  }

  @Test
  void imagesThatWereNotOpenedHaveNoEncoder() {
    assertEquals(List.of(new Line.Prose("No image was opened.")), encoder());
  }

  @Test
  void anEncodingIsToldOnceWithItsRecords() {
    ImageHeader lossy = header(Optional.of(false), map("rate", "0.75", "tables", "2"), Map.of());
    ImageHeader lossless = header(Optional.of(true), Map.of(), Map.of());
    assertEquals(
        List.of(
            new Line.Fact("Records 3, 5", "WSQ; lossy; rate 0.75; tables 2"),
            new Line.Fact("Record 4", "WSQ; lossless")),
        encoder(lossy, lossless, lossy));
  }

  @Test
  void onlyCommentsThatNameNobodyAreRepeated() {
    assertEquals(
        List.of(
            new Line.Fact("Record 3", "WSQ; comment PPI 500; comment LOSSY 1"),
            new Line.Fact("Record 4", "WSQ; comment PPI 500; 1 comment masked"),
            new Line.Fact("Record 5", "WSQ; 2 comments masked")),
        encoder(
            commented(map("PPI", " 500 ", "LOSSY", "1")),
            commented(map("NAME", "SPECIMEN", "PPI", "500")),
            commented(map("PPI", "SPECIMEN", "NAME", "SPECIMEN"))));
  }

  @Test
  void whatAnEncoderWroteIsEscaped() {
    assertEquals(
        List.of(new Line.Fact("Record 3", "WSQ; rate \\x1B[0m")),
        encoder(header(Optional.empty(), map("rate", "\u001b[0m"), Map.of())));
  }

  @Test
  void eightEncodingsAreToldAndHowManyMoreThereAre() {
    List<Line> eight =
        IntStream.rangeClosed(1, 8)
            .<Line>mapToObj(i -> new Line.Fact("Record " + (i + 2), "WSQ; rate 0." + i))
            .toList();
    assertEquals(eight, encodings(8));
    assertEquals(
        Stream.concat(eight.stream(), Stream.of(new Line.Prose("and 1 more encoding."))).toList(),
        encodings(9));
    assertEquals(new Line.Prose("and 2 more encodings."), encodings(10).get(8));
  }
}
