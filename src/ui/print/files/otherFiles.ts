import type { DrawingFormat } from '../../../core/ports';
import { CSV_STYLES, makeCsv } from '../../../exporters/csv/makeCsv';
import { placementRows } from '../../../exporters/csv/placementRows';
import { fileName } from '../../files/fileName';
import type { Services } from '../../services';
import { fileDrawing } from './fileDrawing';
import { whenWhole } from './whenWhole';

const TYPES = { svg: 'image/svg+xml', dxf: 'image/vnd.dxf', png: 'image/png' } as const;

const wordsOf = (issues: readonly { readonly message: string }[]): string =>
  [...new Set(issues.map(({ message }) => message))].join(' ');

/** The drawing and the placement numbers as files for other programs. Failures are told as alerts. */
export const otherFiles = ({ store, clock, files, workshop }: Services) => {
  const { actions, getState } = store;

  const made = (name: string, type: string, bytes: Uint8Array, words: string): void => {
    files.download(name, type, bytes);
    actions.say(`Downloaded ${name}. ${words}`);
  };

  return {
    async drawing(format: DrawingFormat): Promise<void> {
      const what = format.kind.toUpperCase();
      const { placement, issues } = getState().derived;
      if (!placement.ok) return actions.warn(`No ${what}. ${wordsOf(issues)}`);
      const [state, { makeDrawing }] = await Promise.all([whenWhole(store), workshop()]);
      if (state === null) return actions.warn(`No ${what}. A part of the drawing did not load. Reload the page.`);
      const bytes = await makeDrawing(fileDrawing(state, clock.today()), format);
      if (!bytes.ok) return actions.warn(`No ${what}. ${wordsOf(bytes.issues)}`);
      const name = fileName(state.project.about.name, 'drawing', format.kind);
      made(name, TYPES[format.kind], bytes.value, 'It is at true size, without a print correction.');
    },

    placement(style: keyof typeof CSV_STYLES): void {
      const { project, derived, device } = getState();
      const rows = placementRows(project, derived, { unit: device.units, date: clock.today() });
      if (!rows.ok) {
        actions.warn(`No CSV. ${wordsOf(rows.issues)}`);
        return;
      }
      const bytes = new TextEncoder().encode(makeCsv(rows.value, CSV_STYLES[style]));
      made(fileName(project.about.name, 'placement', 'csv'), 'text/csv', bytes, 'Its units stand in the first row.');
    },
  };
};
