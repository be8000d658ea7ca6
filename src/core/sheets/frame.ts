/** How a sheet's page is divided: what a printer leaves white, the strips for the long lines, and the box for the rest, mm. */
export interface Frame {
  readonly width: number;
  readonly height: number;
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

export const frameOf = (width: number, height: number): Frame => ({
  width,
  height,
  left: PAGE_MARGIN + LEFT_STRIP,
  top: PAGE_MARGIN,
  right: width - PAGE_MARGIN,
  bottom: height - PAGE_MARGIN - FOOT_STRIP,
});
