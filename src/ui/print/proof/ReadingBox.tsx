import { parseLength } from '../../../core/units/parseLength';
import type { Bench, ReadingName } from '../../../store/bench/createBench';
import { lengthText } from '../../../store/fieldText';
import { TextBox } from '../../fields/TextBox';
import { useLengths } from '../../useLengths';
import { useBenchState } from './useBench';

/** No long line of any paper is longer, mm. */
const LONGEST = 2000;

interface ReadingBoxProps {
  readonly bench: Bench;
  readonly name: ReadingName;
  readonly label: string;
  /** As it was drawn, mm. */
  readonly nominal: number;
  /** Id of the paper that the print in hand is on. */
  readonly paper: string;
}

/** A box for a length that was read on the print; it keeps what was typed, and may be empty. */
export function ReadingBox({ bench, name, label, nominal, paper }: ReadingBoxProps) {
  const { style, withUnit } = useLengths();
  const before = useBenchState(bench).proof.lengths[name];
  const shown = before === null ? '' : before.unit === style.unit ? before.text : lengthText(before.mm, style);
  const take = (text: string): string | null => {
    if (text === shown) return null;
    if (text.trim() === '') {
      bench.setReading(name, null, paper);
      return null;
    }
    const read = parseLength(text, style.unit);
    if (!read.ok) return read.issues[0]?.message ?? null;
    if (!(read.value > 0 && read.value <= LONGEST)) return `Expected a length above 0, up to ${withUnit(LONGEST)}.`;
    bench.setReading(name, { text: text.trim(), mm: read.value, unit: style.unit }, paper);
    return null;
  };
  return (
    <TextBox
      label={label}
      path={`proof.${name}`}
      shown={shown}
      unit={style.unit}
      about={`What the rule says on the print, as finely as you can tell. It was drawn ${withUnit(nominal)} long.`}
      decimal
      note={`drawn ${withUnit(nominal)}`}
      take={take}
    />
  );
}
