/** What a rule is: it looks at the input of an examination and adds findings to the log. */
package ridgeproof.examination.rules;
