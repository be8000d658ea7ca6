import type { Body } from '../../../core/document/bodyTypes';
import { centrePlate } from '../../../store/commands/body/centrePlate';
import { choosePlate } from '../../../store/commands/body/choosePlate';
import { markPlateFound } from '../../../store/commands/body/markPlateFound';
import { FieldRow } from '../../fields/FieldRow';
import { useStore } from '../../useStore';
import { useChange } from '../repair/useChange';
import { AlongRow } from './AlongRow';
import { SideRow } from './SideRow';
import { Tick } from './Tick';

const AT = 'body.plate';

/** The bridge plate beneath the top. */
export function PlateRows({ plate }: { readonly plate: Body['plate'] }) {
  const change = useChange();
  const pins = useStore((state) => state.project.bridge.pins !== null);
  const under = pins ? 'the pins' : 'the bridge';
  return (
    <>
      <Tick
        label="There is a bridge plate"
        on={plate !== null}
        change={(on) =>
          change(on ? 'Bridge plate: there is one' : 'Bridge plate: none', (project) => choosePlate(project, on))
        }
      />
      {plate !== null && (
        <>
          <AlongRow path={`${AT}.front`} />
          <SideRow path={`${AT}.aside`} />
          <FieldRow path={`${AT}.along`} />
          <FieldRow path={`${AT}.acrossFront`} />
          <FieldRow path={`${AT}.acrossBack`} />
          <FieldRow path={`${AT}.thickness`} />
          <Tick
            label="Plate found on this instrument"
            on={plate.read}
            change={(found) =>
              change(`Bridge plate: ${found ? 'found on this instrument' : 'not found yet'}`, (project) =>
                markPlateFound(project, found),
              )
            }
          />
          <div className="buttons">
            <button type="button" onClick={() => change(`Plate centred under ${under}`, centrePlate)}>
              Centre the plate under {under}
            </button>
          </div>
        </>
      )}
    </>
  );
}
