import { fail, ok, type Result } from '../result';

/** °C as °F, and back. */
export const fahrenheitOf = (celsius: number): number => celsius * 1.8 + 32;
const celsiusOf = (fahrenheit: number): number => (fahrenheit - 32) / 1.8;

/** A temperature in °C, from text in the unit it names, or else in `unit`: "21", "70 °F", "21,5 C". Code: temperature.wrong. */
export const readTemperature = (text: string, unit: 'C' | 'F'): Result<number> => {
  const typed = text.trim().replace(/^[−–]/, '-');
  const read = /^(-?\d+(?:[.,]\d+)?)\s*(?:°|deg)?\s*([cf])?$/i.exec(typed);
  if (read === null)
    return fail('', 'temperature.wrong', `“${text.trim()}” is no temperature: expected such as 21 °C or 70 °F.`);
  const value = Number(read[1]?.replace(',', '.'));
  return ok((read[2]?.toUpperCase() ?? unit) === 'F' ? celsiusOf(value) : value);
};
