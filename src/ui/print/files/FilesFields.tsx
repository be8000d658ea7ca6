import { type ReactNode, useMemo, useRef, useState } from 'react';
import type { DrawingFormat } from '../../../core/ports';
import type { CSV_STYLES } from '../../../exporters/csv/makeCsv';
import { FieldGroup } from '../../fields/FieldGroup';
import { SelectRow } from '../../fields/SelectRow';
import { useServices } from '../../services';
import { otherFiles } from './otherFiles';
import './files.css';

type DxfVersion = Extract<DrawingFormat, { kind: 'dxf' }>['version'];
type CsvStyleName = keyof typeof CSV_STYLES;

const DXF_VERSIONS: readonly { readonly value: DxfVersion; readonly label: string }[] = [
  { value: '2007', label: '2007: curves as drawn' },
  { value: 'R12', label: 'R12: arcs and lines' },
];
const CSV_CHOICES: readonly { readonly value: CsvStyleName; readonly label: string }[] = [
  { value: 'comma', label: 'Comma, 1.5' },
  { value: 'semicolon', label: 'Semicolon; 1.5' },
  { value: 'decimal-comma', label: 'Semicolon; 1,5' },
];
const RESOLUTIONS = [150, 300, 600].map((dpi) => ({ value: String(dpi), label: `${dpi} pixels to an inch` }));

/** The drawing and its numbers for other programs. */
export function FilesFields() {
  const services = useServices();
  const make = useMemo(() => otherFiles(services), [services]);
  const busy = useRef(false);
  const [version, setVersion] = useState<DxfVersion>('2007');
  const [style, setStyle] = useState<CsvStyleName>('comma');
  const [dpi, setDpi] = useState('300');
  const run = async (what: string, work: () => void | Promise<void>): Promise<void> => {
    if (busy.current) return;
    busy.current = true;
    try {
      await work();
    } catch (error) {
      services.store.actions.warn(`${what} failed: ${error instanceof Error ? error.message : String(error)}`);
    } finally {
      busy.current = false;
    }
  };
  const drawing = (format: DrawingFormat): void => {
    run(`The ${format.kind.toUpperCase()}`, () => make.drawing(format));
  };
  return (
    <FieldGroup
      title="Files for other programs"
      hint="The drawing in millimetres at true size, never with a print correction. Not a page: there is no square to prove it by."
    >
      <FileRow
        name="SVG"
        about="For drawing programs: a group a layer, text as text."
        get={() => drawing({ kind: 'svg' })}
      />
      <FileRow
        name="DXF"
        about="For CAD, router and laser: true arcs, outlines of lines and arcs closed, cut edges on layers of their own. R12 is for older machines."
        get={() => drawing({ kind: 'dxf', version })}
      >
        <SelectRow
          label="DXF kind"
          value={version}
          choices={DXF_VERSIONS}
          choose={(chosen) => setVersion(chosen as DxfVersion)}
        />
      </FileRow>
      <FileRow
        name="CSV"
        about="The placement numbers as a table, in the unit in use."
        get={() => {
          run('The CSV', () => make.placement(style));
        }}
      >
        <SelectRow
          label="CSV marks"
          value={style}
          choices={CSV_CHOICES}
          choose={(chosen) => setStyle(chosen as CsvStyleName)}
        />
      </FileRow>
      <FileRow
        name="PNG"
        about="A picture that says its own resolution."
        get={() => drawing({ kind: 'png', dpi: Number(dpi) })}
      >
        <SelectRow label="PNG resolution" value={dpi} choices={RESOLUTIONS} choose={setDpi} />
      </FileRow>
    </FieldGroup>
  );
}

interface FileRowProps {
  readonly name: string;
  readonly about: string;
  readonly get: () => void;
  /** What can be chosen of it. */
  readonly children?: ReactNode;
}

function FileRow({ name, about, get, children }: FileRowProps) {
  return (
    <div className="file-row">
      {children}
      <div className="file-get">
        <button type="button" onClick={get}>
          Download {name}
        </button>
        <p className="quiet">{about}</p>
      </div>
    </div>
  );
}
