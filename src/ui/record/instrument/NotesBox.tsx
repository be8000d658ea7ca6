import { type KeyboardEvent, useId } from 'react';
import { useFieldAt } from '../../fields/FieldLookup';
import { useDraft } from '../../fields/useDraft';
import { useServices } from '../../services';
import { useStore } from '../../useStore';

const PATH = 'about.notes';

/** Room for words. Enter begins a new line; leaving the box, or Control and Enter, keeps them. */
export function NotesBox() {
  const { actions } = useServices().store;
  const project = useStore((state) => state.project);
  const field = useFieldAt()(project, PATH);
  const id = useId();
  const draft = useDraft(PATH, project.about.notes, (text) => {
    const issues = actions.setField(field, text.trimEnd());
    return issues[0]?.message ?? null;
  });
  if (field === null) return null;
  const press = (event: KeyboardEvent): void => {
    if (event.key === 'Enter' && !(event.ctrlKey || event.metaKey)) return;
    draft.press(event);
  };
  return (
    <div className="notes">
      <label htmlFor={id}>{field.label}</label>
      <textarea
        id={id}
        rows={4}
        value={draft.text}
        data-path={PATH}
        data-draft={draft.typing ? '' : undefined}
        aria-invalid={draft.wrong !== null}
        aria-describedby={`${id}-about${draft.wrong === null ? '' : ` ${id}-wrong`}`}
        onChange={({ target }) => draft.change(target.value)}
        onBlur={draft.leave}
        onKeyDown={press}
      />
      <span id={`${id}-about`} hidden>
        {field.help}
      </span>
      {draft.wrong !== null && (
        <p id={`${id}-wrong`} className="field-wrong">
          {draft.wrong}
        </p>
      )}
    </div>
  );
}
