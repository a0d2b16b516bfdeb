package ridgeproof.spec.table;

import java.util.function.Supplier;

/** A table that is read when first asked for, and only once. */
public final class Lazy<T> {

  private final Supplier<T> reading;
  private T value;

  public Lazy(Supplier<T> reading) {
    this.reading = reading;
  }

  public synchronized T get() {
    if (value == null) {
      value = reading.get();
    }
    return value;
  }
}
