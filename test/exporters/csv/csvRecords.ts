/** A CSV read by hand after RFC 4180: quoted cells, doubled quotes within them, rows ended by CR LF. */
export const csvRecords = (text: string, separator: string): readonly (readonly string[])[] => {
  const rows: string[][] = [];
  let row: string[] = [];
  let at = 0;
  while (at < text.length) {
    let cell = '';
    if (text[at] === '"') {
      for (at++; ; at++) {
        if (at >= text.length) throw new Error('a quoted cell does not end');
        if (text[at] !== '"') cell += text[at];
        else if (text[at + 1] === '"') {
          cell += '"';
          at++;
        } else break;
      }
      at++;
    } else {
      while (at < text.length && text[at] !== separator && text[at] !== '\r') {
        if (text[at] === '"' || text[at] === '\n') throw new Error('a bare cell holds a quote or a line feed');
        cell += text[at++];
      }
    }
    row.push(cell);
    if (text[at] === separator) at++;
    else {
      if (text.slice(at, at + 2) !== '\r\n') throw new Error('a row does not end with CR LF');
      rows.push(row);
      row = [];
      at += 2;
    }
  }
  if (row.length > 0) throw new Error('the last row does not end');
  return rows;
};
