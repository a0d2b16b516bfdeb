/**
 * The fault catalogue: files with one fault each, made from clean ones. What is changed stands in
 * {@code faults.csv} in words and as steps; the clean files are stories beside it. A step is one of
 * the verbs of {@link ridgeproof.corpus.fault.Verbs}: first those that change records and pixels,
 * then those that change the bytes of the finished file.
 */
package ridgeproof.corpus.fault;
