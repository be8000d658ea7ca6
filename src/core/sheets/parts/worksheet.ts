import { failed, ok, type Result } from '../../result';
import { runCase } from '../../run/runCase';
import { runSteps } from '../../run/runSteps';
import type { RunBlock } from '../../run/types';
import { partOfItems } from './items/partOfItems';
import type { SheetContext, SheetKind, SheetPart } from './types';
import { stepRows } from './worksheet/stepRows';
import { worksheetItems } from './worksheet/worksheetItems';
import { note, type WorksheetRow } from './worksheet/worksheetRows';

const BLOCKS: Readonly<Record<RunBlock, string>> = {
  ready: 'make ready',
  place: 'place',
  drill: 'drill, clear, try dry',
  glue: 'glue',
  cut: 'cut the slot, string',
};

/** The run of the work, in blocks of half a page; steps that were ticked on the screen are ticked. Codes: those of the placement. */
const make = (context: SheetContext): Result<readonly SheetPart[]> => {
  const { project, derived } = context;
  const { placement, bridge } = derived;
  if (!placement.ok || !bridge.ok) return failed(derived.issues);
  const holes = bridge.value.locating.length;
  const rows = stepRows(context, placement.value, holes);
  const ticked = project.build?.steps ?? {};
  const steps = runSteps(runCase(project, holes)).map((step, index) => {
    const told: readonly WorksheetRow[] = [
      { kind: 'step', text: `${index + 1} ${step.title}`, ticked: ticked[step.id] !== undefined },
      ...(rows[step.id] ?? []),
      ...step.cautions.map((caution) => note(`CAUTION. ${caution}`)),
    ];
    return { block: step.block, told };
  });
  const ids = [...new Set(steps.map(({ block }) => block))];
  return ok(
    ids.map((id) =>
      partOfItems(
        `worksheet-${id}`,
        `Worksheet: ${BLOCKS[id]} · ${project.instrument.hand} hand`,
        worksheetItems(steps.filter(({ block }) => block === id).flatMap(({ told }) => told)),
      ),
    ),
  );
};

/** The bench worksheet. */
export const worksheet: SheetKind = {
  id: 'worksheet',
  name: 'Bench worksheet',
  about:
    'The run of the work, with boxes to tick, figures to expect and blanks for what you read; steps ticked on Place are ticked.',
  make,
};
