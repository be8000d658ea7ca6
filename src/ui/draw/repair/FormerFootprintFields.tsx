import { lazy, Suspense, useState } from 'react';
import type { FormerFootprint } from '../../../core/document/repairTypes';
import { SHAPE_NAMES } from '../../../core/document/shapeNames';
import { SHAPE_PARAMETERS } from '../../../core/document/shapeParameters';
import type { ShapeName } from '../../../core/document/types';
import { chooseFormerShape } from '../../../store/commands/repair/chooseFormerShape';
import { chooseRepair } from '../../../store/commands/repair/chooseRepair';
import { takeFormerOutline } from '../../../store/commands/repair/takeFormerOutline';
import { FieldRow } from '../../fields/FieldRow';
import { SelectRow } from '../../fields/SelectRow';
import { useServices } from '../../services';
import { useLengths } from '../../useLengths';
import { plainSide, sideWords, turnWords } from './sideText';
import { useChange } from './useChange';
import { useOpenModel } from './useOpenModel';

const ImportDialog = lazy(async () => ({ default: (await import('../../import/ImportDialog')).ImportDialog }));

const SHAPES = Object.entries(SHAPE_NAMES).map(([value, label]) => ({ value, label }));
const DRAWN = { value: 'drawn', label: 'From a file or drawn' };
const AT = 'repair.footprint';

/** Where the outline in the finish comes from, its dimensions, and where it lies. */
export function FormerFootprintFields({ footprint }: { readonly footprint: FormerFootprint }) {
  const { actions } = useServices().store;
  const change = useChange();
  const openModel = useOpenModel();
  const { withUnit } = useLengths();
  const [importing, setImporting] = useState(false);
  const { outline, aside, turn } = footprint;
  const drawn = outline.kind === 'drawn';
  const choose = (value: string): void => {
    const shape = value as ShapeName;
    if (value !== DRAWN.value)
      change(`Old bridge shape: ${SHAPE_NAMES[shape].toLowerCase()}`, (project) => chooseFormerShape(project, shape));
  };
  return (
    <>
      <div className="buttons repair-from">
        <button
          type="button"
          onClick={() => change('Old bridge as drawn now', (project) => chooseRepair(project, true))}
        >
          As the bridge drawn now
        </button>
        <button type="button" onClick={() => setImporting(true)}>
          Import the old outline
        </button>
        <button type="button" onClick={openModel}>
          Old bridge from a project file
        </button>
      </div>
      {importing && (
        <Suspense fallback={null}>
          <ImportDialog
            take={(path) => actions.change('Old outline from a file', (project) => takeFormerOutline(project, path))}
            closed={() => setImporting(false)}
          />
        </Suspense>
      )}
      <SelectRow
        label="Old bridge shape"
        path={`${AT}.outline.shape`}
        about="The outline that shows in the finish; choosing a shape brings its usual dimensions."
        value={drawn ? DRAWN.value : outline.shape}
        choices={drawn ? [...SHAPES, DRAWN] : SHAPES}
        choose={choose}
      />
      {!drawn &&
        SHAPE_PARAMETERS[outline.shape].map(({ name }) => (
          <FieldRow key={`${outline.shape} ${name}`} path={`${AT}.outline.parameters.${name}`} />
        ))}
      <FieldRow path={`${AT}.front`} />
      <FieldRow path={`${AT}.aside`} plain={plainSide} note={sideWords(aside, withUnit)} />
      <FieldRow path={`${AT}.turn`} note={turnWords(turn)} />
    </>
  );
}
