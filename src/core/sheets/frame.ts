/** How a sheet's page is divided: what a printer leaves white, the strips for the long lines, and the box for the rest, mm. */
export interface Frame {
  readonly width: number;
  readonly height: number;
  /** White at every edge. */
  readonly margin: number;
  /** Box for the drawing, tables and square. */
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** Printers leave up to 6.4 mm white; 10 keeps clear of it. Common practice, no source. */
export const PAGE_MARGIN = 10;
/** Strip at the left edge for the long line along the page. */
const LEFT_STRIP = 10;
/** Strip at the foot for the long line across the page, its figures and the cautions. */
const FOOT_STRIP = 20;

/** margin: white at every edge, mm. */
export const frameOf = (width: number, height: number, margin: number = PAGE_MARGIN): Frame => ({
  width,
  height,
  margin,
  left: margin + LEFT_STRIP,
  top: margin,
  right: width - margin,
  bottom: height - margin - FOOT_STRIP,
});
