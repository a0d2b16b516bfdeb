/**
 * The desk's side of the browser: who gets in, what may be sent, and what each address answers.
 *
 * <p>In: requests of this machine alone. Out: pages, rows as they change, documents to keep. No
 * address names a path of the file system, and nothing that a request holds becomes one.
 */
package ridgeproof.desk.web;
