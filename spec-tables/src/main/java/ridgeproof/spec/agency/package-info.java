/**
 * Profiles of one receiving agency, read from TOML. In: text. Out: a profile, or every mistake with
 * its line and column.
 */
package ridgeproof.spec.agency;
