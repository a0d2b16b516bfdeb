/**
 * Record layouts, code tables and the small languages of their cells: presence, conditions, values.
 */
package ridgeproof.spec.layout;
