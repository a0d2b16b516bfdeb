package ridgeproof.desk.web;

import io.javalin.http.Context;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.IntStream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import ridgeproof.desk.view.Markup;
import ridgeproof.desk.view.Texts;
import ridgeproof.desk.view.TicketPage;
import ridgeproof.desk.work.Examined;
import ridgeproof.report.RenderOptions;
import ridgeproof.report.TextSanitizer;
import ridgeproof.report.text.LayoutListing;
import ridgeproof.report.ticket.AttachedCopy;
import ridgeproof.report.ticket.Ticket;
import ridgeproof.report.ticket.TicketRequest;
import ridgeproof.transaction.Transaction;
import ridgeproof.transaction.reader.ParseLimits;
import ridgeproof.transaction.reader.TransactionReader;

/** A ticket for the vendor or the help desk: shown first, then copied or saved. */
final class TicketPages {

  private static final int ABSENT = 4;
  private static final int MAX_NOTE = 4_000;
  private static final long ZIP_EPOCH = 0;
  private static final RenderOptions SHOWN = new RenderOptions(true, false, 80);

  private final DeskSettings settings;
  private final FilePages files;
  private final Frames frames;
  private final OpenImages open;
  private final SafeCopyCache copies;

  TicketPages(DeskSettings settings, FilePages files, Frames frames, OpenImages open) {
    this.settings = settings;
    this.files = files;
    this.frames = frames;
    this.open = open;
    this.copies = new SafeCopyCache(settings);
  }

  void page(Context request) throws InterruptedException {
    Examined examined = files.examined(request);
    AttachedCopy copy = copy(request, examined);
    Texts texts = frames.texts();
    TicketPage page =
        new TicketPage(
            request.pathParam("id"),
            text(examined, TicketRequest.standard().withCopy(copy), ""),
            copy.copy().bytes().length(),
            layout(copy, examined),
            IntStream.rangeClosed(1, ABSENT)
                .mapToObj(i -> texts.of("ticket.absent." + i))
                .toList());
    String title = texts.of("ticket.title", TextSanitizer.of(examined.file().name()));
    request.html(Markup.ticket(frames.of("files", title), page));
  }

  /** The text as it would leave, for the choices on the page. */
  void preview(Context request) throws InterruptedException {
    Examined examined = files.examined(request);
    String text = text(examined, wanted(request, examined), typed(request, "note"));
    request.html(Markup.ticketText(frames.titled("files", "desk.title"), text));
  }

  void download(Context request) throws InterruptedException {
    Examined examined = files.examined(request);
    TicketRequest wanted = wanted(request, examined);
    byte[] ticket = text(examined, wanted, typed(request, "note")).getBytes(StandardCharsets.UTF_8);
    if (wanted.copy().isEmpty()) {
      Headers.download(request, "text/plain; charset=utf-8", "ridgeproof-ticket.txt");
      request.result(ticket);
    } else {
      Headers.download(request, "application/zip", "ridgeproof-ticket.zip");
      request.result(zip(ticket, wanted.copy().get().copy().bytes().toArray()));
    }
  }

  private static byte[] zip(byte[] ticket, byte[] copy) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
      for (String name : List.of("ticket.txt", SafeCopyCache.NAME)) {
        ZipEntry entry = new ZipEntry(name);
        entry.setTime(ZIP_EPOCH);
        zip.putNextEntry(entry);
        zip.write(name.equals(SafeCopyCache.NAME) ? copy : ticket);
        zip.closeEntry();
      }
    } catch (IOException e) {
      throw new UncheckedIOException("memory does not fail to be written", e);
    }
    return bytes.toByteArray();
  }

  private TicketRequest wanted(Context request, Examined examined) throws InterruptedException {
    TicketRequest wanted = TicketRequest.standard();
    if (request.formParam("copy") != null) {
      wanted = wanted.withCopy(copy(request, examined));
    }
    String message = typed(request, "message");
    if (!message.isEmpty()) {
      wanted = wanted.withMessage(message);
    }
    return request.formParam("control") == null ? wanted : wanted.withControlNumber();
  }

  private AttachedCopy copy(Context request, Examined examined) throws InterruptedException {
    String id = request.pathParam("id");
    return open.use(() -> copies.of(id, examined));
  }

  private static String typed(Context request, String field) {
    String value = request.formParam(field);
    String text = value == null ? "" : value.strip().replace("\r\n", "\n");
    return text.length() <= MAX_NOTE ? text : text.substring(0, MAX_NOTE);
  }

  private String text(Examined examined, TicketRequest wanted, String note) {
    String ticket = Ticket.of(examined.file(), examined.report(), settings.tool(), wanted).asText();
    if (note.isEmpty()) {
      return ticket;
    }
    StringBuilder text = new StringBuilder(ticket);
    String title = frames.texts().of("ticket.note.title");
    text.append('\n').append(title).append('\n').append("-".repeat(title.length())).append('\n');
    note.lines().forEach(line -> text.append("  ").append(TextSanitizer.of(line)).append('\n'));
    return text.toString();
  }

  /** Every value of the copy is made up, and so all of them can be shown. */
  private static String layout(AttachedCopy copy, Examined examined) {
    Transaction transaction =
        new TransactionReader(examined.report().tables(), ParseLimits.standard())
            .read(copy.copy().bytes());
    return LayoutListing.render(copy.file(), transaction, examined.report().tables(), SHOWN);
  }

  void forget() {
    copies.forget();
  }
}
