import type { Body } from '../../../core/document/bodyTypes';
import { chooseCutaway } from '../../../store/commands/body/chooseCutaway';
import { chooseSoundhole } from '../../../store/commands/body/chooseSoundhole';
import { chooseWireHole } from '../../../store/commands/body/chooseWireHole';
import { FieldRow } from '../../fields/FieldRow';
import { useChange } from '../repair/useChange';
import { AlongRow } from './AlongRow';
import { ReachTable } from './ReachTable';
import { SideRow } from './SideRow';
import { Tick } from './Tick';

/** Soundhole, cutaway, and the hole for a pickup's wire. */
export function HoleRows({ body: { soundhole, cutaway, wireHole } }: { readonly body: Body }) {
  const change = useChange();
  return (
    <>
      <h3>Soundhole</h3>
      <Tick
        label="There is a soundhole ahead of the bridge"
        on={soundhole !== null}
        change={(on) =>
          change(on ? 'Soundhole: there is one' : 'Soundhole: none', (project) => chooseSoundhole(project, on))
        }
      />
      {soundhole !== null && (
        <>
          <AlongRow path="body.soundhole.centre" />
          <FieldRow path="body.soundhole.across" />
          <FieldRow path="body.soundhole.along" usual="round" />
          <ReachTable />
        </>
      )}
      <h3>Pickup wire hole</h3>
      <Tick
        label="A wire goes down through the slot"
        on={wireHole !== null}
        change={(on) =>
          change(on ? 'Wire hole: there is one' : 'Wire hole: none', (project) => chooseWireHole(project, on))
        }
      />
      {wireHole !== null && (
        <>
          <AlongRow path="body.wireHole.at.y" />
          <SideRow path="body.wireHole.at.x" />
          <FieldRow path="body.wireHole.diameter" />
        </>
      )}
      <h3>Cutaway</h3>
      <Tick
        label="The body has a cutaway"
        on={cutaway !== null}
        change={(on) => change(on ? 'Cutaway: there is one' : 'Cutaway: none', (project) => chooseCutaway(project, on))}
      />
      {cutaway !== null && (
        <>
          <FieldRow path="body.cutaway.side" />
          <FieldRow path="body.cutaway.aside" />
          <AlongRow path="body.cutaway.end" />
        </>
      )}
    </>
  );
}
