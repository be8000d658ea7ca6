/** What a difference belongs to, by how its path begins. */
const PARTS: Readonly<Record<string, string>> = {
  about: 'Name and notes',
  instrument: 'Instrument',
  strings: 'Strings',
  setup: 'Setup wanted',
  compensation: 'Compensation',
  doubts: 'Compensation',
  bridge: 'Bridge',
  height: 'Heights',
  audit: 'A bridge that is there',
  body: 'Body',
  repair: 'Repair',
  dimensions: 'Drawing and sheets',
  sheets: 'Drawing and sheets',
  limits: 'Limits of the checks',
  build: 'This instrument',
};

/** What has no row of the field table, by its path; the longest that a path begins with names it. */
const PARTICULARS: Readonly<Record<string, string>> = {
  'about.pictures': 'Photos',
  'instrument.scale.from': 'Scale length from',
  'compensation.learned': 'Learned from string-ups',
  'bridge.outline': 'Outline',
  'bridge.outline.path': 'Drawn outline',
  'bridge.outline.symmetric': 'Both sides alike',
  'bridge.pins': 'Bridge pins',
  'bridge.pins.ramp': 'String ramps',
  'bridge.ties': 'Tie block or holes',
  'bridge.cutting': 'Slot cut after gluing',
  'bridge.sole': 'Sole',
  'bridge.locating': 'Locating pins',
  'bridge.locating.points': 'Free locating pins',
  'body.braces': 'Braces',
  'body.plate': 'Bridge plate',
  'body.soundhole': 'Soundhole',
  'body.cutaway': 'Cutaway',
  'body.wireHole': 'Wire hole',
  'repair.footprint': 'Old footprint',
  'repair.holes': 'Old holes',
  'repair.slot': 'Old slot',
  dimensions: 'Dimensions pinned to the drawing',
  'sheets.chosen': 'Sheets to print',
  'build.serial': 'Number or name',
  'build.woods': 'Woods',
  'build.film': 'Finish film',
  'build.rebate': 'Rebate for the finish',
  'build.rounds': 'Times the place was read',
  'build.drop': 'How readings are carried down to the top',
  'build.movement': 'What moves how far with the air',
  'build.steps': 'Steps ticked',
  'build.glue': 'Glue',
  'build.shop': 'Air of the shop',
  'build.kept': 'Air where it is kept',
  'build.stringUps': 'String-ups',
};

/** What of the project a path belongs to. */
export const partOf = (path: string): string => PARTS[path.split('.')[0] ?? ''] ?? 'Other';

/** What is told of as one, and its name: the longest path with a name of its own, a string by its number, or the whole part. */
export const particularOf = (path: string): { readonly path: string; readonly label: string } => {
  const keys = path.split('.');
  if (keys[0] === 'strings' && keys[1] !== undefined)
    return { path: `strings.${keys[1]}`, label: `String ${Number(keys[1]) + 1}` };
  for (let length = keys.length; length > 0; length -= 1) {
    const start = keys.slice(0, length).join('.');
    const label = PARTICULARS[start];
    if (label !== undefined) return { path: start, label };
  }
  return { path: keys[0] ?? path, label: partOf(path) };
};
