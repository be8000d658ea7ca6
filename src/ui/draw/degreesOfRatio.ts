import { angleOfTaper } from '../../core/bridge/pinTaper';

const RATIO = /^\s*1\s*(?:[:∶]|in\b)\s*(\d+(?:[.,]\d+)?)\s*$/;

/** A taper written as a ratio, "1:20" or "1 in 20", as its included angle in degrees; any other text as it is. */
export const degreesOfRatio = (text: string): string => {
  const long = Number(RATIO.exec(text)?.[1]?.replace(',', '.') ?? 0);
  return long > 0 ? String((angleOfTaper(1 / long) * 180) / Math.PI) : text;
};
