package ridgeproof.report.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import ridgeproof.report.Reports;
import ridgeproof.spec.layout.CodeTable;

/** What {@code ridgeproof codes} lists. */
class CodeListingTest {

  private static final CodeTable PIERS = CodeTable.load("piers");

  @Test
  void aTableIsListedWithTheVersionsOfEachCode() {
    assertEquals(
        """
        A   Old pier  (until 0300)
        BB  Outer pier  (since 0300 until 0400)
        C   New PIER  (since 0500)
        D1  Pier of always
        4 codes
        """,
        CodeListing.codes(PIERS, ""));
  }

  @Test
  void aWordIsLookedForInCodeAndNameInWhateverLetters() {
    assertEquals(
        "BB  Outer pier  (since 0300 until 0400)\n1 code\n", CodeListing.codes(PIERS, "OUTER"));
    assertEquals("D1  Pier of always\n1 code\n", CodeListing.codes(PIERS, "d1"));
    assertEquals("0 codes\n", CodeListing.codes(PIERS, "jetty"));
  }

  @Test
  void aWordIsFoundInEveryTable() {
    assertEquals(
        """
        finger-positions             1        right thumb
        finger-positions             11       plain right thumb
        friction-ridge-positions     1        right thumb
        friction-ridge-positions     11       plain right thumb
        creases                      PDC01    Proximal digital crease, right thumb  (since 0500)
        5 codes
        """,
        CodeListing.find(Reports.TABLES, "Right Thumb"));
    assertEquals(
        """
        creases                      PDC01    Proximal digital crease, right thumb  (since 0500)
        1 code
        """,
        CodeListing.find(Reports.TABLES, "pdc01"));
    assertEquals("0 codes\n", CodeListing.find(Reports.TABLES, "nonesuch"));
  }

  @Test
  void theTablesAreListedWithTheirTitles() {
    String tables = CodeListing.tables(Reports.TABLES);
    assertTrue(
        tables.startsWith("versions                     Versions of the standard\n"), tables);
    assertTrue(tables.endsWith("\nTo list the codes of a table: ridgeproof codes TABLE\n"), tables);
    assertEquals(Reports.TABLES.codeTables().size() + 1, tables.lines().count());
  }
}
