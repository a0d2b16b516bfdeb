package ridgeproof.imagery.codec;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.EOFException;
import java.io.IOException;
import java.io.InterruptedIOException;
import org.junit.jupiter.api.Test;
import ridgeproof.transaction.record.ByteSource;

class CancellableInputTest {

  private static final ByteSource THREE_BYTES = ByteSource.of(new byte[] {1, -2, 3});

  @Test
  void readsFailOnceCancelled() throws IOException {
    CancellableInput input = new CancellableInput(THREE_BYTES, 0);
    assertEquals(1, input.read());
    input.cancel();
    assertThrows(InterruptedIOException.class, input::read);
    assertThrows(InterruptedIOException.class, () -> input.read(new byte[2], 0, 2));
  }

  @Test
  void paddingIsZeroAndRemembered() throws IOException {
    CancellableInput input = new CancellableInput(THREE_BYTES, 2);
    byte[] five = new byte[5];
    input.readFully(five, 0, 3);
    assertFalse(input.readPastEnd());
    input.seek(0);
    input.readFully(five);
    assertArrayEquals(new byte[] {1, -2, 3, 0, 0}, five);
    assertTrue(input.readPastEnd());
    assertEquals(-1, input.read());
    assertEquals(3, input.length());
  }

  @Test
  void aDecoderThatReadsOnAtTheEndIsStopped() {
    CancellableInput input = new CancellableInput(THREE_BYTES, 0);
    assertThrows(
        EOFException.class,
        () -> {
          while (true) {
            input.read();
          }
        });
  }
}
