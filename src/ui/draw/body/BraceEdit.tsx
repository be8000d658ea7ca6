import { bodyHand } from '../../../core/body/bodyHand';
import { braceName } from '../../../core/body/bodyPlace';
import { braceAcross } from '../../../core/body/braceGap';
import type { Body, Brace } from '../../../core/document/bodyTypes';
import { markBraceFound } from '../../../store/commands/body/markBraceFound';
import { mirrorBrace } from '../../../store/commands/body/mirrorBrace';
import { removeBrace } from '../../../store/commands/body/removeBrace';
import { FieldRow } from '../../fields/FieldRow';
import { useLengths } from '../../useLengths';
import { useStore } from '../../useStore';
import { useChange } from '../repair/useChange';
import { AlongRow } from './AlongRow';
import { bodySideWords } from './bodySideText';
import { SideRow } from './SideRow';
import { Tick } from './Tick';

interface BraceEditProps {
  readonly body: Body;
  readonly brace: Brace;
  readonly index: number;
}

/** Where the brace crosses lines of the bridge that can be laid with a square: another way to check a reading. */
function Crossings({ body, brace }: Omit<BraceEditProps, 'index'>) {
  const { bridge } = useStore((state) => state.derived);
  const instrument = useStore((state) => state.project.instrument.hand);
  const { withUnit } = useLengths();
  if (!bridge.ok) return null;
  const { front, pinRow } = bridge.value;
  const lines = [
    { name: 'the bridge’s front edge', y: front },
    ...(pinRow === null ? [] : [{ name: 'the pin row', y: pinRow }]),
  ];
  const told = lines.flatMap(({ name, y }) => {
    const x = braceAcross(brace, y);
    return x === null ? [] : [`At ${name} ${bodySideWords(x, bodyHand(body, instrument), withUnit)}`];
  });
  return told.length === 0 ? null : <p className="field-note">{told.join(' ')}</p>;
}

/** All of one brace. */
export function BraceEdit({ body, brace, index }: BraceEditProps) {
  const change = useChange();
  const name = braceName(brace, index);
  const at = `body.braces.${index}`;
  return (
    <fieldset className="brace" aria-label={`Brace ${index + 1}, ${name}`}>
      <FieldRow path={`${at}.name`} />
      <FieldRow path={`${at}.kind`} />
      <AlongRow path={`${at}.from.y`} />
      <SideRow path={`${at}.from.x`} />
      <AlongRow path={`${at}.to.y`} />
      <SideRow path={`${at}.to.x`} />
      <Crossings body={body} brace={brace} />
      <FieldRow path={`${at}.width`} />
      <FieldRow path={`${at}.height`} />
      <Tick
        label="Found on this instrument"
        on={brace.read}
        change={(found) =>
          change(`${name}: ${found ? 'found on this instrument' : 'not found yet'}`, (project) =>
            markBraceFound(project, brace.id, found),
          )
        }
      />
      <div className="buttons">
        <button
          type="button"
          onClick={() => change(`Mirror image of ${name} added`, (project) => mirrorBrace(project, brace.id))}
        >
          Add its mirror image
        </button>
        <button type="button" onClick={() => change(`${name} taken out`, (project) => removeBrace(project, brace.id))}>
          Take out {name}
        </button>
      </div>
    </fieldset>
  );
}
