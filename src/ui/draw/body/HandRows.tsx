import { bodyHand, isConverted } from '../../../core/body/bodyHand';
import type { Body } from '../../../core/document/bodyTypes';
import type { Hand } from '../../../core/document/types';
import { chooseBodyHand } from '../../../store/commands/body/chooseBodyHand';
import { swapSides } from '../../../store/commands/body/swapSides';
import { SelectRow } from '../../fields/SelectRow';
import { useStore } from '../../useStore';
import { useChange } from '../repair/useChange';

const HANDS = [
  { value: 'same', label: 'the same hand' },
  { value: 'right', label: 'the right hand' },
  { value: 'left', label: 'the left hand' },
] as const;

/** Which hand the body was built for. */
export function HandRows({ body }: { readonly body: Body }) {
  const change = useChange();
  const hand = useStore((state) => state.project.instrument.hand);
  const choose = (value: string): void => {
    const label = HANDS.find((each) => each.value === value)?.label ?? value;
    change(`Body built for ${label}`, (project) => chooseBodyHand(project, value === 'same' ? null : (value as Hand)));
  };
  return (
    <>
      <SelectRow
        label="Body built for"
        about="A body that was converted keeps its braces where they were built; strings and bridge change side without it."
        value={body.hand ?? 'same'}
        choices={HANDS}
        choose={choose}
      />
      {isConverted(body, hand) && (
        <p className="field-caution">
          Converted: built {bodyHand(body, hand)}-handed, strung {hand}-handed. Treble and bass of braces, plate and
          cutaway mean the sides of the body as it was built, the other way round from the strings. Left and right, as
          seen from the front, can be typed as well.
        </p>
      )}
      <div className="buttons">
        <button type="button" onClick={() => change('Bass and treble swapped beneath the top', swapSides)}>
          Swap bass and treble
        </button>
      </div>
    </>
  );
}
