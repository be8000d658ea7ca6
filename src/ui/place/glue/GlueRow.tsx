import { fieldAt } from '../../../core/document/fieldAt';
import { fieldValue } from '../../../core/document/fieldValue';
import { setGlueField } from '../../../store/commands/glue/setGlueField';
import { TextBox } from '../../fields/TextBox';
import { useServices } from '../../services';
import { useLengths } from '../../useLengths';
import { useStore } from '../../useStore';
import { glueText, glueUnit, readGlue } from './glueText';

interface GlueRowProps {
  readonly path: string;
  readonly label?: string;
  /** Stands in an empty box. */
  readonly usual?: string | undefined;
  readonly note?: string | undefined;
}

/** A field of glue, air or grain: typing it begins what holds it. */
export function GlueRow({ path, label, usual, note }: GlueRowProps) {
  const { actions } = useServices().store;
  const project = useStore((state) => state.project);
  const { style } = useLengths();
  const field = fieldAt(project, path);
  if (field === null) return null;
  const shown = glueText(field, fieldValue(project, path), style);
  const take = (text: string): string | null => {
    if (text === shown) return null;
    const read = readGlue(field, text, style);
    if (!read.ok) return read.issues[0]?.message ?? null;
    const said = glueText(field, read.value, style);
    const step = said === '' ? `${field.label} cleared` : `${field.label} ${said}`;
    const [issue] = actions.change(step, (before) => setGlueField(before, field, read.value));
    return issue?.message ?? null;
  };
  const about = field.source === undefined ? field.help : `${field.help} Source: ${field.source}.`;
  return (
    <TextBox
      label={label ?? field.label}
      path={path}
      shown={shown}
      unit={glueUnit(field, style)}
      about={about}
      decimal={field.kind !== 'text'}
      usual={usual}
      note={note}
      take={take}
    />
  );
}
