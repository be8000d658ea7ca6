import { USUAL_DOUBTS } from '../../core/intonation/usualDoubts';
import { FieldRow } from '../fields/FieldRow';
import { More } from '../fields/More';
import { useLengths } from '../useLengths';
import { useStore } from '../useStore';
import { Sampling } from './Sampling';
import { WorthTable } from './WorthTable';

/** The doubt of every string's mark, what it comes from, and the same by sampling. */
export function WorthMore() {
  return (
    <>
      <WorthTable />
      <Sampling />
      <More summary="How far each figure may be off">
        <DoubtRows />
      </More>
    </>
  );
}

/** Doubts by figure; the maker's own or the usual. */
function DoubtRows() {
  const strings = useStore((state) => state.project.strings);
  const { style } = useLengths();
  const kinds = new Set(strings.flatMap(({ elastic }) => Object.keys(elastic)));
  const used = USUAL_DOUBTS.filter(
    ({ input }) =>
      kinds.has(input) ||
      (input === 'massPerLength' && kinds.has('coreDiameter')) ||
      !['coreDiameter', 'modulus', 'massPerLength', 'kappa', 'b0'].includes(input),
  );
  return (
    <>
      <p className="hint">
        One standard deviation: two readings in three lie within it{style.unit === 'in' ? '; these in mm' : ''}.
      </p>
      {used.map(({ input, sigma, relative, source }) => {
        const usual = relative ? `${sigma * 100} %` : String(sigma);
        return <FieldRow key={input} path={`doubts.${input}`} usual={usual} note={`Usual ${usual}: ${source}.`} />;
      })}
    </>
  );
}
