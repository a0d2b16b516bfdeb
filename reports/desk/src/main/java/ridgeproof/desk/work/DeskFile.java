package ridgeproof.desk.work;

import java.time.Instant;
import java.util.Optional;

/**
 * A file on the desk as it is at one moment.
 *
 * @param id 16 hexadecimal digits
 * @param name as the station called it, without folders; empty once the file is dropped
 * @param bytes size; 0 while it is still arriving
 * @param arrived when its first byte came
 * @param used when somebody last looked at it; it is dropped a set time later
 * @param state how far it is
 * @param changed number of the change that made it so
 * @param examined what was found: while {@code EXAMINING} of its structure alone
 * @param problem key of the text that says why there is no report
 */
public record DeskFile(
    String id,
    String name,
    long bytes,
    Instant arrived,
    Instant used,
    State state,
    long changed,
    Optional<Examined> examined,
    Optional<String> problem) {

  /** How far a file is. */
  public enum State {
    ARRIVING,
    WAITING,
    EXAMINING,
    EXAMINED,
    /** There is no report, for a reason that is no fault of the file's content. */
    FAILED,
    /** Its bytes and its report are gone. */
    DROPPED
  }

  static DeskFile arriving(String id, String name, Instant now) {
    return new DeskFile(
        id, name, 0, now, now, State.ARRIVING, 0, Optional.empty(), Optional.empty());
  }

  DeskFile inState(State next) {
    return new DeskFile(id, name, bytes, arrived, used, next, changed, examined, problem);
  }

  DeskFile withBytes(long size) {
    return new DeskFile(id, name, size, arrived, used, state, changed, examined, problem);
  }

  DeskFile with(Examined found) {
    return new DeskFile(
        id, name, bytes, arrived, used, state, changed, Optional.of(found), problem);
  }

  DeskFile failed(String reason) {
    return new DeskFile(
        id,
        name,
        bytes,
        arrived,
        used,
        State.FAILED,
        changed,
        Optional.empty(),
        Optional.of(reason));
  }

  DeskFile usedAt(Instant now) {
    return new DeskFile(id, name, bytes, arrived, now, state, changed, examined, problem);
  }

  /** Nothing of it stays but that it was there. */
  DeskFile dropped(Instant now) {
    return new DeskFile(
        id, "", 0, arrived, now, State.DROPPED, changed, Optional.empty(), Optional.empty());
  }

  DeskFile changedAs(long number) {
    return new DeskFile(id, name, bytes, arrived, used, state, number, examined, problem);
  }

  public boolean isOnDesk() {
    return state != State.DROPPED;
  }
}
