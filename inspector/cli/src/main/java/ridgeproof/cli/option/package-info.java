/**
 * Options that several commands share, and how their values are read. In: words of the command
 * line. Out: values, or a usage error that names the option.
 */
package ridgeproof.cli.option;
