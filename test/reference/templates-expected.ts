/** Where one instrument's template has its marks on one paper, mm from the top left of the page, y down. */
export interface ExpectedTemplate {
  /** File in `instruments`. */
  readonly instrument: 'steel' | 'classical' | 'ukulele';
  readonly paper: 'a4' | 'letter';
  readonly unit: 'mm' | 'in';
  /** Sides of every page as it is read. */
  readonly width: number;
  readonly height: number;
  readonly pages: readonly ExpectedPage[];
  /** Rows of the table "Place by these": name, then a figure a datum. */
  readonly figures: readonly (readonly string[])[];
  /** Words of the square line. */
  readonly squareLine: readonly string[];
}

export interface ExpectedPage {
  /** Ends and corners of lines, and middles of curves: name, x, y. */
  readonly points: readonly (readonly [string, number, number])[];
  /** Circles: name, x and y of the centre, radius. */
  readonly holes: readonly (readonly [string, number, number, number])[];
}
