/**
 * Values from which other findings follow: dates against each other, fields that cannot be read.
 * In: the transaction and its findings. Out: the cause that explains them.
 */
package ridgeproof.examination.cause.value;
