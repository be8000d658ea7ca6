import type { SoleGaps } from '../../../core/document/soleTypes';
import { fineText } from '../../../core/drawing/sideView/fineText';
import type { SoleFit } from '../../../core/height/sole/soleTypes';
import { soleWords } from '../../../core/height/sole/soleWords';
import { useLengths } from '../../useLengths';
import { useStore } from '../../useStore';
import { useSide } from './useSide';

const NAMES: Readonly<Record<keyof SoleGaps, string>> = {
  bassTip: 'Bass tip',
  bassWing: 'Bass wing',
  centre: 'Centre',
  trebleWing: 'Treble wing',
  trebleTip: 'Treble tip',
};

/** How the sole lies on the top, and what sanding leaves. */
export function SoleTable() {
  const side = useSide();
  if (side === null || side.fit === null) return null;
  if (side.fit.ok) return <FitTable fit={side.fit.value} />;
  return side.fit.issues.map(({ path, code, message }) => (
    <p key={`${path} ${code}`} className="not-yet">
      Not computed: {message}
    </p>
  ));
}

function FitTable({ fit }: { readonly fit: SoleFit }) {
  const { withUnit, style } = useLengths();
  const sanding = useStore((state) => state.project.bridge.sole?.sanding ?? 0);
  const fine = (mm: number): string => fineText(mm, style.unit);
  const { thickness, woodUnder, lengthLoss, widthLoss } = fit.after;
  const shrinks = Math.max(lengthLoss, widthLoss) > 0;
  return (
    <>
      <div className="answer" aria-live="polite">
        {soleWords(fit).map((words) => (
          <p key={words}>{words}</p>
        ))}
      </div>
      <table className="figures loose small-figures" aria-label="Gaps under the sole">
        <thead>
          <tr>
            <th scope="col">{style.unit === 'mm' ? 'mm' : 'inches'}</th>
            <th scope="col">gap</th>
            <th scope="col">sand to fit</th>
          </tr>
        </thead>
        <tbody>
          {fit.points.map(({ name, gap, fit: sand }) => (
            <tr key={name}>
              <th scope="row">{NAMES[name]}</th>
              <td>{fine(gap)}</td>
              <td>{fine(sand)}</td>
            </tr>
          ))}
          <tr>
            <th scope="row">Front and back edge</th>
            <td>{fine(fit.edges)}</td>
            <td />
          </tr>
        </tbody>
      </table>
      <p>
        Fitted{sanding > 0 ? ` and sanded by ${withUnit(sanding)}` : ''}, the bridge is {withUnit(thickness)} thick at
        the slot with {withUnit(woodUnder)} of wood under it
        {shrinks
          ? `; its sloped sides cost ${fine(lengthLoss)} of the length and ${fine(widthLoss)} of the width.`
          : '.'}
      </p>
    </>
  );
}
