/** What others say of times, to know what to look for on a label. */
export const TIME_CLAIMS: readonly { readonly what: string; readonly says: string; readonly source: string }[] = [
  { what: 'White and yellow glue, open', says: '4 to 6 min; by wood and air', source: 'from memory' },
  { what: 'White and yellow glue, open and closed', says: '10 to 15 min', source: 'from memory' },
  { what: 'Hot hide glue, brush to clamp', says: 'about 2 min', source: 'a supply shop’s video page' },
  { what: 'Clamps on', says: '8 h at the least', source: 'taranguitars.blogspot.com, gluing on bridge' },
  { what: 'Clamps on', says: '24 h', source: 'mimf.com' },
  { what: 'Clamps on, air under 45 %', says: 'over 72 h', source: 'lkoguitargarage.com' },
  { what: 'Strung after', says: '3 h in one tutorial', source: 'instrumentmakers.net' },
];

/** When squeeze-out is cleaned, as one maker does. */
export const SQUEEZE_OUT_SOURCE = 'about 15 min after clamping: taranguitars.blogspot.com, gluing on bridge';
