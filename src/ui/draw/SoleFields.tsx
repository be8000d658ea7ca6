import { useState } from 'react';
import { chooseSole } from '../../store/commands/sole/chooseSole';
import { FieldGroup } from '../fields/FieldGroup';
import { useServices } from '../services';
import { useStore } from '../useStore';
import { SectionView } from './sideView/SectionView';
import { SideDialog } from './sideView/SideDialog';
import { SoleRows } from './sideView/SoleRows';
import { SoleTable } from './sideView/SoleTable';
import './sideView/side.css';

/** The sole on the top, and the bridge from the side. */
export function SoleFields() {
  const { actions } = useServices().store;
  const told = useStore((state) => state.project.bridge.sole !== null);
  const [large, setLarge] = useState(false);
  const choose = (wanted: boolean): void => {
    const issues = actions.change(wanted ? 'Sole and top: fitted' : 'Sole and top: left out', (project) =>
      chooseSole(project, wanted),
    );
    if (issues[0] !== undefined) actions.warn(issues[0].message);
  };
  return (
    <FieldGroup title="Sole and side">
      <label className="check">
        <input type="checkbox" checked={told} onChange={(event) => choose(event.target.checked)} />
        <span>Fit the sole to the top</span>
      </label>
      {!large && (
        <>
          <SoleRows />
          <SoleTable />
          <SectionView />
        </>
      )}
      <button type="button" onClick={() => setLarge(true)}>
        Side view and saddle …
      </button>
      {large && <SideDialog closed={() => setLarge(false)} />}
    </FieldGroup>
  );
}
