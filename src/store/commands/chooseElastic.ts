import { fieldAt } from '../../core/document/fieldAt';
import { fieldValue } from '../../core/document/fieldValue';
import type { Project, StringElastic } from '../../core/document/types';
import { validateField } from '../../core/document/validateField';
import { otherElastic } from '../../core/intonation/otherElastic';
import { fail, failed, ok, type Result } from '../../core/result';

/** A string from 0, and whether its stretch and bending come from its core or from a measurement; scale and open length, mm. */
export interface ChooseElastic {
  readonly index: number;
  readonly kind: StringElastic['kind'];
  readonly scaleLength: number;
  readonly openLength: number;
}

/**
 * The same string told by its core or by κ and B0; its compensation stays as it was until a figure is typed. Codes:
 * strings.unknown, elastic.none, and those of `validateField` when the core that answers to it is none that can be.
 */
export const chooseElastic = (
  project: Project,
  { index, kind, scaleLength, openLength }: ChooseElastic,
): Result<Project> => {
  const string = project.strings[index];
  if (string === undefined) return fail('strings', 'strings.unknown', 'There is no such string.');
  if (string.elastic.kind === kind) return ok(project);
  const elastic = otherElastic(string, scaleLength, openLength);
  if (!elastic.ok) return elastic;
  const strings = project.strings.map((each, place) => (place === index ? { ...each, elastic: elastic.value } : each));
  const changed: Project = { ...project, strings };
  const issues = ['coreDiameter', 'modulus', 'kappa', 'b0'].flatMap((name) => {
    const path = `strings.${index}.elastic.${name}`;
    const field = fieldAt(changed, path);
    return field === null ? [] : validateField(field, fieldValue(changed, path));
  });
  return issues.length > 0 ? failed(issues) : ok(changed);
};
