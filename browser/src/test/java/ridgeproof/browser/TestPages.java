package ridgeproof.browser;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import ridgeproof.corpus.scenario.DemonstrationSet;
import ridgeproof.corpus.scenario.People;
import ridgeproof.corpus.scenario.TransactionComposer;
import ridgeproof.examination.ExaminationOptions;
import ridgeproof.examination.ExaminedImage;
import ridgeproof.examination.Examiner;
import ridgeproof.examination.FindingsReport;
import ridgeproof.examination.ImageExtraction;
import ridgeproof.imagery.DecodingLimits;
import ridgeproof.imagery.GrayImage;
import ridgeproof.report.FileFacts;
import ridgeproof.report.HtmlReport;
import ridgeproof.report.RenderOptions;
import ridgeproof.report.Ticket;
import ridgeproof.report.ToolFacts;
import ridgeproof.spec.SpecTables;
import ridgeproof.transaction.ByteSource;
import ridgeproof.transaction.ReadingLimits;

/** The pages under test, each written to a file once it is asked for. */
final class TestPages {

  private static final Path FOLDER = Path.of("target/pages");
  private static final RenderOptions MASKED = RenderOptions.standard();
  private static final RenderOptions SHOWN = new RenderOptions(true, false, 80);
  private static final ToolFacts TOOL = new ToolFacts("0.1", "17", "harbour");

  private final SpecTables tables = SpecTables.open();
  private final Examiner examiner = new Examiner(tables, ReadingLimits.standard());
  private final TransactionComposer composer = new TransactionComposer(new People());
  private final Map<String, Examined> examined = new HashMap<>();
  private final Map<String, Path> written = new HashMap<>();

  /** A file and what there is to say of it. */
  private record Examined(FileFacts file, FindingsReport report) {}

  /** What a page is made of. */
  private enum Form {
    REPORT {
      @Override
      String of(TestPages pages, Examined story) {
        return HtmlReport.render(story.file(), story.report(), MASKED);
      }
    },
    REPORT_SHOWING_ALL {
      @Override
      String of(TestPages pages, Examined story) {
        return HtmlReport.render(story.file(), story.report(), SHOWN, pages.pixels());
      }
    },
    TICKET {
      @Override
      String of(TestPages pages, Examined story) {
        return Ticket.of(story.file(), story.report(), TOOL, Optional.empty()).asHtml();
      }
    };

    abstract String of(TestPages pages, Examined story);
  }

  /** Every page by its name: the story, and where it is not the report itself, the form. */
  static List<String> names() {
    return List.of(
        "clean-flats",
        "clean-flats showing-all",
        "missing-little-finger",
        "cut-transfer showing-all",
        "length-off-by-one",
        "unreadable",
        "hostile showing-all",
        "missing-little-finger ticket",
        "hostile ticket");
  }

  Path page(String name) {
    return written.computeIfAbsent(name, this::write);
  }

  private Path write(String name) {
    String[] parts = name.split(" ");
    Form form =
        switch (parts.length == 1 ? "" : parts[1]) {
          case "showing-all" -> Form.REPORT_SHOWING_ALL;
          case "ticket" -> Form.TICKET;
          default -> Form.REPORT;
        };
    String html = form.of(this, examined.computeIfAbsent(parts[0], this::examine));
    try {
      Files.createDirectories(FOLDER);
      return Files.writeString(FOLDER.resolve(name.replace(' ', '-') + ".html"), html)
          .toAbsolutePath();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private Examined examine(String story) {
    byte[] bytes =
        switch (story) {
          case "hostile" -> HostileCard.bytes();
          case "unreadable" -> "pilot's diary".getBytes(StandardCharsets.US_ASCII);
          default -> composer.compose(DemonstrationSet.scenario(story)).bytes();
        };
    String name = story.equals("hostile") ? HostileCard.FILE_NAME : story + ".an2";
    return new Examined(
        new FileFacts(name, bytes.length, "0123456789abcdef".repeat(4)),
        examiner.examine(ByteSource.of(bytes), ExaminationOptions.standard()));
  }

  private Function<ExaminedImage, Optional<GrayImage>> pixels() {
    ImageExtraction extraction = new ImageExtraction(tables, DecodingLimits.standard());
    return image -> extraction.decode(image).pixels();
  }
}
