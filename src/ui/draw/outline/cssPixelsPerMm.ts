/** Pixels of the page to a true millimetre, from the glass's own dots; the browser's zoom changes what a pixel is. */
export const cssPixelsPerMm = (dotsPerMm: number): number => dotsPerMm / window.devicePixelRatio;
