/**
 * The prints that findings are about, as pictures with what was found drawn on them.
 *
 * <p>In: a report of findings and, where they may be shown, the pixels. Out: for each step the
 * prints it is about, their names in words, the marks on them and the scores that agree with the
 * findings. The shapes are drawn as SVG on a page and as pixels on paper.
 */
package ridgeproof.report.prints;
