import type { StringUp } from '../../../core/document/buildTypes';
import { plotChange } from '../../../core/drawing/plots/record/plotChange';
import { changeSinceFirst } from '../../../core/learning/changeSinceFirst';
import { fretsRead } from '../../../core/learning/readingsOf';
import { Picture } from '../../measure/Picture';
import { useStore } from '../../useStore';
import { signedCents } from '../../withSign';
import { dayWords } from '../whenWords';

/** Cents that a full bar stands for: about what a trained ear tells between two notes one after the other; from memory. */
const FULL_BAR = 5;
/** Later readings that are drawn: the last ones. */
const MOST_DRAWN = 6;

/** How the instrument moved since its first reading, as a picture and as a table; nothing while it was read once. */
export function SeasonsView({ stringUps }: { readonly stringUps: readonly StringUp[] }) {
  const strings = useStore(({ project }) => project.strings);
  const scale = useStore(({ derived }) => derived.scale);
  const [first, ...others] = stringUps.filter((each) => fretsRead(each).length > 0);
  if (first === undefined || others.length === 0 || !scale.ok) return null;
  const later = others.slice(-MOST_DRAWN);
  const names = strings.map(({ name }, index) => `${index + 1} ${name}`);
  const cents = strings.map(({ id }) =>
    later.map((each) => changeSinceFirst(first, each, id, scale.value.scaleLength)),
  );
  const short = later.map(({ at }) => dayWords(at).replace(/ \d{4}$/, ''));
  return (
    <>
      <Picture plot={plotChange({ strings: names, readings: short, cents }, FULL_BAR)} />
      <table className="figures loose small-figures" aria-label="Change since the first reading">
        <caption>
          Cents since {dayWords(first.at)} at the frets read both times, + sharper; what was filed between is taken off
        </caption>
        <thead>
          <tr>
            <th scope="col">Read on</th>
            {names.map((name) => (
              <th key={name} scope="col">
                {name}
              </th>
            ))}
            <th scope="col">humidity</th>
          </tr>
        </thead>
        <tbody>
          {later.map(({ id, at, humidity }, column) => (
            <tr key={id}>
              <th scope="row">{dayWords(at)}</th>
              {names.map((name, row) => {
                const change = cents[row]?.[column] ?? null;
                return <td key={name}>{change === null ? '–' : signedCents(change)}</td>;
              })}
              <td>{humidity === null ? '–' : `${humidity} %`}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </>
  );
}
