/** Signs that stand for themselves in no DXF string before 2007, by the codes that every program knows. */
const CODES: Readonly<Record<string, string>> = { '°': '%%d', '±': '%%p', '⌀': '%%c', Ø: '%%c', '″': '"', '′': "'" };

/**
 * Text as it stands in a TEXT entity. "%%" begins a code, so that two per cent signs are written as two codes; "^" begins a
 * control character and has a space after it; control characters become spaces (Autodesk's DXF reference, text codes).
 */
export const dxfText = (text: string): string =>
  text
    // biome-ignore lint/suspicious/noControlCharactersInRegex: control characters are what is taken out
    .replace(/[\u0000-\u001f\u007f-\u009f\u2028\u2029]+/g, ' ')
    .replaceAll('%%', '%%%%%%')
    .replaceAll('^', '^ ');

/** The same in ASCII alone, for files that know no UTF-8: what has no code is written by its number, \U+XXXX. */
export const asciiDxfText = (text: string): string =>
  dxfText(text)
    .replace(/[°±⌀Ø″′]/g, (sign) => CODES[sign] ?? sign)
    .replace(/[^ -~]/g, (unit) => `\\U+${unit.charCodeAt(0).toString(16).toUpperCase().padStart(4, '0')}`);
