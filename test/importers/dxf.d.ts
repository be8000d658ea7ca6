/** The parts of the npm package dxf, which brings no types, that the tests read with. */
declare module 'dxf' {
  interface Corner {
    readonly x: number;
    readonly y: number;
  }
  export const parseString: (text: string) => unknown;
  export const toPolylines: (parsed: unknown) => { readonly bbox: { readonly min: Corner; readonly max: Corner } };
}
