/** Decimals of a coordinate, mm: a nanometre. */
const PLACE = 6;
/** Decimals of a bulge: on a chord of 200 mm its last one moves an arc by 0.01 nm. */
const BULGE = 10;

const rounded = (value: number, decimals: number): number => {
  const number = Number(value.toFixed(decimals));
  return number === 0 ? 0 : number;
};

/** A coordinate or size as it stands in a DXF, mm; never −0. */
export const dxfPlace = (mm: number): number => rounded(mm, PLACE);

/** A bulge as it stands in a DXF. */
export const dxfBulge = (bulge: number): number => rounded(bulge, BULGE);
