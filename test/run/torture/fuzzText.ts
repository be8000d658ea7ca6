import type { Dice } from '../../store/random/dice';

/** Numbers that readers stumble over. */
const NUMBERS = [
  '0',
  '-0',
  '-1',
  '1e999',
  '-1e999',
  'NaN',
  'Infinity',
  '1e308',
  '1e-308',
  '99999999999',
  '1e21',
  '-1e9',
  '0x10',
  '9007199254740993',
  '0.1.2',
  '1,5',
  '٣',
  '',
];

/** Scraps of any text. */
const SCRAPS = [
  '',
  '\0',
  '\n',
  '\r\n\r\n',
  '<',
  '>',
  '"',
  "'",
  '&',
  '&lt;',
  '{',
  '}',
  '[',
  ']',
  '\\',
  '\uFEFF',
  '\ud800',
  'é',
  '__proto__',
  'constructor',
  '../../etc',
  'javascript:1',
  '-1e-300',
  '/*',
  '<!--',
  '<![CDATA[',
  '--',
  '%',
  '0\nSECTION\n',
];

const NUMBER = /-?\d+(?:\.\d+)?(?:e[+-]?\d+)?/gi;
const WORD = /[A-Za-z_$][\w:$-]{1,30}/g;

/** Longer than this a file is not made by doubling: the limits on size have tests of their own. */
const LONGEST = 400_000;

interface Found {
  readonly at: number;
  readonly text: string;
}

/** One of the places where a pattern stands in a text; null where it stands nowhere. */
const anyOf = (pattern: RegExp, text: string, dice: Dice): Found | null => {
  // From somewhere on, or the first places of a long file would have all the turns.
  const from = dice.below(text.length + 1);
  pattern.lastIndex = from;
  const found = pattern.exec(text);
  return found === null ? null : { at: found.index, text: found[0] };
};

const replaced = (text: string, at: number, length: number, by: string): string =>
  text.slice(0, at) + by + text.slice(at + length);

/** Ways to damage a text; each answers with the text as it was where it finds nothing to damage. */
type Damage = (text: string, dice: Dice, other: string) => string;

const flipBit: Damage = (text, dice) => {
  const at = dice.below(text.length);
  return replaced(text, at, 1, String.fromCharCode(text.charCodeAt(at) ^ (1 << dice.below(8))));
};

const cutShort: Damage = (text, dice) => {
  return text.slice(0, dice.below(text.length));
};

const takeOut: Damage = (text, dice) => {
  return replaced(text, dice.below(text.length), 1 + dice.below(dice.below(4) === 0 ? 400 : 8), '');
};

const double: Damage = (text, dice) => {
  const at = dice.below(text.length);
  return replaced(text, at, 0, text.slice(at, at + 1 + dice.below(300)));
};

const splice: Damage = (text, dice, other) => {
  const from = dice.below(other.length);
  const piece = other.slice(from, from + 1 + dice.below(2000));
  return replaced(text, dice.below(text.length), dice.below(200), piece);
};

const extreme: Damage = (text, dice) => {
  const number = anyOf(NUMBER, text, dice);
  return number === null ? text : replaced(text, number.at, number.text.length, dice.of(NUMBERS) ?? '');
};

const swapWords: Damage = (text, dice) => {
  const [one, two] = [anyOf(WORD, text, dice), anyOf(WORD, text, dice)];
  return one === null || two === null ? text : replaced(text, one.at, one.text.length, two.text);
};

const nest: Damage = (text, dice) => {
  const at = dice.below(text.length);
  const piece =
    dice.of(['[', '{"a":', '<g>', '(', '  0\nINSERT\n2\nA\n', text.slice(at, at + 1 + dice.below(40))]) ?? '';
  return replaced(text, at, 0, piece.repeat(1 + dice.below(dice.below(5) === 0 ? 5000 : 30)));
};

const scrap: Damage = (text, dice) => {
  return replaced(text, dice.below(text.length), dice.below(3), dice.of(SCRAPS) ?? '');
};

const DAMAGES: readonly Damage[] = [flipBit, cutShort, takeOut, double, splice, extreme, swapWords, nest, scrap];

/** A text with one to four damages. */
export const damagedText = (text: string, other: string, dice: Dice): string => {
  let damaged = text;
  for (let left = 1 + dice.below(4); left > 0 && damaged !== '' && damaged.length < LONGEST; left--)
    damaged = (dice.of(DAMAGES) ?? cutShort)(damaged, dice, other);
  return damaged;
};

/** A text in which one to six numbers were made others, or changed places: it stays what it was, and means something else. */
export const damagedNumbers = (text: string, dice: Dice): string => {
  let damaged = text;
  for (let left = 1 + dice.below(6); left > 0; left--) {
    const [one, two] = [anyOf(NUMBER, damaged, dice), anyOf(NUMBER, damaged, dice)];
    if (one === null || two === null) continue;
    const by = dice.below(3) === 0 ? two.text : (dice.of(NUMBERS) ?? '');
    damaged = replaced(damaged, one.at, one.text.length, by);
  }
  return damaged;
};
