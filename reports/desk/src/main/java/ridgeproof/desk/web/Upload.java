package ridgeproof.desk.web;

import io.javalin.http.Context;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.util.concurrent.Semaphore;
import java.util.regex.Pattern;
import org.eclipse.jetty.server.Request;
import ridgeproof.desk.work.ExaminationQueue;
import ridgeproof.desk.work.MemoryBudget;
import ridgeproof.desk.work.Worklist;

/** Takes the bytes of one file, into memory alone and no more than there is room for. */
final class Upload {

  private static final Pattern ID = Pattern.compile("[0-9a-f]{16}");
  private static final int MAX_AT_ONCE = 16;
  private static final int MAX_NAME = 200;
  private static final int CHUNK = 64 * 1024;
  private static final String UNREAD = "unread";

  private final Worklist worklist;
  private final ExaminationQueue queue;
  private final long maxBytes;
  private final Semaphore places = new Semaphore(MAX_AT_ONCE);

  /**
   * @param maxBytes of one file
   */
  Upload(Worklist worklist, ExaminationQueue queue, long maxBytes) {
    this.worklist = worklist;
    this.queue = queue;
    this.maxBytes = Math.min(maxBytes, Integer.MAX_VALUE - CHUNK);
  }

  /** Answers with nothing once all bytes are there. */
  void take(Context request) {
    String id = request.header("X-File-Id");
    if (id == null || !ID.matcher(id).matches()) {
      throw refused(request, 400, "refused.request");
    }
    long declared = request.req().getContentLengthLong();
    if (!places.tryAcquire()) {
      throw refused(request, 503, "refused.busy");
    }
    try {
      if (!worklist.begin(id, name(request))) {
        throw refused(request, 429, "refused.list");
      }
      if (declared > maxBytes || declared > worklist.budget().most()) {
        worklist.failed(id, "problem.size");
        throw refused(request, 413, "problem.size");
      }
      receive(request, id);
    } finally {
      places.release();
    }
  }

  private void receive(Context request, String id) {
    MemoryBudget budget = worklist.budget();
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    long taken = 0;
    byte[] chunk = new byte[CHUNK];
    try {
      InputStream in = request.bodyInputStream();
      for (int read = in.read(chunk); read >= 0; read = in.read(chunk)) {
        if (taken + read > maxBytes) {
          throw tooMuch(request, id, "problem.size");
        }
        if (!budget.take(read)) {
          throw tooMuch(request, id, "problem.full");
        }
        taken += read;
        bytes.write(chunk, 0, read);
      }
    } catch (IOException e) {
      budget.giveBack(taken);
      worklist.failed(id, "problem.cut");
      throw refused(request, 400, "problem.cut");
    } catch (Refused e) {
      budget.giveBack(taken);
      throw e;
    } catch (OutOfMemoryError e) {
      budget.giveBack(taken);
      worklist.failed(id, "problem.memory");
      throw refused(request, 507, "problem.memory");
    }
    queue.add(id, bytes.toByteArray());
    request.status(204);
  }

  private Refused tooMuch(Context request, String id, String problem) {
    worklist.failed(id, problem);
    return refused(request, 413, problem);
  }

  private static Refused refused(Context request, int status, String key) {
    request.header("Connection", "close");
    request.attribute(UNREAD, true);
    return new Refused(status, key);
  }

  /**
   * Ends the connection of a request that was refused before all of it was read: else the server
   * would read on for as long as something comes.
   */
  static void cutOff(Context request) {
    if (request.attribute(UNREAD) == null) {
      return;
    }
    try {
      request.res().getOutputStream().write(request.resultInputStream().readAllBytes());
      request.res().flushBuffer();
    } catch (IOException e) {
      // Whoever sends so much need not hear why.
    }
    Request.getBaseRequest(request.req()).getHttpChannel().getEndPoint().close();
  }

  /** The name alone: what stands before it could tell of a person, and is no path here. */
  private static String name(Context request) {
    String sent = request.header("X-File-Name");
    String name;
    try {
      name =
          sent == null ? "" : URLDecoder.decode(sent.replace("+", "%2B"), StandardCharsets.UTF_8);
    } catch (IllegalArgumentException e) {
      name = "";
    }
    name = name.substring(Math.max(name.lastIndexOf('/'), name.lastIndexOf('\\')) + 1);
    return name.length() <= MAX_NAME ? name : name.substring(0, MAX_NAME);
  }
}
