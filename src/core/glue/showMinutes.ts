import { roundDecimal } from '../units/roundDecimal';

/** Minutes as a label gives them: "5 min", "24 h", "1 h 30 min". */
export const showMinutes = (minutes: number): string => {
  if (minutes < 60) return `${roundDecimal(minutes, 2)} min`;
  const hours = Math.floor(minutes / 60);
  const rest = roundDecimal(minutes - hours * 60, 2);
  return rest === 0 ? `${hours} h` : `${hours} h ${rest} min`;
};
