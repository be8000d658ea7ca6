import type { FormerDatum, FormerHoles } from '../../../core/document/repairTypes';
import { addFormerHole } from '../../../store/commands/repair/addFormerHole';
import { chooseFormerDatum } from '../../../store/commands/repair/chooseFormerDatum';
import { chooseFormerHoles } from '../../../store/commands/repair/chooseFormerHoles';
import { removeFormerHole } from '../../../store/commands/repair/removeFormerHole';
import { FieldRow } from '../../fields/FieldRow';
import { SelectRow } from '../../fields/SelectRow';
import { useLengths } from '../../useLengths';
import { DATUMS } from './datums';
import { plainSide, sideWords, turnWords } from './sideText';
import { useChange } from './useChange';

const KINDS = [
  { value: 'none', label: 'not spoken of' },
  { value: 'row', label: 'in an even row' },
  { value: 'each', label: 'each by its own place' },
] as const;

const AT = 'repair.holes';

/** The pin holes that are in the top. */
export function FormerHoleFields({ holes }: { readonly holes: FormerHoles | null }) {
  const change = useChange();
  const { withUnit } = useLengths();
  const kind = holes?.kind ?? 'none';
  const label = (value: string): string => KINDS.find((each) => each.value === value)?.label ?? value;
  return (
    <>
      <SelectRow
        label="Old pin holes"
        value={kind}
        choices={KINDS}
        choose={(value) =>
          change(`Old pin holes: ${label(value)}`, (project) =>
            chooseFormerHoles(project, value as (typeof KINDS)[number]['value']),
          )
        }
      />
      {holes !== null && (
        <SelectRow
          label="Old holes read from"
          path={`${AT}.from`}
          about="Changing it leaves the holes where they are."
          value={holes.from}
          choices={DATUMS}
          choose={(value) =>
            change(`Old holes read from: ${DATUMS.find((each) => each.value === value)?.label}`, (project) =>
              chooseFormerDatum(project, 'holes', value as FormerDatum),
            )
          }
        />
      )}
      {holes?.kind === 'row' && (
        <>
          <FieldRow path={`${AT}.count`} />
          <FieldRow path={`${AT}.spread`} />
          <FieldRow path={`${AT}.distance`} />
          <FieldRow path={`${AT}.aside`} plain={plainSide} note={sideWords(holes.aside, withUnit)} />
          <FieldRow path={`${AT}.slant`} note={turnWords(holes.slant)} />
          <FieldRow path={`${AT}.stagger`} />
          <FieldRow path={`${AT}.diameter`} />
        </>
      )}
      {holes?.kind === 'each' && (
        <>
          {holes.each.map(({ id, x }, index) => (
            <fieldset key={id} className="old-hole" aria-label={`Old hole ${index + 1}`}>
              <FieldRow path={`${AT}.each.${index}.x`} plain={plainSide} note={sideWords(x, withUnit)} />
              <FieldRow path={`${AT}.each.${index}.y`} />
              <FieldRow path={`${AT}.each.${index}.diameter`} />
              <button
                type="button"
                onClick={() => change(`Old hole ${index + 1} taken out`, (project) => removeFormerHole(project, id))}
              >
                Take out old hole {index + 1}
              </button>
            </fieldset>
          ))}
          <div className="buttons">
            <button type="button" onClick={() => change('One old hole more', addFormerHole)}>
              One old hole more
            </button>
          </div>
        </>
      )}
    </>
  );
}
