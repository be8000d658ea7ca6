import { createDerive } from '../../../src/core/derive/createDerive';
import { demoProject } from '../../../src/core/kinds/demo';
import { CSV_STYLES, makeCsv } from '../../../src/exporters/csv/makeCsv';
import { placementRows } from '../../../src/exporters/csv/placementRows';
import { makeDxf } from '../../../src/exporters/dxf/makeDxf';
import { makeSvg } from '../../../src/exporters/svg/makeSvg';
import { fileDrawing } from '../../../src/ui/print/files/fileDrawing';
import { unwrap } from '../pdf/unwrap';
import { wholeDrawing } from '../wholeDrawing';

const DATE = '2026-11-25';

/** The demo instrument's files for other programs, by name, as they stand in test/golden. */
export const goldenFiles = async (): Promise<Readonly<Record<string, string>>> => {
  const project = demoProject('demo', `${DATE}T00:00:00Z`);
  const drawing = fileDrawing({ project, drawing: await wholeDrawing(project) }, DATE);
  const rows = unwrap(placementRows(project, createDerive()(project), { unit: 'mm', date: DATE }));
  return {
    'demo.svg': unwrap(makeSvg(drawing)),
    'demo-2007.dxf': unwrap(makeDxf(drawing, '2007')),
    'demo-R12.dxf': unwrap(makeDxf(drawing, 'R12')),
    'demo.csv': makeCsv(rows, CSV_STYLES.comma),
    'demo-decimal-comma.csv': makeCsv(rows, CSV_STYLES['decimal-comma']),
  };
};
