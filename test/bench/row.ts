/** One line of the table: what was measured, beside its budget. */
export interface Row {
  readonly what: string;
  /** With its unit; a reason where there is no figure. */
  readonly measured: string;
  /** Empty where none is set. */
  readonly budget: string;
  readonly over: boolean;
  readonly note: string;
}

const show = (value: number): string => value.toFixed(value < 1 ? 3 : value < 10 ? 2 : value < 100 ? 1 : 0);

const joined = (values: readonly number[], unit: string): string => `${values.map(show).join(' / ')} ${unit}`;

/** A line of one or more figures in one unit, each against the limit at the same place; no limits: no budget. */
export const row = (
  what: string,
  unit: string,
  values: readonly number[],
  limits: readonly number[],
  note = '',
): Row => ({
  what,
  measured: joined(values, unit),
  budget: limits.length === 0 ? '' : `${limits.join(' / ')} ${unit}`,
  // Written so that a figure that is no number counts as over.
  over: limits.some((limit, index) => !((values[index] ?? Number.NaN) <= limit)),
  note,
});

/** A line that says why there is no figure. */
export const notMeasured = (what: string, reason: string): Row => ({
  what,
  measured: `not measured: ${reason}`,
  budget: '',
  over: false,
  note: '',
});

/** The lines as text in columns, those over budget marked at their front. */
export function formatRows(rows: readonly Row[]): string {
  const titles = { what: 'what', measured: 'measured', budget: 'budget', over: false, note: '' };
  const lines = [titles, ...rows];
  const widest = (of: (line: Row) => string): number => Math.max(...lines.map((line) => of(line).length));
  const [what, measured, budget] = [
    widest((line) => line.what),
    widest((line) => (line.measured.startsWith('not measured') ? '' : line.measured)),
    widest((line) => line.budget),
  ];
  return lines
    .map((line) =>
      [
        line.over ? 'OVER' : '    ',
        line.what.padEnd(what),
        line.measured.padStart(measured),
        line.budget.padStart(budget),
        line.note,
      ]
        .join('  ')
        .trimEnd(),
    )
    .join('\n');
}
