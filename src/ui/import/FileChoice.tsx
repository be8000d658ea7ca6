import { type ClipboardEvent, type DragEvent, type ReactNode, useId } from 'react';

interface FileChoiceProps {
  readonly open: (file: File) => void;
  readonly problem: string | null;
  readonly children: ReactNode;
}

/** The first file of what was dropped or pasted; pasted text counts as a file. */
const fileOf = (data: DataTransfer): File | null => {
  const [file] = data.files;
  if (file !== undefined) return file;
  const text = data.getData('text/plain').trim();
  return text === '' ? null : new File([text], 'The pasted text');
};

/** Where a drawing comes from: chosen, dropped anywhere on it, or pasted; what is wrong with it stands beside. */
export function FileChoice({ open, problem, children }: FileChoiceProps) {
  const id = useId();
  const take = (data: DataTransfer): boolean => {
    const file = fileOf(data);
    if (file !== null) open(file);
    return file !== null;
  };
  const drop = (event: DragEvent): void => {
    event.preventDefault();
    take(event.dataTransfer);
  };
  const paste = (event: ClipboardEvent): void => {
    const inBox = event.target instanceof HTMLInputElement && event.target.type === 'text';
    if (!inBox && take(event.clipboardData)) event.preventDefault();
  };
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: a larger place to drop on; the file field does the same by keyboard
    <div className="import-body" onDragOver={(event) => event.preventDefault()} onDrop={drop} onPaste={paste}>
      <div className="import-file">
        <label htmlFor={id}>SVG or DXF file</label>
        <input
          id={id}
          type="file"
          accept=".svg,.dxf,image/svg+xml"
          aria-invalid={problem !== null}
          aria-describedby={`${id}-about ${id}-wrong`}
          onChange={(event) => {
            const file = event.target.files?.[0];
            if (file !== undefined) open(file);
            event.target.value = '';
          }}
        />
        <p id={`${id}-about`} className="hint">
          Or drop a file here, or paste one. It stays on this device, and nothing in it is run.
        </p>
        <p id={`${id}-wrong`} role="alert" className={problem === null ? undefined : 'field-wrong'}>
          {problem}
        </p>
      </div>
      {children}
    </div>
  );
}
