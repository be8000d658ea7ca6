/**
 * The one table that says which part of src may import which. The architecture test holds the sources against it; a
 * folder or package that is not in it is a fault.
 */

/**
 * Parts of src/core in their order: each may use those before it. Ports come late, because they speak of sheets, and
 * because nothing in core but its face may reach for what lies outside.
 */
export const coreOrder = [
  'result',
  'units',
  'drills',
  'geom',
  'numeric',
  'document',
  'instrument',
  'intonation',
  'bridge',
  'body',
  'height',
  'audit',
  'placement',
  'budget',
  'repair',
  'glue',
  'run',
  'learning',
  'kinds',
  'checks',
  'derive',
  'library',
  'text',
  'drawing',
  'sheets',
  'ports',
  'index',
] as const;

/** What lies directly in src, and which of its neighbours each may import beside itself. */
export const neighbours: Readonly<Record<string, readonly string[]>> = {
  core: [],
  absentPackage: [],
  exporters: ['core'],
  importers: ['core'],
  persistence: ['core'],
  store: ['core'],
  canvas: ['core', 'store', 'exporters', 'importers'],
  ui: ['core', 'store', 'exporters', 'importers'],
  workers: ['core', 'store', 'exporters', 'importers'],
  main: ['core', 'store', 'exporters', 'importers', 'persistence', 'canvas', 'ui', 'workers'],
};

/** Which places may import a package; `oneFileIn` names places where a single file may. Node's own modules: nowhere. */
export const packages: Readonly<Record<string, { readonly in: readonly string[]; readonly oneFileIn?: string }>> = {
  'clipper2-ts': { in: ['core/geom'] },
  comlink: { in: ['workers', 'main.tsx'] },
  'dxf-writer': { in: ['exporters/dxf'] },
  idb: { in: ['persistence'] },
  jspdf: { in: ['exporters/pdf'] },
  paper: { in: ['canvas'] },
  react: { in: ['ui', 'main.tsx'] },
  'react-dom': { in: ['ui', 'main.tsx'] },
  saxes: { in: ['importers/svg'] },
  svgpath: { in: ['importers/svg'] },
  valibot: { in: ['persistence', 'core/document'] },
  zustand: { in: ['store'], oneFileIn: 'ui' },
};

/** Names that a file of core may not use, whatever it declares: the clock is handed in. */
export const neverInCore: readonly string[] = ['Date'];

/** Names of browser and Node that a file of core may not use, unless it declares something of that name itself. */
export const outsideCore: readonly string[] = [
  'Worker',
  'XMLHttpRequest',
  'cancelAnimationFrame',
  'console',
  'crypto',
  'document',
  'fetch',
  'globalThis',
  'indexedDB',
  'localStorage',
  'location',
  'navigator',
  'performance',
  'process',
  'queueMicrotask',
  'requestAnimationFrame',
  'self',
  'sessionStorage',
  'setInterval',
  'setTimeout',
  'window',
];

/** Lines that no file of src may exceed. */
export const longestFile = 300;
