import type { ExpectedString } from '../../../core/learning/whatToExpect';
import { fine, signedFine } from '../../draw/repair/fineLengths';
import { useLengths } from '../../useLengths';

interface FoundTablesProps {
  readonly strings: readonly ExpectedString[];
}

/** What was found, before anything is made of it. */
export function FoundTable({ strings }: FoundTablesProps) {
  const { unit } = useLengths().style;
  const signed = (mm: number): string => signedFine(mm, unit);
  return (
    <table className="figures loose small-figures" aria-label="Found against the model">
      <caption>Found less predicted, {unit}: + farther from the nut than the model says</caption>
      <thead>
        <tr>
          <th scope="col">String</th>
          <th scope="col">mean</th>
          <th scope="col">range</th>
          <th scope="col">count</th>
        </tr>
      </thead>
      <tbody>
        {strings.map(({ id, name, next }, index) => (
          <tr key={id}>
            <th scope="row">
              {index + 1} {name}
            </th>
            <td>{next === null ? '–' : signed(next.mean)}</td>
            <td>{next === null ? '–' : `${signed(next.low)} to ${signed(next.high)}`}</td>
            <td>{next?.count ?? 0}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

/** What to expect of the next one. */
export function ExpectedTable({ strings }: FoundTablesProps) {
  const { unit } = useLengths().style;
  const bare = (mm: number): string => fine(mm, unit);
  const signed = (mm: number): string => signedFine(mm, unit);
  return (
    <table className="figures loose small-figures" aria-label="What to expect of the next one">
      <caption>
        To add to the model, {unit}, drawn toward 0 by the share in brackets as long as few instruments speak; the next
        one lies within ± in 19 cases of 20
      </caption>
      <thead>
        <tr>
          <th scope="col">String</th>
          <th scope="col">model</th>
          <th scope="col">learned</th>
          <th scope="col">wants</th>
          <th scope="col">±</th>
        </tr>
      </thead>
      <tbody>
        {strings.map(({ id, name, model, next }, index) => (
          <tr key={id}>
            <th scope="row">
              {index + 1} {name}
            </th>
            <td>{bare(model)}</td>
            <td>{next === null ? '–' : `${signed(next.estimate)} (${Math.round((1 - next.factor) * 100)} %)`}</td>
            <td>{bare(model + (next?.estimate ?? 0))}</td>
            <td>{next === null ? '–' : bare(next.doubt)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
