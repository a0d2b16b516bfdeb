package ridgeproof.report.browser;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import ridgeproof.corpus.composition.SubjectCache;
import ridgeproof.corpus.composition.TransactionComposer;
import ridgeproof.corpus.fault.HostileCard;
import ridgeproof.corpus.scenario.DemonstrationSet;
import ridgeproof.examination.Examiner;
import ridgeproof.examination.FindingsReport;
import ridgeproof.examination.comparison.IgnoredFields;
import ridgeproof.examination.comparison.TransactionComparison;
import ridgeproof.examination.facts.ExaminationOptions;
import ridgeproof.examination.facts.ExaminedImage;
import ridgeproof.examination.facts.ImageExtraction;
import ridgeproof.imagery.DecodingLimits;
import ridgeproof.imagery.GrayImage;
import ridgeproof.report.FileFacts;
import ridgeproof.report.NotExamined;
import ridgeproof.report.RenderOptions;
import ridgeproof.report.ToolFacts;
import ridgeproof.report.comparison.ComparisonHtml;
import ridgeproof.report.page.HtmlReport;
import ridgeproof.report.summary.FolderSummary;
import ridgeproof.report.ticket.Ticket;
import ridgeproof.report.ticket.TicketRequest;
import ridgeproof.spec.SpecTables;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.transaction.reader.ParseLimits;
import ridgeproof.transaction.record.ByteSource;

/** The pages under test, each written to a file once it is asked for. */
final class TestPages {

  private static final Path FOLDER = Path.of("target/pages");
  private static final RenderOptions MASKED = RenderOptions.standard();
  private static final RenderOptions SHOWN = new RenderOptions(true, false, 80);
  private static final ToolFacts TOOL = new ToolFacts("0.1", "17", "harbour");

  /** Why the prints were taken, which the stories state: it stands for an agency's own field. */
  private static final FieldNumber OPERATOR = new FieldNumber(2, 37);

  private final SpecTables tables = SpecTables.open();
  private final Examiner examiner = new Examiner(tables, ParseLimits.standard());
  private final TransactionComposer composer = new TransactionComposer(new SubjectCache());
  private final ImageExtraction extraction = new ImageExtraction(tables, DecodingLimits.standard());
  private final Map<String, Examined> examined = new HashMap<>();
  private final Map<String, Path> written = new HashMap<>();

  /** A file and what there is to say of it. */
  private record Examined(String story, FileFacts file, FindingsReport report) {}

  /** What is made of a file, and of others beside it. */
  private enum Form {
    REPORT {
      @Override
      String of(TestPages pages, Examined story, List<Examined> others) {
        return HtmlReport.render(story.file(), story.report(), MASKED);
      }
    },
    SHOWING_ALL {
      @Override
      String of(TestPages pages, Examined story, List<Examined> others) {
        return HtmlReport.render(story.file(), story.report(), SHOWN, pages.pixels());
      }
    },
    TICKET {
      @Override
      String of(TestPages pages, Examined story, List<Examined> others) {
        return Ticket.of(
                story.file(),
                story.report(),
                TOOL,
                TicketRequest.standard()
                    .withMessage("L0008 quality too low")
                    .withCommandLine("ridgeproof ticket FILE"))
            .asHtml();
      }
    },
    COMPARED {
      @Override
      String of(TestPages pages, Examined story, List<Examined> others) {
        Examined other = others.get(0);
        return ComparisonHtml.render(
            story.file(), other.file(), pages.compare(story, other), MASKED);
      }
    },
    COMPARED_SHOWING_ALL {
      @Override
      String of(TestPages pages, Examined story, List<Examined> others) {
        Examined other = others.get(0);
        return ComparisonHtml.render(
            story.file(), other.file(), pages.compare(story, other), SHOWN, pages.pixels());
      }
    },
    SUMMARY {
      @Override
      String of(TestPages pages, Examined story, List<Examined> others) {
        return pages.summary(story, others, MASKED);
      }
    },
    SUMMARY_SHOWING_ALL {
      @Override
      String of(TestPages pages, Examined story, List<Examined> others) {
        return pages.summary(story, others, SHOWN);
      }
    };

    abstract String of(TestPages pages, Examined story, List<Examined> others);

    static Form named(String name) {
      return valueOf(name.replace('-', '_').toUpperCase(Locale.ROOT));
    }
  }

  /** Every page by its name: a story, what is made of it, and the stories beside it. */
  static List<String> names() {
    return List.of(
        "clean-flats report",
        "clean-flats showing-all",
        "dry-and-wet showing-all",
        "thumbs-exchanged report",
        "missing-little-finger report",
        "packed-too-tight report",
        "cut-transfer showing-all",
        "length-off-by-one report",
        "unreadable report",
        "hostile showing-all",
        "missing-little-finger ticket",
        "hostile ticket",
        "clean-flats compared packed-too-tight",
        "missing-little-finger compared clean-flats",
        "date-turned-round compared-showing-all clean-flats",
        "unreadable compared clean-flats",
        "hostile compared-showing-all clean-flats",
        "clean-flats summary missing-little-finger packed-too-tight length-off-by-one unreadable",
        "hostile summary-showing-all clean-flats");
  }

  /** The pages that hold values that try to act. */
  static List<String> hostileNames() {
    return names().stream().filter(name -> name.startsWith("hostile ")).toList();
  }

  Path page(String name) {
    return written.computeIfAbsent(name, this::write);
  }

  private Path write(String name) {
    List<String> parts = List.of(name.split(" "));
    List<Examined> others = parts.stream().skip(2).map(this::examined).toList();
    String html = Form.named(parts.get(1)).of(this, examined(parts.get(0)), others);
    try {
      Files.createDirectories(FOLDER);
      return Files.writeString(FOLDER.resolve(fileName(name)), html).toAbsolutePath();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String fileName(String page) {
    return page.replace(' ', '-') + ".html";
  }

  private Examined examined(String story) {
    return examined.computeIfAbsent(story, this::examine);
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
        story,
        new FileFacts(name, bytes.length, "0123456789abcdef".repeat(4)),
        examiner.examine(
            ByteSource.of(bytes),
            ExaminationOptions.standard().withToday(LocalDate.of(2026, 3, 2))));
  }

  private TransactionComparison compare(Examined first, Examined second) {
    return TransactionComparison.of(
        first.report(), second.report(), extraction, IgnoredFields.parse(IgnoredFields.STANDARD));
  }

  /** With a file that could not be opened, whose name is that of the first. */
  private String summary(Examined first, List<Examined> others, RenderOptions options) {
    FolderSummary summary = new FolderSummary(tables, options, List.of(OPERATOR));
    Stream.concat(Stream.of(first), others.stream())
        .forEach(
            each -> summary.add(each.file(), each.report(), fileName(each.story() + " report")));
    summary.add(new NotExamined(first.file().name(), "permission denied"));
    return summary.page();
  }

  private Function<ExaminedImage, Optional<GrayImage>> pixels() {
    return image -> extraction.decode(image).pixels();
  }
}
