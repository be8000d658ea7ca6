/** The nearest larger or smaller tenth of a millimetre: a figure that can be set, on the safe side. */
export const upward = (mm: number): number => Math.ceil(mm * 10 - 1e-6) / 10;
export const downward = (mm: number): number => Math.floor(mm * 10 + 1e-6) / 10;
