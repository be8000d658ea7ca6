/** The order of the work as the design states it, for new work with the slot cut first; one word or more of each step's title. */
export const RUN_ORDER = [
  'Neck angle and height',
  'Braces',
  'Sole',
  'Print',
  'Square line',
  'strings',
  'taped, and read again',
  'locating hole',
  'Pin in',
  'Finish',
  'Dry run',
  'waxed pins',
  'wet',
  'Pins out',
  'Squeeze-out',
  'Cured',
  'strung',
] as const;

/** What the other three kinds of work add, and after which step of the first it stands: common practice, no source. */
export const RUN_ADDED = {
  repair: [
    { title: 'Old bridge read', before: 'Neck angle and height' },
    { title: 'Old bridge off', before: 'Braces' },
    { title: 'old holes plugged', before: 'Sole' },
  ],
  slotAfter: [
    { title: 'Break points marked', before: 'strung' },
    { title: 'Fence', before: 'strung' },
    { title: 'Slot cut', before: 'strung' },
  ],
} as const;
