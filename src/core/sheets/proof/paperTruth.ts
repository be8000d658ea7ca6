/** One thing to know about a print, with where it comes from. */
interface PaperFact {
  readonly text: string;
  readonly source: string;
}

interface PaperChapter {
  readonly id: string;
  readonly title: string;
  readonly facts: readonly PaperFact[];
}

const PRACTICE = 'common practice, no source';
const MOVES = 'faj-chemicalimpression.blogspot.com, dimensional stability, 2011; the sums: hand arithmetic';

/** Why a print is read before it is trusted, and what keeps it true. */
export const PAPER_TRUTH: readonly PaperChapter[] = [
  {
    id: 'length',
    title: 'Shape from paper, length from steel',
    facts: [
      {
        text: 'Paper moves with the air: about 0.1 to 0.2 % along its grain and 0.2 to 0.4 % across it. Of a scale of 645 mm 0.2 % is 1.3 mm, 3.5 cents at the 12th fret; of a bridge of 152 mm it is 0.3 mm.',
        source: MOVES,
      },
      {
        text: 'So a print gives the outline and what lies near it. Every distance from the nut or the 12th fret is set by steel rule, and read again with the bridge taped in place.',
        source: PRACTICE,
      },
    ],
  },
  {
    id: 'print',
    title: 'Print at 100 %',
    facts: [
      {
        text: 'In the print dialog: “actual size”, 100 % or scale “none”. Turn off fit, shrink and “scale to fit”, and look every time: many programs remember an old setting.',
        source:
          'help.seamwork.com, test square; programs that remember a scale: github.com/mozilla/pdf.js/issues/11682',
      },
      {
        text: 'Choose the paper that is loaded, in the program and in the printer alike: Letter fitted to A4 comes out at 97.3 %, A4 fitted to Letter at 94.1 %.',
        source: '210/215.9 and 279.4/297, hand arithmetic',
      },
      {
        text: 'Print from a PDF reader, one sheet a page, without booklet or borders. A copier at “100 %” is seldom true both ways: print every copy anew.',
        source: 'the copier: sundial mailing list, msg01789; the rest: common practice, no source',
      },
    ],
  },
  {
    id: 'mount',
    title: 'Mount it dry, then read it again',
    facts: [
      {
        text: 'Let the sheet lie beside the instrument for an hour first. Mount with tape, spray adhesive or double-sided film, from the middle outward, never pulled: wet glue swells paper, most across its grain.',
        source:
          'wet glue: damacleod.wordpress.com, plan; the grain: printwiki.org, dimensional stability; the rest: common practice, no source',
      },
      {
        text: 'Once it is mounted, and whenever it has lain overnight, read the square both ways again.',
        source: PRACTICE,
      },
      {
        text: 'Spray adhesive: air moving, no flame; follow the label and local rules.',
        source: PRACTICE,
      },
    ],
  },
  {
    id: 'film',
    title: 'Film, card and laser heat',
    facts: [
      {
        text: 'Clear film hardly moves with damp air and lets you see the top through it. The heat of a laser printer can shrink it and curl it: use only film that its maker sells for that printer, or it melts inside.',
        source: 'from memory',
      },
      {
        text: 'A laser printer dries paper while it prints, so that the sheet grows again as it rests. Read film and paper each by itself, when cool; a factor found on one is not the other’s.',
        source: 'from memory',
      },
    ],
  },
];

/** The same in few words, for a sheet that lies on the bench. */
export const PAPER_TRUTH_IN_SHORT: readonly string[] = [
  'Paper carries shape, steel carries length: set every distance from nut or 12th fret by rule.',
  'Print at 100 %, paper as loaded, fit and shrink off. Mount dry, never with wet glue; read it again once mounted.',
  'Film from a laser printer: read it when cool; heat can shrink it. A factor is for one printer and one paper.',
];
