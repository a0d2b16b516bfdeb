package ridgeproof.desk.web;

import io.javalin.http.Context;
import io.javalin.http.Cookie;
import io.javalin.http.HandlerType;
import io.javalin.http.SameSite;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.HexFormat;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.atomic.AtomicReference;

/**
 * Lets in the one browser that was given the address. A token of the address is exchanged once for
 * a cookie that no other site can make the browser send. Every address begins with a part that
 * cannot be guessed: cookies are shared by all servers of a host, and so this one is sent to no
 * other port.
 */
final class Access {

  private static final int SECRET_BYTES = 32;
  private static final int BASE_BYTES = 8;
  private static final String COOKIE = "ridgeproof-desk";
  private static final Set<HandlerType> READING = Set.of(HandlerType.GET, HandlerType.HEAD);

  private final String base;
  private final String session;
  private final AtomicReference<String> token;

  Access() {
    SecureRandom random = new SecureRandom();
    this.base = "/" + secret(random, BASE_BYTES);
    this.session = secret(random, SECRET_BYTES);
    this.token = new AtomicReference<>(secret(random, SECRET_BYTES));
  }

  private static String secret(SecureRandom random, int bytes) {
    byte[] secret = new byte[bytes];
    random.nextBytes(secret);
    return HexFormat.of().formatHex(secret);
  }

  /** What every address begins with. */
  String base() {
    return base;
  }

  /** The path of the one address that lets a browser in, as long as it was not used. */
  String entrance() {
    return base + "/enter?token=" + Optional.ofNullable(token.get()).orElse("used");
  }

  /**
   * Lets no request by that another machine, site, program or user could have caused.
   *
   * @param port where the desk listens
   */
  void check(Context request, int port) {
    String host = request.header("Host");
    // Another name that leads here is how a page of the internet would reach this machine.
    if (host == null || !Set.of("127.0.0.1:" + port, "localhost:" + port).contains(host)) {
      throw new Refused(421, "refused.host");
    }
    if (!request.path().startsWith(base + "/")) {
      throw Refused.notFound();
    }
    boolean entering = request.path().equals(base + "/enter");
    boolean reading = READING.contains(request.method());
    String origin = request.header("Origin");
    if (origin == null ? !reading : !origin.equals("http://" + host)) {
      throw new Refused(403, "refused.origin");
    }
    String site = request.header("Sec-Fetch-Site");
    if (!entering && site != null && !Set.of("same-origin", "none").contains(site)) {
      throw new Refused(403, "refused.origin");
    }
    if (!entering && !same(session, request.cookie(COOKIE))) {
      throw new Refused(403, "refused.cookie");
    }
  }

  /** Exchanges the token for the cookie, once. */
  void enter(Context request) {
    String shown = request.queryParam("token");
    String expected = token.get();
    if (shown == null || !same(expected, shown) || !token.compareAndSet(expected, null)) {
      throw new Refused(403, "refused.token");
    }
    Cookie cookie = new Cookie(COOKIE, session);
    cookie.setPath(base + "/");
    cookie.setHttpOnly(true);
    cookie.setSameSite(SameSite.STRICT);
    request.cookie(cookie);
  }

  /** Takes as long for a wrong secret as for the right one. */
  private static boolean same(String expected, String shown) {
    return expected != null
        && shown != null
        && MessageDigest.isEqual(
            expected.getBytes(StandardCharsets.US_ASCII), shown.getBytes(StandardCharsets.UTF_8));
  }
}
