import { describe, expect, it } from 'vitest';
import { fileName } from '../../src/ui/files/fileName';

describe('fileName', () => {
  it.each([
    ['Wren 14', 'template', 'pdf', 'Wren 14 template.pdf'],
    ['Wren 14', '', 'saddlemark.json', 'Wren 14.saddlemark.json'],
    ['', 'template', 'pdf', 'Saddlemark template.pdf'],
    ['  ', 'template', 'pdf', 'Saddlemark template.pdf'],
    ['a/b\\c:d*e?f"g<h>i|j', '', 'pdf', 'a b c d e f g h i j.pdf'],
    ['../../etc', 'template', 'pdf', 'etc template.pdf'],
    ['Überprüfung ⅛″', 'template', 'pdf', 'Überprüfung ⅛″ template.pdf'],
    ['line\nfeed\u202Eturned', '', 'pdf', 'line feed turned.pdf'],
  ])('makes a name of %j', (instrument, what, ending, name) => {
    expect(fileName(instrument, what, ending)).toBe(name);
  });

  it('stays short enough for every system', () => {
    expect(fileName('x'.repeat(500), 'template', 'pdf').length).toBeLessThan(120);
  });
});
