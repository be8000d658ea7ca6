import { BODY_DATUMS } from '../../../core/document/bodyFields';
import type { BodyDatum } from '../../../core/document/bodyTypes';

/** Words for a place along the centreline brought into the sign that its box takes: "12 ahead" is "-12", "3/4 behind" "3/4". */
export const plainAlong = (text: string): string => {
  const [, length, way] =
    /^\s*(.*?)\s*(ahead|before|behind)(?:\s+of)?(?:\s+(?:it|(?:the\s+)?(?:octave line|front edge|nut)))?\s*$/i.exec(
      text,
    ) ?? [];
  if (length === undefined || way === undefined) return text;
  return way.toLowerCase() === 'behind' ? length : `-${length}`;
};

/** Less than this is on the line, mm. */
const ON_LINE = 0.0005;

/** Where a place lies, in words. y: from the nut; line: y of what it is read from. mm */
export const alongWords = (y: number, from: BodyDatum, line: number, show: (mm: number) => string): string => {
  if (from === 'nut') return '';
  const behind = y - line;
  const nut = `${show(y)} from the nut.`;
  if (Math.abs(behind) < ON_LINE) return `On ${BODY_DATUMS[from]}; ${nut}`;
  return `${show(Math.abs(behind))} ${behind > 0 ? 'behind' : 'ahead of'} ${BODY_DATUMS[from]}; ${nut}`;
};
