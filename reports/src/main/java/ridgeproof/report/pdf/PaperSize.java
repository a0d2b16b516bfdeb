package ridgeproof.report.pdf;

/** A sheet of paper to print on, upright. */
public enum PaperSize {
  /** 210 mm by 297 mm, ISO 216. */
  A4("210mm 297mm"),
  /** 8.5 in by 11 in, which is 215.9 mm by 279.4 mm; ANSI/ASME Y14.1, size A. */
  LETTER("8.5in 11in");

  private final String size;

  PaperSize(String size) {
    this.size = size;
  }

  /** Width and height as CSS 2.1 writes lengths. */
  String size() {
    return size;
  }
}
