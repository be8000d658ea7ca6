import type { WorksheetRow } from '../../../core/sheets/parts/worksheet/worksheetRows';

/** What is expected where a step takes readings, as on the printed worksheet. */
export function StepFigures({ rows }: { readonly rows: readonly WorksheetRow[] }) {
  const told = rows.flatMap((row) =>
    row.kind === 'readings'
      ? [{ label: row.label, figures: row.readings.filter(({ expected }) => expected !== null) }]
      : [],
  );
  const figures = told.filter((row) => row.figures.length > 0);
  const notes = rows.flatMap((row) => (row.kind === 'note' ? [row.text] : []));
  return (
    <>
      {figures.length > 0 && (
        <dl className="step-figures">
          {figures.map((row) => (
            <div key={row.label}>
              <dt>{row.label}</dt>
              {row.figures.map(({ name, expected }) => (
                <dd key={name}>
                  {name !== '' && <span>{name}</span>} <strong>{expected}</strong>
                </dd>
              ))}
            </div>
          ))}
        </dl>
      )}
      {notes.map((text) => (
        <p key={text} className="step-note">
          {text}
        </p>
      ))}
    </>
  );
}
