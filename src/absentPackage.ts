/**
 * Stands in for packages that jsPDF names but that no template needs: pictures of web pages (html2canvas, dompurify,
 * canvg) and PNG pictures (fast-png). The build puts this in their place, so that none of them is shipped.
 */
export const decode = (): never => {
  throw new Error('Saddlemark puts no PNG pictures into its PDFs');
};
