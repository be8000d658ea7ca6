import { lengthField } from '../../../core/document/fieldRows';
import type { Likeness } from '../../../core/learning/likeness';
import { SelectRow } from '../../fields/SelectRow';
import { ValueBox } from '../stringUp/ValueBox';

const STRINGS = [
  { value: 'gauges', label: 'the same gauges' },
  { value: 'pitches', label: 'the same pitches' },
  { value: 'count', label: 'as many strings' },
] as const;
const MODELS = [
  { value: 'any', label: 'any model' },
  { value: 'same', label: 'this model alone' },
] as const;

interface LikenessFieldsProps {
  readonly likeness: Likeness;
  readonly change: (likeness: Likeness) => void;
}

/** Which instruments are of like kind: narrower or wider, for this visit. */
export function LikenessFields({ likeness, change }: LikenessFieldsProps) {
  return (
    <>
      <ValueBox
        field={lengthField(
          'learned.scaleWithin',
          'Scale within ±',
          0,
          300,
          'Instruments whose scale differs by more do not count.',
          'common practice, no source',
        )}
        value={likeness.scaleWithin}
        take={(value) => {
          change({ ...likeness, scaleWithin: Number(value) });
          return [];
        }}
      />
      <SelectRow
        label="Strings alike"
        about="Gauges within half a thousandth of an inch, pitches within half a semitone."
        value={likeness.strings}
        choices={STRINGS}
        choose={(value) => change({ ...likeness, strings: value as Likeness['strings'] })}
      />
      <SelectRow
        label="Made from"
        about="A bridge, a top and a maker’s hand differ less within one model."
        value={likeness.model}
        choices={MODELS}
        choose={(value) => change({ ...likeness, model: value as Likeness['model'] })}
      />
    </>
  );
}
