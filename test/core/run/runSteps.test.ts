import { describe, expect, it } from 'vitest';
import { nextStep } from '../../../src/core/run/nextStep';
import { runCase } from '../../../src/core/run/runCase';
import { runSteps } from '../../../src/core/run/runSteps';
import { chooseCutting } from '../../../src/store/commands/chooseCutting';
import { chooseRepair } from '../../../src/store/commands/repair/chooseRepair';
import { RUN_ADDED, RUN_ORDER } from '../../reference/run';
import { steelProject, steelWith } from '../document/steelProject';
import { valueOf as answerOf } from '../document/valueOf';

const plain = { repair: false, slotAfter: false, pins: true, holes: 2 };

/** The design's order with what a kind of work adds. */
const orderWith = (...added: readonly { readonly title: string; readonly before: string }[]): readonly string[] =>
  RUN_ORDER.flatMap((title) => [...added.filter(({ before }) => before === title).map((each) => each.title), title]);

const VARIANTS = [
  { repair: false, slotAfter: false, order: orderWith() },
  { repair: true, slotAfter: false, order: orderWith(...RUN_ADDED.repair) },
  { repair: false, slotAfter: true, order: orderWith(...RUN_ADDED.slotAfter) },
  { repair: true, slotAfter: true, order: orderWith(...RUN_ADDED.repair, ...RUN_ADDED.slotAfter) },
];

describe('the run', () => {
  it.each(VARIANTS)('keeps the order of the work, repair $repair, slot after gluing $slotAfter', (variant) => {
    const steps = runSteps({ ...plain, ...variant });
    expect(steps).toHaveLength(variant.order.length);
    for (const [index, words] of variant.order.entries()) expect(steps[index]?.title).toContain(words);
  });

  it.each(VARIANTS)('has each step by one name that a file keeps, repair $repair, slot after $slotAfter', (variant) => {
    const ids = runSteps({ ...plain, ...variant }).map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
    for (const id of ids) expect(id).toMatch(/^[a-z-]{3,40}$/);
  });

  it('is told by the project', () => {
    const repair = answerOf(chooseRepair(steelProject, true));
    const after = answerOf(chooseCutting(steelProject, true));
    expect(runCase(steelProject, 2)).toEqual(plain);
    expect(runCase(repair, 2)).toMatchObject({ repair: true, slotAfter: false });
    expect(runCase(after, 2)).toMatchObject({ repair: false, slotAfter: true });
    expect(runCase(steelWith({ bridge: { pins: null } }), 0)).toMatchObject({ pins: false, holes: 0 });
  });

  it('starts every clock and takes every reading where it belongs', () => {
    const steps = runSteps(plain);
    const at = (word: string): number => steps.findIndex(({ title }) => title.includes(word));
    expect(steps.flatMap(({ timers }) => timers)).toEqual(['open', 'closed', 'clamp', 'cure']);
    expect(steps[at('waxed pins')]?.timers).toEqual(['open', 'closed']);
    expect(steps.flatMap(({ round }) => round ?? [])).toEqual(['dry', 'taped', 'taped', 'wet', 'cured']);
    expect(steps[at('wet')]?.round).toBe('wet');
  });

  it('warns at knife, drill, clamp, heat and router', () => {
    const told = runSteps({ ...plain, repair: true, slotAfter: true });
    const of = (id: string): string => told.find((step) => step.id === id)?.cautions.join(' ') ?? '';
    expect(of('first-hole')).toContain('never with a hand inside');
    expect(of('finish')).toContain('cut away from the holding hand');
    expect(of('dry-run')).toContain('cracks braces');
    expect(of('old-off')).toContain('burns');
    expect(of('cut-slot')).toContain('both hands on the base');
    expect(of('cure')).toContain('No heat');
  });
});

describe('the next step', () => {
  const steps = runSteps(plain);
  const at = '2026-03-01T09:00:00.000Z';

  it('is the first that is not ticked', () => {
    expect(nextStep(steps, {})?.id).toBe('neck');
    expect(nextStep(steps, { neck: at, braces: at })?.id).toBe('sole');
    expect(nextStep(steps, { braces: at })?.id).toBe('neck');
    expect(nextStep(steps, Object.fromEntries(steps.map(({ id }) => [id, at])))).toBeNull();
  });

  it('does not mind ticks of another kind of work', () => {
    expect(nextStep(steps, { 'old-off': at })?.id).toBe('neck');
  });
});
