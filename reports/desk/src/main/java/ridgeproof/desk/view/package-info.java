/**
 * What the desk shows: the texts of one bundle, the lines of its list, and the templates.
 *
 * <p>In: files of the desk and what was found in them. Out: markup in which every value of a file
 * is escaped. To translate the desk, translate {@code desk.properties}.
 */
package ridgeproof.desk.view;
