package ridgeproof.ledger.health;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/**
 * What happens to a station: from a day on, its images are altered. Files hold their images as
 * pixels, so that a fault can be put into them and nothing else changes.
 */
enum AlteredStation {
  /** A lamp that ages: everything is darker by a tenth, bright parts most. */
  DARK_BACKGROUND(StationFault.BACKGROUND) {
    @Override
    double gray(double gray, int x, int y, int width, int height) {
      return gray * 0.93;
    }
  },
  /** A worn membrane: ridges are pale, the bare platen is as it was. */
  PALE_PRINTS(StationFault.CONTRAST) {
    @Override
    double gray(double gray, int x, int y, int width, int height) {
      return GROUND - (GROUND - gray) * 0.75;
    }
  },
  /** A lamp of one side that fails: the light falls off from left to right. */
  UNEVEN_LIGHT(StationFault.LIGHT) {
    @Override
    double gray(double gray, int x, int y, int width, int height) {
      return gray - 30.0 * Math.max(0, x - width / 2) / width;
    }
  },
  /** The last print is still there, faintly. */
  GHOSTS(StationFault.GHOST) {
    @Override
    double gray(double gray, int x, int y, int width, int height) {
      boolean where = y < height / 8 || x < width / 8;
      return where ? gray - 9 * (1 + Math.sin(2 * Math.PI * x / 9.0)) : gray;
    }
  },
  /** A column of the sensor that is dead. */
  DEAD_COLUMN(StationFault.DEAD_LINE) {
    @Override
    double gray(double gray, int x, int y, int width, int height) {
      return x == 417 ? 0 : gray;
    }
  },
  /** A row of the sensor that always gives the same gray. */
  DEAD_ROW(StationFault.DEAD_LINE) {
    @Override
    double gray(double gray, int x, int y, int width, int height) {
      return y == 101 ? 90 : gray;
    }
  },
  /** Optics that were moved: everything is a sixteenth larger than the file states. */
  LARGER_SCALE(StationFault.SCALE) {
    @Override
    byte[] image(byte[] pixels, int width, int height) {
      byte[] larger = new byte[pixels.length];
      for (int y = 0; y < height; y++) {
        for (int x = 0; x < width; x++) {
          double fromX = width / 2.0 + (x - width / 2.0) / 1.0625;
          double fromY = height / 2.0 + (y - height / 2.0) / 1.0625;
          larger[y * width + x] = (byte) Math.round(between(pixels, width, height, fromX, fromY));
        }
      }
      return larger;
    }
  };

  /** About the gray level of the bare platen in these years. */
  private static final double GROUND = 243;

  private static final char FILE_SEPARATOR = 0x1C;
  private static final DateTimeFormatter DATE =
      DateTimeFormatter.ofPattern("uuuuMMdd", Locale.ROOT);

  private final StationFault fault;

  AlteredStation(StationFault fault) {
    this.fault = fault;
  }

  /** What is to be found. */
  StationFault fault() {
    return fault;
  }

  double gray(double gray, int x, int y, int width, int height) {
    return gray;
  }

  byte[] image(byte[] pixels, int width, int height) {
    byte[] altered = new byte[pixels.length];
    for (int i = 0; i < pixels.length; i++) {
      double gray = gray(pixels[i] & 0xFF, i % width, i / width, width, height);
      altered[i] = (byte) Math.max(0, Math.min(255, Math.round(gray)));
    }
    return altered;
  }

  private static double between(byte[] pixels, int width, int height, double x, double y) {
    int left = (int) Math.max(0, Math.min(width - 2, Math.floor(x)));
    int top = (int) Math.max(0, Math.min(height - 2, Math.floor(y)));
    double right = x - left;
    double below = y - top;
    int at = top * width + left;
    return (1 - below) * ((1 - right) * (pixels[at] & 0xFF) + right * (pixels[at + 1] & 0xFF))
        + below
            * ((1 - right) * (pixels[at + width] & 0xFF) + right * (pixels[at + width + 1] & 0xFF));
  }

  /** Whether a file is of that station and of that day or a later one. */
  static boolean concerns(byte[] file, String serial, LocalDate since) {
    String text = new String(file, StandardCharsets.ISO_8859_1);
    int day = text.indexOf("14.005:");
    return day >= 0
        && text.contains(serial)
        && !LocalDate.parse(text.substring(day + 7, day + 15), DATE).isBefore(since);
  }

  /** The file with its images altered; one that states a wrong size stays as it is. */
  byte[] file(byte[] file) {
    byte[] altered = file.clone();
    String text = new String(file, StandardCharsets.ISO_8859_1);
    String mark = "14.999:";
    for (int at = text.indexOf(mark); at >= 0; at = text.indexOf(mark, at + mark.length())) {
      int width = number(text, "14.006:", at);
      int height = number(text, "14.007:", at);
      int from = at + mark.length();
      if (text.charAt(from + width * height) == FILE_SEPARATOR) {
        byte[] pixels = new byte[width * height];
        System.arraycopy(file, from, pixels, 0, pixels.length);
        System.arraycopy(image(pixels, width, height), 0, altered, from, pixels.length);
      }
      at = from + width * height - mark.length();
    }
    return altered;
  }

  private static int number(String text, String field, int before) {
    int at = text.lastIndexOf(field, before) + field.length();
    return Integer.parseInt(text.substring(at, text.indexOf(0x1D, at)));
  }
}
