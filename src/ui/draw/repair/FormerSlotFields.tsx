import type { FormerDatum, FormerSlot } from '../../../core/document/repairTypes';
import { chooseFormerDatum } from '../../../store/commands/repair/chooseFormerDatum';
import { chooseFormerSlot } from '../../../store/commands/repair/chooseFormerSlot';
import { FieldRow } from '../../fields/FieldRow';
import { SelectRow } from '../../fields/SelectRow';
import { useLengths } from '../../useLengths';
import { DATUMS } from './datums';
import { plainSide, sideWords, turnWords } from './sideText';
import { useChange } from './useChange';

const AT = 'repair.slot';

/** The slot of a bridge that stays, to be filled. */
export function FormerSlotFields({ slot }: { readonly slot: FormerSlot | null }) {
  const change = useChange();
  const { withUnit } = useLengths();
  return (
    <>
      <label className="check">
        <input
          type="checkbox"
          checked={slot !== null}
          onChange={({ target }) =>
            change(target.checked ? 'Old slot filled' : 'Old slot not filled', (project) =>
              chooseFormerSlot(project, target.checked),
            )
          }
        />
        <span>The bridge stays; its slot is filled and cut anew</span>
      </label>
      {slot !== null && (
        <>
          <SelectRow
            label="Old slot read from"
            path={`${AT}.from`}
            about="Changing it leaves the slot where it is."
            value={slot.from}
            choices={DATUMS}
            choose={(value) =>
              change(`Old slot read from: ${DATUMS.find((each) => each.value === value)?.label}`, (project) =>
                chooseFormerDatum(project, 'slot', value as FormerDatum),
              )
            }
          />
          <FieldRow path={`${AT}.distance`} />
          <FieldRow path={`${AT}.aside`} plain={plainSide} note={sideWords(slot.aside, withUnit)} />
          <FieldRow path={`${AT}.slant`} note={turnWords(slot.slant)} />
          <FieldRow path={`${AT}.length`} />
          <FieldRow path={`${AT}.width`} />
          <FieldRow path={`${AT}.depth`} />
          <FieldRow path={`${AT}.ends`} />
        </>
      )}
    </>
  );
}
