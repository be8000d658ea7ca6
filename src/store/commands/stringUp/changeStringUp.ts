import type { StringUp } from '../../../core/document/buildTypes';
import { LONGEST_METER, LONGEST_NOTE, STRING_UP_LIMITS } from '../../../core/document/stringUpLimits';
import type { Project } from '../../../core/document/types';
import { failed, type Issue, issue, ok, type Result } from '../../../core/result';
import { withStringUp } from './withStringUp';

/** What else is said of a string-up. */
export type StringUpChange = Partial<
  Pick<StringUp, 'at' | 'stage' | 'crown' | 'stood' | 'tuner' | 'action' | 'relief' | 'humidity' | 'meter' | 'note'>
>;

const problems = ({ stood, tuner, action, relief, humidity, meter, note }: StringUp): readonly Issue[] => {
  const within = (name: string, value: number | null, [least, most]: readonly [number, number], unit: string) =>
    value === null || (value >= least && value <= most)
      ? []
      : [issue('build.stringUps', 'stringUp.range', `${name} goes from ${least} to ${most} ${unit}.`)];
  const longest = (name: string, text: string, most: number) =>
    text.length <= most ? [] : [issue('build.stringUps', 'stringUp.long', `${name} holds ${most} characters at most.`)];
  return [
    ...Object.values(stood).flatMap((setback) => within('A break point', setback, STRING_UP_LIMITS.setback, 'mm')),
    ...within('The tuner’s ±', tuner, STRING_UP_LIMITS.tuner, 'cents'),
    ...within('Action', action.treble, STRING_UP_LIMITS.action, 'mm'),
    ...within('Action', action.bass, STRING_UP_LIMITS.action, 'mm'),
    ...within('Neck relief', relief, STRING_UP_LIMITS.relief, 'mm'),
    ...within('Humidity', humidity, STRING_UP_LIMITS.humidity, '%'),
    ...longest('The meter’s name', meter, LONGEST_METER),
    ...longest('A note', note, LONGEST_NOTE),
  ];
};

/** The string-up with this changed. Codes: stringUp.unknown, stringUp.range, stringUp.long. */
export const changeStringUp = (project: Project, id: string, change: StringUpChange): Result<Project> =>
  withStringUp(project, id, (before) => {
    const after = { ...before, ...change };
    const wrong = problems(after);
    return wrong.length > 0 ? failed(wrong) : ok(after);
  });
