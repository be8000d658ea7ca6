import { useMemo } from 'react';
import { drawSaddleBlank } from '../../../core/drawing/sideView/drawSaddleBlank';
import { fineText } from '../../../core/drawing/sideView/fineText';
import type { SaddleBlank } from '../../../core/height/sole/saddleBlank';
import { useLengths } from '../../useLengths';
import { useStore } from '../../useStore';
import { EditablePicture } from './EditablePicture';
import { useSide } from './useSide';

/** The saddle to cut, as a picture and in figures. */
export function BlankView() {
  const side = useSide();
  const hand = useStore((state) => state.project.instrument.hand);
  const { style } = useLengths();
  const blank = side?.blank.ok ? side.blank.value : null;
  const picture = useMemo(() => (blank === null ? null : drawSaddleBlank(blank, style, hand)), [blank, style, hand]);
  const problems = side === null || side.blank.ok || !side.heights.ok ? [] : side.blank.issues;
  return (
    <>
      {picture !== null && <EditablePicture picture={picture} />}
      {blank !== null && <BlankTable blank={blank} />}
      {problems.map(({ path, code, message }) => (
        <p key={`${path} ${code}`} className="not-yet">
          Not computed: {message}
        </p>
      ))}
    </>
  );
}

const offWords = (deviation: number): string =>
  deviation < 0.005 ? 'every string lies on it' : `no string lies farther off it than ${deviation.toFixed(2)} mm`;

function BlankTable({ blank }: { readonly blank: SaddleBlank }) {
  const board = useStore((state) => state.project.instrument.boardRadius);
  const { bare, withUnit, style } = useLengths();
  const { strings, length, thickness, highest, bassEnd, trebleEnd, top } = blank;
  return (
    <>
      <table className="figures loose small-figures" aria-label="Saddle by string">
        <thead>
          <tr>
            <th scope="col">String</th>
            <th scope="col">over the slot’s floor</th>
            <th scope="col">over the bridge</th>
          </tr>
        </thead>
        <tbody>
          {strings.map(({ id, name, aboveFloor, aboveBridge }, index) => (
            <tr key={id}>
              <th scope="row">
                {index + 1} {name}
              </th>
              <td>{bare(aboveFloor)}</td>
              <td>{bare(aboveBridge)}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <p>
        Blank {withUnit(length)} long, {fineText(thickness, style.unit)} thick, {withUnit(highest)} high; its ends{' '}
        {withUnit(trebleEnd)} at the treble and {withUnit(bassEnd)} at the bass.
      </p>
      <p>
        {top.radius === null
          ? 'Its top is straight.'
          : `Its top is one arc of ${withUnit(top.radius)}${board === null ? '' : `, the board’s radius is ${withUnit(board)}`}; ${offWords(top.deviation)}.`}
      </p>
    </>
  );
}
