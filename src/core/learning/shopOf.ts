import type { Project } from '../document/types';
import { scaleOf } from '../instrument/scaleOf';
import type { Result } from '../result';
import { type Likeness, type NextOne, type Unlike, unlike } from './likeness';
import { type Outcome, outcomeOf } from './outcomeOf';

/** Why an instrument's readings are not among those that count. */
export type LeftAside = Unlike | 'unread' | 'failed' | 'copy';

/** This maker's instruments as they speak of the next one. */
export interface Shop {
  /** Those of like kind, the first one strung first. */
  readonly outcomes: readonly Outcome[];
  /** How many strung instruments are left aside, by the first reason. */
  readonly aside: Readonly<Partial<Record<LeftAside, number>>>;
}

type FindOutcome = (project: Project) => Result<Outcome>;

const judge = (project: Project, next: NextOne, likeness: Likeness, find: FindOutcome): Outcome | LeftAside => {
  const scale = scaleOf(project.instrument);
  if (!scale.ok) return 'failed';
  const reason = unlike(
    next,
    {
      id: project.id,
      parent: project.about.parent?.id ?? null,
      kind: project.height.kind,
      strings: project.strings,
      scaleLength: scale.value.scaleLength,
    },
    likeness,
  );
  if (reason !== null) return reason;
  const outcome = find(project);
  if (outcome.ok) return outcome.value;
  return outcome.issues.some(({ code }) => code === 'outcome.none') ? 'unread' : 'failed';
};

/**
 * The instruments among these projects that say something of the next one; models and instruments never strung are not told
 * of. find: `outcomeOf`, or what remembers its answers.
 */
export const shopOf = (
  projects: readonly Project[],
  next: NextOne,
  likeness: Likeness,
  find: FindOutcome = outcomeOf,
): Shop => {
  const outcomes = new Map<string, Outcome>();
  const aside: Partial<Record<LeftAside, number>> = {};
  const strung = projects
    .filter(({ build }) => (build?.stringUps.length ?? 0) > 0)
    .sort((one, other) => one.about.created.localeCompare(other.about.created));
  for (const project of strung) {
    const judged = judge(project, next, likeness, find);
    const reason = typeof judged === 'string' ? judged : outcomes.has(judged.stringUp) ? 'copy' : null;
    if (reason !== null) aside[reason] = (aside[reason] ?? 0) + 1;
    else if (typeof judged !== 'string') outcomes.set(judged.stringUp, judged);
  }
  return { outcomes: [...outcomes.values()].sort((one, other) => one.at.localeCompare(other.at)), aside };
};
