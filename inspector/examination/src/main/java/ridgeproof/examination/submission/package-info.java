/**
 * What a file is checked as: its type of transaction, the set of prints it holds, and the profile
 * that follows.
 */
package ridgeproof.examination.submission;
