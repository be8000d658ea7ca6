import { Fragment } from 'react';
import type { Difference } from '../../../core/library/difference';
import { useLengths } from '../../useLengths';
import { differenceText } from './differenceText';

interface DifferenceTableProps {
  readonly differences: readonly Difference[];
  readonly names: readonly [string, string];
}

/** Differences by the part that they belong to, with both values. */
export function DifferenceTable({ differences, names }: DifferenceTableProps) {
  const { style } = useLengths();
  if (differences.length === 0) return <p>Nothing differs but their dates and names in the library.</p>;
  const parts = [...new Set(differences.map(({ part }) => part))];
  return (
    <table className="figures loose differences">
      <caption>{differences.length === 1 ? '1 difference' : `${differences.length} differences`}</caption>
      <thead>
        <tr>
          <th scope="col">What</th>
          <th scope="col">{names[0]}</th>
          <th scope="col">{names[1]}</th>
        </tr>
      </thead>
      {parts.map((part) => (
        <Fragment key={part}>
          <tbody>
            <tr className="group">
              <th colSpan={3} scope="rowgroup">
                {part}
              </th>
            </tr>
            {differences
              .filter((difference) => difference.part === part)
              .map((difference) => (
                <tr key={difference.path}>
                  <th scope="row">{difference.label}</th>
                  <td>{differenceText(difference, difference.one, style)}</td>
                  <td>{differenceText(difference, difference.other, style)}</td>
                </tr>
              ))}
          </tbody>
        </Fragment>
      ))}
    </table>
  );
}
