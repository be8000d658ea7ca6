import type { Project } from '../../../core/document/types';
import { historyRows } from '../../../exporters/csv/historyRows';
import { CSV_STYLES, makeCsv } from '../../../exporters/csv/makeCsv';
import type { Services } from '../../services';

/** What was read of every instrument of the library, as a table for other programs. Failures are told as alerts. */
export const historyFile = async ({ library, files, clock, store }: Services): Promise<void> => {
  const { actions, getState } = store;
  const shelf = await library();
  const listed = await shelf.list();
  if (!listed.ok) return actions.warn(`No CSV. ${listed.issues.map(({ message }) => message).join(' ')}`);
  const instruments = listed.value.filter(({ serial }) => serial !== null);
  const projects: Project[] = [];
  for (const { id } of instruments) {
    const project = await shelf.read(id);
    if (project.ok) projects.push(project.value);
  }
  const name = `Saddlemark history ${clock.today()}.csv`;
  const text = makeCsv(historyRows(projects, getState().device.units), CSV_STYLES.comma);
  files.download(name, 'text/csv', new TextEncoder().encode(text));
  const unread = instruments.length - projects.length;
  if (unread > 0) actions.warn(`${name} was made without ${unread} that could not be read.`);
  else actions.say(`Saved as ${name}`);
};
