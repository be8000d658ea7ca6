import { fieldAt } from '../../../core/document/fieldAt';
import { fieldValue } from '../../../core/document/fieldValue';
import { parseLength } from '../../../core/units/parseLength';
import { fieldText } from '../../../store/fieldText';
import { TextBox } from '../../fields/TextBox';
import { useServices } from '../../services';
import { useLengths } from '../../useLengths';
import { useStore } from '../../useStore';
import { alongWords, plainAlong } from './alongText';
import { useAlong } from './useAlong';

/** A place along the centreline: saved from the nut, shown and typed from what the maker reads it from. */
export function AlongRow({ path }: { readonly path: string }) {
  const { actions } = useServices().store;
  const project = useStore((state) => state.project);
  const { style, withUnit } = useLengths();
  const { from, line } = useAlong();
  const field = fieldAt(project, path);
  const y = fieldValue(project, path);
  if (field?.kind !== 'length' || typeof y !== 'number') return null;
  const shown = fieldText(field, y - line, style);
  const take = (text: string): string | null => {
    if (text === shown) return null;
    const read = parseLength(plainAlong(text), style.unit);
    if (!read.ok) return read.issues[0]?.message ?? null;
    const [issue] = actions.setField(field, read.value + line);
    if (issue?.code !== 'field.range') return issue?.message ?? null;
    return `${field.label} goes from ${withUnit(field.min - line)} to ${withUnit(field.max - line)}.`;
  };
  const signs =
    from === 'nut' ? '' : ' Plus, or the word behind, toward the tail; minus, or the word ahead, toward the nut.';
  return (
    <TextBox
      label={field.label}
      path={path}
      shown={shown}
      unit={style.unit}
      about={`${field.help}${signs}`}
      decimal
      note={alongWords(y, from, line, withUnit) || undefined}
      take={take}
    />
  );
}
