import { useState } from 'react';
import type { DrawnOutline } from '../../../core/document/outlineTypes';
import type { Project } from '../../../core/document/types';
import { pathBounds } from '../../../core/geom/pathBounds';
import type { Result } from '../../../core/result';
import { makeSymmetric } from '../../../store/commands/outline/makeSymmetric';
import { scaleOutline } from '../../../store/commands/outline/scaleOutline';
import { setSymmetric } from '../../../store/commands/outline/setSymmetric';
import { useServices } from '../../services';
import { LengthBox } from './LengthBox';

/** Sizes that an outline may have over all, mm. */
const SIZE = { least: 5, most: 500 } as const;

/** An outline drawn freely as a whole: its size over all, and whether both sides are alike. */
export function DrawnFields({ outline }: { readonly outline: DrawnOutline }) {
  const { actions } = useServices().store;
  const [proportional, setProportional] = useState(false);
  const { minX, maxX, minY, maxY } = pathBounds(outline.path);
  const run = (label: string, command: (project: Project) => Result<Project>): void => {
    const [issue] = actions.change(label, command);
    if (issue !== undefined) actions.warn(issue.message);
  };
  return (
    <>
      <LengthBox
        path="bridge.outline.length"
        label="Outline, over-all length"
        help="Across the strings. The whole outline is scaled to it; what is typed for one way leaves the other alone, unless both are kept in proportion."
        value={maxX - minX}
        min={SIZE.least}
        max={SIZE.most}
        take={(length) =>
          actions.change('Scale the outline to a length', (project) => scaleOutline(project, { length, proportional }))
        }
      />
      <LengthBox
        path="bridge.outline.width"
        label="Outline, over-all width"
        help="Along the strings. The whole outline is scaled to it."
        value={maxY - minY}
        min={SIZE.least}
        max={SIZE.most}
        take={(width) =>
          actions.change('Scale the outline to a width', (project) => scaleOutline(project, { width, proportional }))
        }
      />
      <label className="check">
        <input type="checkbox" checked={proportional} onChange={(event) => setProportional(event.target.checked)} />
        <span>Length and width in proportion</span>
      </label>
      <label className="check">
        <input
          type="checkbox"
          checked={outline.symmetric}
          onChange={(event) =>
            event.target.checked
              ? run('Both sides alike, as the treble side', (project) => makeSymmetric(project, 'treble'))
              : run('Each side by itself', (project) => setSymmetric(project, false))
          }
        />
        <span>Both sides alike about the centreline</span>
      </label>
      {!outline.symmetric && (
        <div className="button-row">
          <button
            type="button"
            onClick={() => run('Both sides alike, as the treble side', (project) => makeSymmetric(project, 'treble'))}
          >
            Make the bass side like the treble side
          </button>
          <button
            type="button"
            onClick={() => run('Both sides alike, as the bass side', (project) => makeSymmetric(project, 'bass'))}
          >
            Make the treble side like the bass side
          </button>
        </div>
      )}
    </>
  );
}
