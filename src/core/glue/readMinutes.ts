import { fail, ok, type Result } from '../result';

const MINUTES: Readonly<Record<string, number>> = { min: 1, m: 1, minute: 1, h: 60, hour: 60, d: 1440, day: 1440 };
const UNIT = '(min|minute|hour|day|m|h|d)s?';
const NUMBER = '(\\d+(?:[.,]\\d+)?)';
const ONE = new RegExp(`^${NUMBER}\\s*(?:${UNIT})?$`, 'i');
const TWO = /^(\d+)\s*(?:h|hours?)\s*(\d+)\s*(?:min|minutes?|m)?$/i;

/**
 * A time as a label gives it, in minutes: "5", "5 min", "24 h", "1 h 30", "3 days". `bare` says whether a number alone
 * means minutes; where it may not, hours are as likely. Codes: time.wrong, time.unit.
 */
export const readMinutes = (text: string, bare: boolean): Result<number> => {
  const typed = text.trim();
  const two = TWO.exec(typed);
  if (two !== null) return ok(Number(two[1]) * 60 + Number(two[2]));
  const one = ONE.exec(typed);
  if (one === null)
    return fail('', 'time.wrong', `“${typed}” is no time: expected minutes or hours, such as 5 min or 24 h.`);
  const [, number = '', unit] = one;
  if (unit === undefined && !bare)
    return fail('', 'time.unit', `${typed} what? Type ${typed} min or ${typed} h, as the label says.`);
  return ok(Number(number.replace(',', '.')) * (MINUTES[(unit ?? 'min').toLowerCase()] ?? 1));
};
