package ridgeproof.desk;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.Socket;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Speaks to a desk byte by byte, as a browser would not. */
final class Visitor {

  private static final Pattern COOKIE = Pattern.compile("Set-Cookie: ([^;]+);");
  private static final int PATIENCE_MILLIS = 60_000;

  /** An answer: its status line, headers and body. */
  record Answer(int status, String head, String body) {}

  private final String address;
  private final String base;
  private final int port;
  private String cookie = "";

  Visitor(DeskRun desk) {
    this.address = desk.address();
    this.base = URI.create(desk.base()).getPath();
    this.port = URI.create(desk.base()).getPort();
  }

  int port() {
    return port;
  }

  /** What every path of the desk begins with. */
  String base() {
    return base;
  }

  /** Takes the token to the entrance and keeps the cookie. */
  Answer enter() throws IOException {
    URI entrance = URI.create(address);
    Answer answer = get(entrance.getPath() + "?" + entrance.getQuery());
    Matcher found = COOKIE.matcher(answer.head());
    cookie = found.find() ? found.group(1) : "";
    return answer;
  }

  Answer get(String path, String... headers) throws IOException {
    return ask("GET", path, own(), headers);
  }

  Answer post(String path, byte[] body, String... headers) throws IOException {
    List<String> all = new ArrayList<>(List.of(headers));
    all.add("Origin: http://" + own());
    all.add("Content-Length: " + body.length);
    try (Socket socket = connect()) {
      send(socket, "POST", path, own(), all);
      socket.getOutputStream().write(body);
      return answer(socket);
    }
  }

  String own() {
    return "127.0.0.1:" + port;
  }

  /** Asks without a body. */
  Answer ask(String method, String path, String host, String... headers) throws IOException {
    try (Socket socket = connect()) {
      send(socket, method, path, host, List.of(headers));
      return answer(socket);
    }
  }

  Socket connect() throws IOException {
    Socket socket = new Socket("127.0.0.1", port);
    socket.setSoTimeout(PATIENCE_MILLIS);
    return socket;
  }

  /** Sends everything but the body. */
  void send(Socket socket, String method, String path, String host, List<String> headers)
      throws IOException {
    StringBuilder request =
        new StringBuilder(String.format(Locale.ROOT, "%s %s HTTP/1.1\r\n", method, path));
    request.append("Host: ").append(host).append("\r\n");
    if (!cookie.isEmpty()) {
      request.append("Cookie: ").append(cookie).append("\r\n");
    }
    headers.forEach(header -> request.append(header).append("\r\n"));
    if (headers.stream().noneMatch(header -> header.startsWith("Connection"))) {
      request.append("Connection: close\r\n");
    }
    OutputStream out = socket.getOutputStream();
    out.write(request.append("\r\n").toString().getBytes(StandardCharsets.ISO_8859_1));
    out.flush();
  }

  /** Reads until the desk closes. */
  Answer answer(Socket socket) throws IOException {
    StringBuilder text = new StringBuilder();
    InputStream in = socket.getInputStream();
    byte[] chunk = new byte[8192];
    try {
      for (int read = in.read(chunk); read >= 0; read = in.read(chunk)) {
        text.append(new String(chunk, 0, read, StandardCharsets.ISO_8859_1));
      }
    } catch (IOException e) {
      // A connection that is cut while we still send may not bring the end of its answer.
      if (text.length() == 0) {
        return new Answer(0, "", "");
      }
    }
    int end = text.indexOf("\r\n\r\n");
    String head = end < 0 ? text.toString() : text.substring(0, end);
    String status = head.length() < 12 ? "0" : head.substring(9, 12);
    return new Answer(
        Integer.parseInt(status), head + "\r\n", end < 0 ? "" : text.substring(end + 4));
  }

  /** Sends a file as the page does. */
  Answer upload(String id, String name, byte[] bytes) throws IOException {
    return post(base + "/files", bytes, "X-File-Id: " + id, "X-File-Name: " + name);
  }
}
