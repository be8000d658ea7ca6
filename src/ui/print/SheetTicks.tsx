import { useId } from 'react';
import type { Issue } from '../../core/result';
import { SHEET_KINDS, TAPE_DOWN } from '../../core/sheets/sheetKinds';
import { chooseSheet } from '../../store/commands/chooseSheet';
import { FieldGroup } from '../fields/FieldGroup';
import { useServices } from '../services';
import { useStore } from '../useStore';

interface SheetTicksProps {
  /** Why a chosen sheet is not among the pages, by the sheet's id. */
  readonly missing: readonly Issue[];
}

/** Which sheets to print, each with what it is for. */
export function SheetTicks({ missing }: SheetTicksProps) {
  return (
    <FieldGroup title="Sheets">
      {[TAPE_DOWN, ...SHEET_KINDS].map(({ id, name, about }) => (
        <SheetTick
          key={id}
          id={id}
          name={name}
          about={about}
          reason={missing.find(({ path }) => path === id)?.message ?? null}
        />
      ))}
    </FieldGroup>
  );
}

interface SheetTickProps {
  readonly id: string;
  readonly name: string;
  readonly about: string;
  readonly reason: string | null;
}

function SheetTick({ id, name, about, reason }: SheetTickProps) {
  const { actions } = useServices().store;
  const chosen = useStore((state) => state.project.sheets.chosen.includes(id));
  const note = useId();
  const choose = (wanted: boolean): void => {
    const what = name.toLowerCase();
    actions.change(wanted ? `Print the ${what}` : `Leave out the ${what}`, (project) =>
      chooseSheet(project, id, wanted),
    );
  };
  return (
    <div className="sheet-tick">
      <label className="check">
        <input
          type="checkbox"
          checked={chosen}
          aria-describedby={note}
          onChange={(event) => choose(event.target.checked)}
        />
        <span>{name}</span>
      </label>
      <p id={note} className="quiet">
        {about}
        {reason !== null && <span className="field-wrong"> Not among the pages: {reason}</span>}
      </p>
    </div>
  );
}
