/**
 * What happened to the bytes of a file on its way from the station: translated line ends, another
 * character set, a wrapping, lines on top, a cut. Each is established by undoing it in memory and
 * reading again, so that a sound file whose images happen to hold the same bytes is never accused.
 * A file without symptoms is not looked at.
 */
package ridgeproof.examination.cause.transport;
