/**
 * Writes transactions in the XML encoding, and turns those read from XML into drafts of the
 * traditional one. What one encoding has and the other has not is named, never dropped in silence.
 */
package ridgeproof.transaction.xml.writer;
