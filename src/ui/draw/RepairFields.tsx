import { chooseRepair } from '../../store/commands/repair/chooseRepair';
import { FieldGroup } from '../fields/FieldGroup';
import { useStore } from '../useStore';
import { RepairPanel } from './repair/RepairPanel';
import { useChange } from './repair/useChange';

/** The bridge that was here before. */
export function RepairFields() {
  const change = useChange();
  const repair = useStore((state) => state.project.repair);
  return (
    <FieldGroup title="Repair">
      <label className="check">
        <input
          type="checkbox"
          checked={repair !== null}
          onChange={({ target }) =>
            change(target.checked ? 'Repair: a bridge was here before' : 'Repair: new work', (project) =>
              chooseRepair(project, target.checked),
            )
          }
        />
        <span>There was a bridge here before</span>
      </label>
      {repair !== null && <RepairPanel repair={repair} />}
    </FieldGroup>
  );
}
