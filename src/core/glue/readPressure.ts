import { fail, ok, type Result } from '../result';

/** Pounds-force on a square inch in one of each unit: 1 psi is 6894.757 Pa (NIST SP 811, appendix B.8). */
const PSI: Readonly<Record<string, number>> = {
  psi: 1,
  'lbf/in²': 1,
  kpa: 1000 / 6894.757,
  mpa: 1_000_000 / 6894.757,
  'n/mm²': 1_000_000 / 6894.757,
  'n/mm2': 1_000_000 / 6894.757,
  bar: 100_000 / 6894.757,
};

/** A pressure in psi, as data sheets give it: "150", "150 psi", "1 MPa", "0,7 N/mm²", "10 bar". Code: pressure.wrong. */
export const readPressure = (text: string): Result<number> => {
  const read = /^(\d+(?:[.,]\d+)?)\s*([^\d\s].*)?$/.exec(text.trim());
  const factor = PSI[(read?.[2] ?? 'psi').trim().toLowerCase()];
  if (read === null || factor === undefined)
    return fail('', 'pressure.wrong', `“${text.trim()}” is no pressure: expected such as 150 psi, 1 MPa or 10 bar.`);
  return ok(Number(read[1]?.replace(',', '.')) * factor);
};
