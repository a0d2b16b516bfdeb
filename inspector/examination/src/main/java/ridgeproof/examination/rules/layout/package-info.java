/** Rules over rows of layouts and over the Type-1 record. In: fields and layouts. Out: findings. */
package ridgeproof.examination.rules.layout;
