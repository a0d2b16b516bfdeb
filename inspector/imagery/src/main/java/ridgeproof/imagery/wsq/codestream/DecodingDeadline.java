package ridgeproof.imagery.wsq.codestream;

import java.util.Optional;

/** Watches deadline and cancellation during one decoding; once it says stop it stays so. */
public final class DecodingDeadline {

  private final WsqLimits limits;
  private CodestreamDefect.Kind reason;

  public DecodingDeadline(WsqLimits limits) {
    this.limits = limits;
  }

  public boolean isRaised() {
    if (reason == null) {
      if (limits.cancelled().getAsBoolean()) {
        reason = CodestreamDefect.Kind.CANCELLED;
      } else if (System.nanoTime() - limits.deadlineNanos() > 0) {
        reason = CodestreamDefect.Kind.TIME_LIMIT;
      }
    }
    return reason != null;
  }

  public Optional<CodestreamDefect.Kind> reason() {
    return Optional.ofNullable(reason);
  }
}
