/**
 * Nut datum to the crown of a fret, mm: scale · (1 − 2^(−fret/12)), twelve-tone equal temperament.
 * scaleLength mm, above 0; fret 0 or more (fractions are allowed). Throws RangeError outside that.
 */
export const fretDistance = (scaleLength: number, fret: number): number => {
  if (!Number.isFinite(scaleLength) || scaleLength <= 0)
    throw new RangeError(`A scale length is a finite number of mm above 0, not ${scaleLength}.`);
  if (!Number.isFinite(fret) || fret < 0) throw new RangeError(`A fret is a finite number from 0 up, not ${fret}.`);
  return scaleLength * (1 - 2 ** (-fret / 12));
};
