/**
 * Rules over the Type-2 record. In: its fields and the tables of the type of transaction. Out:
 * findings whose personal values are marked as such.
 */
package ridgeproof.examination.rules.descriptive;
