import type { Hand, Project } from '../../src/core/document/types';
import type { Item } from '../../src/core/drawing/types';
import { demoProject } from '../../src/core/kinds/demo';
import { makeDxf } from '../../src/exporters/dxf/makeDxf';
import { makeSvg } from '../../src/exporters/svg/makeSvg';
import { bodied, braceWith, plateWith } from '../core/body/bodyCase';
import { repairWith, rowWith, slotWith } from '../core/repair/formerCase';
import { unwrap } from '../exporters/pdf/unwrap';
import { handedProject, wholeDrawing } from '../exporters/wholeDrawing';
import { instrumentNamed } from '../readback/makeTemplate';
import { ITEMS } from '../reference/fileDrawing';

/** Drawings that the readers look at: the one made up by hand, and whole instruments of both hands. */
export const drawingsForReaders = async (): Promise<Readonly<Record<string, readonly Item[]>>> => {
  const projects = {
    demo: demoProject('demo', '2026-11-25T00:00:00Z'),
    classical: instrumentNamed('classical'),
    ukulele: instrumentNamed('ukulele'),
  };
  // Everything that a drawing can hold: what lies beneath, the bridge that was there, the finish under the rim.
  const demo = projects.demo;
  const full: Project = {
    ...bodied(demo, {
      braces: [braceWith({ from: { x: -60, y: 560 }, to: { x: 90, y: 700 } })],
      plate: plateWith(),
      soundhole: { centre: 480, across: 100, along: 80 },
      cutaway: { side: 'treble', aside: 40, end: 450 },
      wireHole: { at: { x: 30, y: 640 }, diameter: 3 },
    }),
    bridge: { ...demo.bridge, rim: 1.5 },
    repair: repairWith({ holes: rowWith(), slot: slotWith() }),
  };
  const drawings: Record<string, readonly Item[]> = { hand: ITEMS };
  for (const [name, project] of Object.entries({ ...projects, full }))
    for (const hand of ['right', 'left'] as const satisfies readonly Hand[])
      drawings[`${name}-${hand}`] = await wholeDrawing(handedProject(project, hand));
  return drawings;
};

export const svgOf = (items: readonly Item[]): string => unwrap(makeSvg({ title: 'A', description: 'B', items }));
export const dxfOf = (items: readonly Item[], version: '2007' | 'R12'): string => unwrap(makeDxf({ items }, version));
