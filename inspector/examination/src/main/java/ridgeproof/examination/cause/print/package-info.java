/**
 * What happened to one print or image: scale, quality of capture, the same image twice. In:
 * findings and measures. Out: the cause that explains them.
 */
package ridgeproof.examination.cause.print;
