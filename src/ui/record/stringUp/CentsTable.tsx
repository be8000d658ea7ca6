import { Fragment, useId, useState } from 'react';
import type { StringUp } from '../../../core/document/buildTypes';
import { useStore } from '../../useStore';
import { CentsBox } from './CentsBox';

interface CentsTableProps {
  readonly stringUp: StringUp;
  readonly frets: readonly number[];
}

/** What the tuner said: one row a string, one column a fret. */
export function CentsTable({ stringUp, frets }: CentsTableProps) {
  const strings = useStore(({ project }) => project.strings);
  return (
    <table className="figures loose cents-read">
      <caption>Cents against the open string in tune: + sharp, − flat. Leave empty what was not read.</caption>
      <thead>
        <tr>
          <th scope="col">String</th>
          {frets.map((fret) => (
            <th key={fret} scope="col">
              {frets.length > 3 ? fret : `fret ${fret}`}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {strings.map(({ id, name }, index) => (
          <CentsRow key={id} stringUp={stringUp} string={{ id, label: `${index + 1} ${name}` }} frets={frets} />
        ))}
      </tbody>
    </table>
  );
}

interface CentsRowProps extends CentsTableProps {
  readonly string: { readonly id: string; readonly label: string };
}

function CentsRow({ stringUp, string, frets }: CentsRowProps) {
  const wrongId = useId();
  const [wrong, setWrong] = useState<Readonly<Record<number, string | null>>>({});
  const told = frets.flatMap((fret) => wrong[fret] ?? []);
  return (
    <Fragment>
      <tr>
        <th scope="row">{string.label}</th>
        {frets.map((fret) => (
          <td key={fret}>
            <CentsBox
              stringUp={stringUp.id}
              string={string}
              fret={fret}
              cents={stringUp.cents[string.id]?.[fret]}
              wrongId={wrongId}
              tell={(at, words) => setWrong((before) => ({ ...before, [at]: words }))}
            />
          </td>
        ))}
      </tr>
      <tr id={wrongId} hidden={told.length === 0}>
        <td colSpan={frets.length + 1}>
          {told.map((words) => (
            <p key={words} className="field-wrong">
              {words}
            </p>
          ))}
        </td>
      </tr>
    </Fragment>
  );
}
