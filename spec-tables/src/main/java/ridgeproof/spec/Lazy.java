package ridgeproof.spec;

import java.util.function.Supplier;

/** A table that is read when first asked for, and only once. */
final class Lazy<T> {

  private final Supplier<T> reading;
  private T value;

  Lazy(Supplier<T> reading) {
    this.reading = reading;
  }

  synchronized T get() {
    if (value == null) {
      value = reading.get();
    }
    return value;
  }
}
