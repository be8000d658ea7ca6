import type { LengthField } from '../../../core/document/fieldTypes';
import { validateField } from '../../../core/document/validateField';
import type { Issue } from '../../../core/result';
import { showLength } from '../../../core/units/showLength';
import { lengthText } from '../../../store/fieldText';
import { readField } from '../../fields/readField';
import { TextBox } from '../../fields/TextBox';
import { useLengths } from '../../useLengths';

interface LengthBoxProps {
  readonly path: string;
  readonly label: string;
  readonly help: string;
  readonly value: number;
  readonly min: number;
  readonly max: number;
  readonly note?: string | undefined;
  /** Takes the length, mm; answers with what is wrong. */
  readonly take: (mm: number) => readonly Issue[];
}

/** A box for a length that is no field of the project by itself: the place of a node, the length of the whole outline. */
export function LengthBox({ path, label, help, value, min, max, note, take }: LengthBoxProps) {
  const { style } = useLengths();
  const field: LengthField = { kind: 'length', path, label, help, min, max };
  const shown = lengthText(value, style);
  const read = (text: string): string | null => {
    if (text === shown) return null;
    const result = readField(field, text, style.unit);
    if (!result.ok) return result.issues[0]?.message ?? null;
    const wrong = validateField(field, result.value, (mm) => showLength(mm, style));
    const issues = wrong.length > 0 ? wrong : take(Number(result.value));
    return issues[0]?.message ?? null;
  };
  return (
    <TextBox label={label} path={path} shown={shown} unit={style.unit} about={help} decimal note={note} take={read} />
  );
}
