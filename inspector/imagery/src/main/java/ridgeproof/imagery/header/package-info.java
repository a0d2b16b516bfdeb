/**
 * What codestreams say of themselves, before any pixel. In: bytes. Out: a header and the defects
 * met on the way.
 */
package ridgeproof.imagery.header;
