import { fail, ok, type Result } from '../../core/result';

/** One group of a DXF: a code that says what its value is. */
export interface Group {
  readonly code: number;
  readonly value: string;
}

/**
 * The groups of a DXF: two lines each. Reading ends at EOF; comments (999) are left out. Code dxf.damaged: a line that must
 * be a group's code is not a whole number, or the file ends within a section.
 */
export function readGroups(text: string): Result<readonly Group[]> {
  const lines = text.split(/\r\n|\r|\n/);
  const groups: Group[] = [];
  let within = false;
  for (let at = 0; at + 1 < lines.length; at += 2) {
    const head = lines[at] ?? '';
    const value = (lines[at + 1] ?? '').trim();
    if (!/^\s*-?\d{1,5}\s*$/.test(head)) {
      if (!within && head.trim() === '') break;
      const got = head.trim().slice(0, 40);
      return fail(
        '',
        'dxf.damaged',
        `The file is damaged in line ${at + 1}: expected the code of a group, a whole number, got "${got}".`,
      );
    }
    const code = Number(head);
    if (code === 0 && value === 'EOF') break;
    if (code === 0 && value === 'SECTION') within = true;
    if (code === 0 && value === 'ENDSEC') within = false;
    if (code !== 999) groups.push({ code, value });
  }
  if (within) return fail('', 'dxf.damaged', 'The file was cut short: it ends within a section. Save it again.');
  return ok(groups);
}
