import { FIELDS } from '../../core/document/fieldTable';
import { SHAPE_NAMES } from '../../core/document/shapeNames';
import { SHAPE_PARAMETERS } from '../../core/document/shapeParameters';
import type { ShapeName } from '../../core/document/types';
import { chooseShape } from '../../store/commands/chooseShape';
import { FieldGroup } from '../fields/FieldGroup';
import { FieldRow } from '../fields/FieldRow';
import { SelectRow } from '../fields/SelectRow';
import { ImportButton } from '../import/ImportButton';
import { useServices } from '../services';
import { useStore } from '../useStore';
import { DrawnFields } from './outline/DrawnFields';
import { EditFreely } from './outline/EditFreely';
import { ShapePreview } from './ShapePreview';

const SHAPE_FIELD = FIELDS.draw.find(({ path }) => path === 'bridge.outline.shape');
const SHAPES = SHAPE_FIELD?.kind === 'choice' ? SHAPE_FIELD.choices : [];
const DRAWN = { value: 'drawn', label: 'Drawn freely' };

/** The shape of the bridge, by its dimensions or drawn freely. */
export function OutlineFields() {
  const { actions } = useServices().store;
  const outline = useStore((state) => state.project.bridge.outline);
  const drawn = outline.kind === 'drawn';
  const choose = (value: string): void => {
    const shape = value as ShapeName;
    const label = `Bridge shape: ${SHAPE_NAMES[shape].toLowerCase()}`;
    if (value !== DRAWN.value) actions.change(label, (project) => chooseShape(project, shape));
  };
  return (
    <FieldGroup title="Bridge">
      <SelectRow
        label="Bridge shape"
        path="bridge.outline.shape"
        about={SHAPE_FIELD?.help ?? ''}
        value={drawn ? DRAWN.value : outline.shape}
        choices={drawn ? [...SHAPES, DRAWN] : SHAPES}
        choose={choose}
      />
      <ShapePreview />
      <ImportButton />
      {outline.kind === 'drawn' ? (
        <DrawnFields outline={outline} />
      ) : (
        <>
          {SHAPE_PARAMETERS[outline.shape].map(({ path }) => (
            <FieldRow key={path} path={path} />
          ))}
          <EditFreely />
        </>
      )}
      <FieldRow path="bridge.thickness" />
    </FieldGroup>
  );
}
