/**
 * Ridgeproof as a library: the one package that other programs may use. In: a file or its bytes.
 * Out: verdict, findings, what to do, and the JSON report, all immutable. It stays as it is: what
 * is here is neither renamed nor removed within a major version, enums and records may gain
 * members. No type of another package of Ridgeproof appears in it; {@code docs/library.md} shows an
 * example.
 */
package ridgeproof.api;
