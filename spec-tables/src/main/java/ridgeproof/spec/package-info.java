/** The front door of the tables: each is read when it is first asked for. */
package ridgeproof.spec;
