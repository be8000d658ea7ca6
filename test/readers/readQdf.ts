import type { SizedPage } from '../readback/checkSheets';
import { linesFromSteps, type Step } from './readPathData';

/** 1 pt = 1/72 in, ISO 32000-1 8.3.2.3; 1 in = 25.4 mm exactly. */
const MM_PER_POINT = 25.4 / 72;

/** Operators of a page that say how to paint or write, and draw no line of their own. ISO 32000-1, annex A. */
const WITHOUT_LINES = new Set([
  ...'w J j d S s f F B b n q Q G g RG rg BT ET Tf TL Td Tm Tj Tc Tw Tr h'.split(' '),
  'f*',
  'B*',
]);

/** The pages of a file that qpdf has spelled out with --qdf, as latin1 text: the lines, by the numbers in the file. */
export function readQdf(text: string): readonly SizedPage[] {
  const boxes = Array.from(text.matchAll(/\/MediaBox \[\s*0\s+0\s+([\d.]+)\s+([\d.]+)\s*\]/gu), ([, right, top]) => ({
    width: Number(right) * MM_PER_POINT,
    height: Number(top) * MM_PER_POINT,
  }));
  const contents = Array.from(
    text.matchAll(/%% Contents for page \d+\n(?:%%[^\n]*\n)*\d+ 0 obj\n<<[^>]*>>\nstream\n([\s\S]*?)\nendstream/gu),
    ([, content = '']) => content,
  );
  if (boxes.length === 0 || boxes.length !== contents.length)
    throw new Error(`expected one content a page, got ${contents.length} for ${boxes.length} pages`);
  return boxes.map(({ width, height }, page) => ({
    width,
    height,
    paths: linesFromSteps(readSteps(contents[page] ?? ''), (x, y) => ({
      x: x * MM_PER_POINT,
      y: height - y * MM_PER_POINT,
    })),
  }));
}

function readSteps(content: string): readonly Step[] {
  const steps: Step[] = [];
  let operands: number[] = [];
  // Strings and names may hold anything, so they go first.
  const words = content.replace(/\((?:\\.|[^\\()])*\)|<[0-9a-fA-F\s]*>|\/\S+|\[[^\]]*\]/gu, ' ').split(/\s+/u);
  for (const word of words.filter((each) => each !== '')) {
    if (/^[-+.\d]/u.test(word)) {
      operands.push(Number(word));
      continue;
    }
    steps.push(...stepsOf(word, operands));
    operands = [];
  }
  return steps;
}

function stepsOf(operator: string, operands: readonly number[]): readonly Step[] {
  const [a = Number.NaN, b = Number.NaN, c = Number.NaN, d = Number.NaN, e = Number.NaN, f = Number.NaN] = operands;
  switch (operator) {
    case 'm':
      return [{ kind: 'move', to: [a, b] }];
    case 'l':
      return [{ kind: 'line', to: [a, b] }];
    case 'c':
      return [{ kind: 'curve', to: [a, b, c, d, e, f] }];
    default:
      if (WITHOUT_LINES.has(operator)) return [];
      throw new Error(`this reader does not know the operator ${operator}`);
  }
}
