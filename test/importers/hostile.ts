const HEAD =
  '<svg xmlns="http://www.w3.org/2000/svg" xmlns:xlink="http://www.w3.org/1999/xlink" width="200mm" viewBox="0 0 200 100">';

/** Files made to harm or hang a reader, each with the code of the message that must come of it. */
export const HOSTILE: readonly { readonly name: string; readonly make: () => string; readonly code: string }[] = [
  {
    name: 'an entity bomb',
    make: () => {
      const lols = Array.from({ length: 12 }, (_, at) => `<!ENTITY l${at + 1} "${`&l${at};`.repeat(10)}">`).join('');
      return `<!DOCTYPE svg [<!ENTITY l0 "lol">${lols}]>${HEAD}<text>&l12;</text></svg>`;
    },
    code: 'svg.entity',
  },
  {
    name: 'an entity of plain text, used without end',
    make: () => `<!DOCTYPE svg [<!ENTITY a "${'x'.repeat(1000)}">]>${HEAD}<text>${'&a;'.repeat(500_000)}</text></svg>`,
    code: 'svg.entity',
  },
  {
    name: 'an entity from another file',
    make: () => `<!DOCTYPE svg [<!ENTITY a SYSTEM "file:///etc/passwd">]>${HEAD}<text>&a;</text></svg>`,
    code: 'svg.entity',
  },
  { name: 'elements nested without end', make: () => HEAD + '<g>'.repeat(200_000), code: 'import.deep' },
  { name: 'windows in windows', make: () => HEAD + '<svg>'.repeat(150) + '</svg>'.repeat(151), code: 'import.deep' },
  { name: 'elements without end', make: () => `${HEAD}${'<g/>'.repeat(60_000)}</svg>`, code: 'import.tooMany' },
  {
    name: 'uses that double at every step',
    make: () => {
      const steps = Array.from(
        { length: 30 },
        (_, at) => `<g id="u${at + 1}">${`<use xlink:href="#u${at}"/>`.repeat(2)}</g>`,
      );
      return `${HEAD}<defs><path id="u0" d="M0 0H9V9Z"/>${steps.join('')}</defs><use xlink:href="#u30"/></svg>`;
    },
    code: 'import.tooMany',
  },
  {
    name: 'a path of 9 MB',
    make: () => `${HEAD}<path d="M0 0${'l1 1-1 1'.repeat(1_100_000)}"/></svg>`,
    code: 'import.empty',
  },
  {
    name: 'a file of 11 MB',
    make: () => `${HEAD}<path d="M0 0${'l1 1-1 1'.repeat(1_400_000)}"/></svg>`,
    code: 'import.tooLarge',
  },
  {
    name: 'a page',
    make: () => '<!DOCTYPE html><html><body><script>alert(1)</script></body></html>',
    code: 'svg.root',
  },
  { name: 'a picture', make: () => '\u0089PNG\r\n\u001a\n', code: 'import.kind' },
  { name: 'nothing', make: () => '', code: 'import.kind' },
  {
    name: 'blocks that double at every step',
    make: () => {
      const step = (at: number) =>
        `0\nBLOCK\n2\nU${at}\n${(at === 0 ? '0\nLINE\n10\n0\n20\n0\n11\n9\n21\n9\n' : `0\nINSERT\n2\nU${at - 1}\n`).repeat(2)}0\nENDBLK\n`;
      const blocks = Array.from({ length: 31 }, (_, at) => step(at)).join('');
      return `0\nSECTION\n2\nBLOCKS\n${blocks}0\nENDSEC\n0\nSECTION\n2\nENTITIES\n0\nINSERT\n2\nU30\n0\nENDSEC\n0\nEOF\n`;
    },
    code: 'import.tooMany',
  },
];
