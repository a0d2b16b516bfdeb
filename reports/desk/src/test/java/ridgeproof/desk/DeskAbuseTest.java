package ridgeproof.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import ridgeproof.desk.Visitor.Answer;

/** Whoever is not the person at this browser, and whatever such a one may send. */
@Tag("slow")
class DeskAbuseTest {

  private static final byte[] NOTE = "tide table".getBytes(StandardCharsets.US_ASCII);

  private DeskRun desk;
  private Visitor visitor;

  @BeforeEach
  void open() {
    desk = DeskRun.open();
    visitor = new Visitor(desk);
  }

  @AfterEach
  void close() {
    desk.close();
  }

  private static String id(int number) {
    return String.format(Locale.ROOT, "%016x", number);
  }

  private static void assertTellsNothing(int status, Answer answer) {
    assertEquals(status, answer.status(), answer.head());
    assertFalse(answer.body().contains("id=\"rows\""), answer.body());
    assertTrue(
        answer.head().contains("Content-Security-Policy: default-src 'none'"), answer.head());
  }

  @Test
  void aBrowserWithoutTheTokenSeesNothing() throws IOException {
    assertTellsNothing(403, visitor.get(visitor.base() + "/"));
    assertTellsNothing(403, visitor.get(visitor.base() + "/events"));
    assertTellsNothing(403, visitor.get(visitor.base() + "/assets/desk.js"));
    assertTellsNothing(403, visitor.get(visitor.base() + "/enter?token=guess"));
    assertTellsNothing(403, visitor.get(visitor.base() + "/enter"));
    assertTellsNothing(403, visitor.upload(id(1), "card.an2", NOTE));
    assertTellsNothing(404, visitor.get("/"));
    assertTellsNothing(404, visitor.get("/assets/desk.js"));
  }

  @Test
  void theTokenWorksOnce() throws IOException {
    assertEquals(200, visitor.enter().status());
    String used = desk.address();
    assertTrue(used.endsWith("token=used"), used);
    Visitor other = new Visitor(desk);
    assertEquals(403, other.enter().status());
    assertEquals(200, visitor.get(visitor.base() + "/").status());
  }

  @Test
  void aReplayedTokenLetsNobodyIn() throws IOException {
    Visitor thief = new Visitor(desk); // has seen the address
    assertEquals(200, visitor.enter().status());
    assertEquals(403, thief.enter().status());
    assertTellsNothing(403, thief.get(thief.base() + "/"));
  }

  @Test
  void theCookieGoesToThisDeskAlone() throws IOException {
    String head = visitor.enter().head();
    assertTrue(head.contains("; Path=" + visitor.base() + "/; HttpOnly; SameSite=Strict"), head);
  }

  @ParameterizedTest
  @ValueSource(strings = {"desk.invalid", "127.0.0.1", "localhost", "127.0.0.1:1", "[::1]"})
  void anotherHostIsRefused(String host) throws IOException {
    visitor.enter();
    assertTellsNothing(421, visitor.ask("GET", visitor.base() + "/", host));
  }

  @Test
  void aNameOfTheInternetThatLeadsHereIsRefused() throws IOException {
    visitor.enter();
    String host = "127.0.0.1.desk.invalid:" + visitor.port();
    assertTellsNothing(421, visitor.ask("GET", visitor.base() + "/", host));
    assertTellsNothing(421, visitor.ask("POST", visitor.base() + "/stop", host));
  }

  @Test
  void aPageOfAnotherSiteCanNeitherReadNorSend() throws IOException {
    visitor.enter();
    String base = visitor.base();
    for (String origin : List.of("http://desk.invalid", "null", "http://127.0.0.1:1")) {
      assertTellsNothing(403, visitor.get(base + "/", "Origin: " + origin));
      assertTellsNothing(
          403, visitor.ask("POST", base + "/stop", visitor.own(), "Origin: " + origin));
    }
    assertTellsNothing(403, visitor.ask("POST", base + "/stop", visitor.own()));
    assertTellsNothing(403, visitor.ask("DELETE", base + "/files/" + id(1), visitor.own()));
    for (String site : List.of("cross-site", "same-site")) {
      assertTellsNothing(403, visitor.get(base + "/", "Sec-Fetch-Site: " + site));
    }
    assertEquals(200, visitor.get(base + "/", "Sec-Fetch-Site: none").status());
  }

  @Test
  void nothingIsCachedSniffedOrFramed() throws IOException {
    visitor.enter();
    String head = visitor.get(visitor.base() + "/").head();
    for (String header :
        List.of(
            "Cache-Control: no-store",
            "X-Content-Type-Options: nosniff",
            "X-Frame-Options: DENY",
            "Cross-Origin-Resource-Policy: same-origin",
            "frame-ancestors 'none'")) {
      assertTrue(head.contains(header), head);
    }
    assertFalse(head.contains("unsafe"), head);
    assertFalse(head.contains("Jetty"), head);
  }

  @Test
  void tenGigabytesAreRefusedBeforeTheyCome() throws IOException {
    visitor.enter();
    try (Socket socket = visitor.connect()) {
      visitor.send(
          socket,
          "POST",
          visitor.base() + "/files",
          visitor.own(),
          List.of(
              "Origin: http://" + visitor.own(),
              "X-File-Id: " + id(1),
              "X-File-Name: large.an2",
              "Content-Length: 10000000000"));
      assertEquals(413, visitor.answer(socket).status());
    }
  }

  @Test
  void aStreamWithoutAnEndIsCutOff() throws IOException {
    visitor.enter();
    long used = used();
    byte[] megabyte = new byte[1024 * 1024];
    long sent = 0;
    try (Socket socket = visitor.connect()) {
      visitor.send(
          socket,
          "POST",
          visitor.base() + "/files",
          visitor.own(),
          List.of(
              "Origin: http://" + visitor.own(),
              "X-File-Id: " + id(1),
              "X-File-Name: stream.an2",
              "Transfer-Encoding: chunked"));
      OutputStream out = socket.getOutputStream();
      for (; sent < 10_000; sent++) {
        out.write("100000\r\n".getBytes(StandardCharsets.US_ASCII));
        out.write(megabyte);
        out.write("\r\n".getBytes(StandardCharsets.US_ASCII));
      }
    } catch (IOException e) {
      // This is how a desk ends such a stream.
    }
    assertTrue(sent < 200, sent + " MB were taken of a limit of 64 MB");
    assertTrue(used() - used < 100_000_000, "what was received is dropped");
    assertEquals(200, visitor.get(visitor.base() + "/").status());
  }

  private static long used() {
    System.gc();
    return Runtime.getRuntime().totalMemory() - Runtime.getRuntime().freeMemory();
  }

  @Test
  void aThousandUploadsAreAllTaken() throws Exception {
    visitor.enter();
    for (int i = 0; i < 1_000; i++) {
      assertEquals(204, visitor.upload(id(i + 1), "note-" + i, NOTE).status());
    }
    assertEquals(
        1_000, visitor.get(visitor.base() + "/").body().split("<li id=\"row-", -1).length - 1);
    for (int i = 1_000; i < 2_000; i++) {
      visitor.upload(id(i + 1), "note-" + i, NOTE);
    }
    assertEquals(429, visitor.upload(id(2_001), "one more", NOTE).status());
    assertEquals(204, visitor.post(visitor.base() + "/forget", new byte[0]).status());
    assertEquals(204, visitor.upload(id(2_002), "again", NOTE).status());
  }

  @Test
  void slowUploadsKeepNobodyElseOut() throws Exception {
    visitor.enter();
    List<Socket> slow = new ArrayList<>();
    try {
      for (int i = 0; i < 40; i++) {
        Socket socket = visitor.connect();
        slow.add(socket);
        visitor.send(
            socket,
            "POST",
            visitor.base() + "/files",
            visitor.own(),
            List.of(
                "Origin: http://" + visitor.own(),
                "X-File-Id: " + id(i + 1),
                "X-File-Name: slow.an2",
                "Content-Length: 1000000"));
        socket.getOutputStream().write(1);
      }
      assertEquals(200, visitor.get(visitor.base() + "/").status());
      assertEquals(204, visitor.get(visitor.base() + "/alive").status());
    } finally {
      for (Socket socket : slow) {
        socket.close();
      }
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "..%2F..%2Fetc%2Fpasswd",
        "C%3A%5Ctemp%5Ccard.an2",
        "%3Cscript%3Ealert(1)%3C%2Fscript%3E.an2",
        "%22%3E%3Cimg%20src%3Dx%20onerror%3Dalert(1)%3E",
        "a%0D%0ASet-Cookie%3A%20x%3D1",
        "%E2%80%AEgnp.exe",
        "%ZZ%",
        "%00"
      })
  void namesAreShownAndNeverUsed(String name) throws Exception {
    visitor.enter();
    assertEquals(204, visitor.upload(id(1), name, NOTE).status());
    String page = visitor.get(visitor.base() + "/").body();
    assertFalse(page.contains("<script>alert"), page);
    assertFalse(page.contains("<img src=x"), page);
    assertFalse(page.contains("/etc/"), page);
    assertFalse(page.contains("temp"), page);
    assertFalse(page.contains("\u00e2\u0080\u00ae"), page);
    assertTrue(page.contains("id=\"row-" + id(1)), page);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "/files/..%2f..%2fetc%2fpasswd",
        "/files/../../etc/passwd",
        "/assets/..%2f..%2fDeskServer.class",
        "/assets/%2e%2e/x",
        "/files/0000000000000001/images/..%2f1",
        "/compare?first=../x&second=../y",
        "/gate/report?entry=../../etc/passwd",
        "//etc/passwd"
      })
  void noAddressIsAPath(String path) throws IOException {
    visitor.enter();
    int status = visitor.get(visitor.base() + path).status();
    assertTrue(status == 404 || status == 400, path + " gave " + status);
  }

  @Test
  void filesAreDroppedAfterTheirTime() throws Exception {
    desk.close();
    desk = DeskRun.open(settings -> settings.keep = Duration.ofSeconds(1));
    visitor = new Visitor(desk);
    visitor.enter();
    visitor.upload(id(1), "note", NOTE);
    String page = visitor.get(visitor.base() + "/").body();
    assertTrue(page.contains("row-" + id(1)), page);
    for (int i = 0; i < 300 && page.contains("row-" + id(1)); i++) {
      Thread.sleep(100);
      page = visitor.get(visitor.base() + "/").body();
    }
    assertFalse(page.contains("row-" + id(1)), page);
    assertEquals(404, visitor.get(visitor.base() + "/files/" + id(1)).status());
  }
}
