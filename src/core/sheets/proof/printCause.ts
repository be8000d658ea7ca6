interface Cause {
  /** Print over drawing. */
  readonly ratio: number;
  readonly words: string;
}

/**
 * What a print dialog does to a page, by the ratio that it leaves. Ratios of paper sizes (ISO 216, ANSI) and of dots to the
 * inch, hand arithmetic: 215.9/210 and so on.
 */
const CAUSES: readonly Cause[] = [
  { ratio: 210 / 215.9, words: 'a Letter page was fitted to A4 paper' },
  { ratio: 279.4 / 297, words: 'an A4 page was fitted to Letter paper' },
  { ratio: (210 - 2 * 4.2333) / 210, words: 'the page was shrunk to the printer’s margins' },
  { ratio: (279.4 - 12.7) / 297, words: 'an A4 page was fitted to Letter paper inside margins of a quarter inch' },
  { ratio: 210 / 297, words: 'an A4 page that lies on its side was shrunk onto upright paper' },
  { ratio: 215.9 / 279.4, words: 'a Letter page that lies on its side was shrunk onto upright paper' },
  { ratio: 90 / 96, words: 'a program took 90 dots to the inch for 96' },
  { ratio: 96 / 90, words: 'a program took 96 dots to the inch for 90' },
  { ratio: 72 / 96, words: 'a program took 72 dots to the inch for 96' },
  { ratio: 96 / 72, words: 'a program took 96 dots to the inch for 72' },
];

/** As near as this to its ratio a cause is named; the nearest one counts. Common practice, no source. */
const NEAR = 0.01;
/** A remembered zoom is a whole number of fives per cent, and the print keeps to it this well. */
const ZOOM_STEP = 0.05;
const ZOOM_NEAR = 0.003;

/** The likely cause of a print that came out `ratio` times its size both ways, in words. */
export const printCause = (ratio: number): string => {
  const percent = `${(ratio * 100).toFixed(1)} %`;
  const zoom = Math.round(ratio / ZOOM_STEP) * ZOOM_STEP;
  const nearest = [...CAUSES].sort((one, other) => Math.abs(one.ratio - ratio) - Math.abs(other.ratio - ratio))[0];
  const known = nearest !== undefined && Math.abs(nearest.ratio - ratio) <= NEAR ? nearest : null;
  const zoomed = Math.abs(zoom - ratio) <= ZOOM_NEAR && Math.abs(zoom - 1) > ZOOM_NEAR;
  if (zoomed && (known === null || Math.abs(known.ratio - ratio) > Math.abs(zoom - ratio)))
    return `Printed at ${percent}: most likely a scale of ${Math.round(zoom * 100)} % that the print dialog remembered. Set it to 100 %.`;
  if (known !== null)
    return `Printed at ${percent}: most likely ${known.words}. Choose the paper that is loaded, and 100 % or “actual size” instead of fit or shrink.`;
  return `Printed at ${percent} both ways: most likely fit, shrink or a scale in the print dialog, or a copier that was not at 100 %. Choose 100 % or “actual size”.`;
};
