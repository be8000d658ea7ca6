/** Characters that no XML 1.0 document may hold (XML 1.0, 2.2, Char): controls, halves of a pair, two non-characters. */
const FORBIDDEN =
  // biome-ignore lint/suspicious/noControlCharactersInRegex: control characters are what is taken out
  /[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffe\uffff]|[\ud800-\udbff](?![\udc00-\udfff])|(?<![\ud800-\udbff])[\udc00-\udfff]/g;

const ENTITIES: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' };

/** Text as it stands in XML, within an element or a quoted attribute; what XML cannot hold becomes U+FFFD. */
export const escapeXml = (text: string): string =>
  text.replace(FORBIDDEN, '\ufffd').replace(/[&<>"]/g, (character) => ENTITIES[character] ?? character);
