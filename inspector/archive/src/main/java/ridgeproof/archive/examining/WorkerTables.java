package ridgeproof.archive.examining;

import ridgeproof.spec.SpecTables;

/** The tables of the standards, which the tasks of a worker share: they are read only once. */
final class WorkerTables {

  static final SpecTables TABLES = SpecTables.open();

  private WorkerTables() {}
}
