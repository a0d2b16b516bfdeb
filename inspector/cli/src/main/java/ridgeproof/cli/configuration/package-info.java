/**
 * The user's configuration file: defaults for options that the command line does not name. In: the
 * environment of the user, and a TOML file where there is one. Out: values of options, each with
 * where it comes from.
 */
package ridgeproof.cli.configuration;
