package ridgeproof.desk.web;

import io.javalin.Javalin;
import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;
import org.eclipse.jetty.server.HttpConfiguration;
import org.eclipse.jetty.server.HttpConnectionFactory;
import org.eclipse.jetty.server.Server;
import org.eclipse.jetty.server.ServerConnector;
import org.eclipse.jetty.util.thread.QueuedThreadPool;
import ridgeproof.desk.view.DeskFrame;
import ridgeproof.desk.view.Markup;
import ridgeproof.desk.view.Row;
import ridgeproof.desk.view.Rows;
import ridgeproof.desk.view.ShiftCheck;
import ridgeproof.desk.view.Stations;
import ridgeproof.desk.view.Texts;
import ridgeproof.desk.work.DeskFile;
import ridgeproof.desk.work.ExaminationQueue;
import ridgeproof.desk.work.Examined;
import ridgeproof.desk.work.MemoryBudget;
import ridgeproof.desk.work.StationShots;
import ridgeproof.desk.work.Worklist;

/** Serves the desk on the loopback address. */
public final class DeskServer implements AutoCloseable {

  private static final String LOOPBACK = "127.0.0.1";
  private static final int MAX_THREADS = 64;
  private static final int MIN_THREADS = 4;
  private static final int IDLE_MILLIS = 30_000;
  private static final int MAX_HEADER_BYTES = 8 * 1024;
  private static final long MIN_BYTES_A_SECOND = 1_000;

  private final Access access = new Access();
  private final Texts texts = Texts.english();
  private final Stations stations = new Stations();
  private final Rows rows = new Rows(texts, stations);
  private final Worklist worklist;
  private final ExaminationQueue queue;
  private final Frames frames;
  private final DeskSettings settings;
  private final FilePages files;
  private final ComparePages compared;
  private final TicketPages tickets;
  private final StationShots shots;
  private final Watchman watchman;
  private final RowStream stream;
  private final Javalin server;
  private final ScheduledExecutorService housekeeping =
      Executors.newSingleThreadScheduledExecutor(
          work -> {
            Thread thread = new Thread(work, "desk-housekeeping");
            thread.setDaemon(true);
            return thread;
          });
  private final Runnable stopped;

  /**
   * Opens the desk.
   *
   * @param stopped called once a person has stopped it on the page
   */
  public DeskServer(DeskSettings settings, Runnable stopped) {
    this.settings = settings;
    this.stopped = stopped;
    this.worklist = new Worklist(settings.clock(), MemoryBudget.ofThisMachine());
    this.queue = new ExaminationQueue(worklist, settings.examiner(), settings.options());
    this.frames = new Frames(texts, access.base(), settings.gate().isPresent(), settings.keep());
    OpenImages open = new OpenImages();
    this.files = new FilePages(worklist, settings.extraction(), frames, open);
    this.compared = new ComparePages(worklist, files, settings.extraction(), frames, open);
    this.tickets = new TicketPages(settings, files, frames, open);
    this.shots = new StationShots(settings.tables());
    this.server = Javalin.create(config -> configure(config, settings.port()));
    this.stream = new RowStream(worklist, file -> Markup.row(frame(), rows.of(file)));
    GateLog log = new GateLog();
    routes(log);
    server.start();
    this.watchman = new Watchman(settings.watch(), settings.gate(), log, worklist, queue);
    long seconds = Math.max(1, Math.min(10, settings.keep().toSeconds() / 4));
    housekeeping.scheduleWithFixedDelay(this::dropUnused, seconds, seconds, TimeUnit.SECONDS);
  }

  private void dropUnused() {
    worklist.dropUnusedFor(settings.keep());
    if (worklist.files().isEmpty()) {
      forgetWhatWasMade();
    }
  }

  private void forgetWhatWasMade() {
    stations.forget();
    compared.forget();
    tickets.forget();
  }

  private static void configure(JavalinConfig config, int port) {
    QueuedThreadPool threads = new QueuedThreadPool(MAX_THREADS, MIN_THREADS);
    threads.setDaemon(true);
    threads.setName("desk-web");
    config.showJavalinBanner = false;
    config.startupWatcherEnabled = false;
    config.http.disableCompression();
    config.http.generateEtags = false;
    config.jetty.threadPool = threads;
    config.jetty.addConnector((jetty, http) -> connector(jetty, http, port));
  }

  private static ServerConnector connector(Server jetty, HttpConfiguration http, int port) {
    http.setSendServerVersion(false);
    http.setSendDateHeader(false);
    http.setRequestHeaderSize(MAX_HEADER_BYTES);
    http.setMinRequestDataRate(MIN_BYTES_A_SECOND);
    ServerConnector connector = new ServerConnector(jetty, new HttpConnectionFactory(http));
    connector.setHost(LOOPBACK);
    connector.setPort(port);
    connector.setIdleTimeout(IDLE_MILLIS);
    return connector;
  }

  private void routes(GateLog log) {
    String base = access.base();
    server.before(
        request -> {
          Headers.page(request);
          access.check(request, server.port());
        });
    server.exception(Refused.class, this::refused);
    server.exception(Exception.class, (failure, request) -> failed(request));
    server.error(404, request -> refused(Refused.notFound(), request));
    server.get(base + "/enter", this::enter);
    server.get(base + "/alive", request -> request.status(204));
    server.get(base + "/assets/{name}", new Assets()::serve);
    server.get(base + "/", this::desk);
    server.sse(base + "/events", stream::serve);
    server.post(base + "/files", new Upload(worklist, queue, settings.maxFileBytes())::take);
    server.post(base + "/forget", this::forget);
    server.post(base + "/stop", this::stop);
    server.get(base + "/help", this::help);
    server.get(base + "/shift", this::shift);
    fileRoutes(base);
    RejectedPages rejected = new RejectedPages(worklist, files, frames, settings.tables());
    server.get(base + "/rejected", rejected::page);
    server.post(base + "/rejected", rejected::explain);
    settings.gate().ifPresent(gate -> gateRoutes(base, new GatePages(gate.held(), log, frames)));
  }

  private void fileRoutes(String base) {
    server.get(base + "/files/{id}", files::page);
    server.delete(base + "/files/{id}", files::drop);
    server.get(base + "/files/{id}/report", files::report);
    server.get(base + "/files/{id}/images/{record}", files::image);
    server.get(base + "/suggestions", compared::suggestions);
    server.get(base + "/compare", compared::page);
    server.get(base + "/compare/report", compared::report);
    server.get(base + "/files/{id}/ticket", tickets::page);
    server.post(base + "/files/{id}/ticket/preview", tickets::preview);
    server.post(base + "/files/{id}/ticket", tickets::download);
  }

  private void gateRoutes(String base, GatePages pages) {
    server.get(base + "/gate", pages::page);
    server.get(base + "/gate/list", pages::list);
    server.get(base + "/gate/report", pages::report);
    server.post(base + "/gate/release", pages::release);
  }

  private void help(Context request) {
    request.html(Markup.help(frames.titled("help", "help.title")));
  }

  private void shift(Context request) {
    List<ShiftCheck.Shot> latest =
        worklist.files().stream().flatMap(file -> shot(file).stream()).toList();
    request.html(
        Markup.shift(
            frames.titled("shift", "shift.title"),
            new ShiftCheck(texts).of(settings.ledger().map(Supplier::get), latest)));
  }

  private Optional<ShiftCheck.Shot> shot(DeskFile file) {
    return shots
        .of(file)
        .map(
            entry -> {
              Examined examined = file.examined().orElseThrow();
              return new ShiftCheck.Shot(
                  stations.name(examined.report()).orElse(texts.of("shift.nameless")),
                  examined,
                  entry);
            });
  }

  private DeskFrame frame() {
    return frames.titled("files", "desk.title");
  }

  /** The one address that lets a browser in, once. */
  public String address() {
    return "http://" + LOOPBACK + ":" + server.port() + access.entrance();
  }

  private void enter(Context request) {
    access.enter(request);
    request.html(Markup.enter(frame()));
  }

  private void desk(Context request) {
    // The number first: what changes in between is sent again, and never missed.
    long since = worklist.changes();
    long most = Math.min(settings.maxFileBytes(), worklist.budget().most());
    List<Row> shown = worklist.files().stream().map(rows::of).toList();
    request.html(Markup.desk(frame(), reversed(shown), since, settings.watch().isPresent(), most));
  }

  private static List<Row> reversed(List<Row> rows) {
    List<Row> newest = new ArrayList<>(rows);
    Collections.reverse(newest);
    return newest;
  }

  private void forget(Context request) {
    worklist.dropAll();
    forgetWhatWasMade();
    request.status(204);
  }

  private void stop(Context request) {
    request.status(204);
    Thread ending = new Thread(stopped, "desk-stop");
    ending.start();
  }

  private void refused(Refused refusal, Context request) {
    request.status(refusal.status());
    request.html(Markup.message(frame(), texts.of(refusal.key())));
    Upload.cutOff(request);
  }

  /** Neither what failed nor any value of it is shown. */
  private void failed(Context request) {
    request.status(500).html(Markup.message(frame(), texts.of("refused.internal")));
  }

  /** Forgets all files and ends. Pages that are open say so. */
  @Override
  public void close() {
    worklist.close();
    queue.close();
    stream.awaitEnd();
    watchman.close();
    housekeeping.shutdownNow();
    forgetWhatWasMade();
    server.stop();
  }
}
