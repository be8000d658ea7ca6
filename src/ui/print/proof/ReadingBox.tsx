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
}

/** A box for a length that was read on the print; it keeps what was typed, and may be empty. */
export function ReadingBox({ bench, name, label, nominal }: ReadingBoxProps) {
  const { style, withUnit } = useLengths();
  const { lengths } = useBenchState(bench).proof;
  const before = lengths[name];
  const shown = before === null ? '' : before.unit === style.unit ? before.text : lengthText(before.mm, style);
  const take = (text: string): string | null => {
    if (text === shown) return null;
    if (text.trim() === '') {
      bench.setProof({ lengths: { ...lengths, [name]: null } });
      return null;
    }
    const read = parseLength(text, style.unit);
    if (!read.ok) return read.issues[0]?.message ?? null;
    if (!(read.value > 0 && read.value <= LONGEST)) return `Expected a length above 0, up to ${withUnit(LONGEST)}.`;
    const typed = { text: text.trim(), mm: read.value, unit: style.unit };
    bench.setProof({ lengths: { ...lengths, [name]: typed } });
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
