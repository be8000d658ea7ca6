/** The counter of dxf-writer's handles, which goes on from one file to the next. */
declare module 'dxf-writer/src/Handle.js' {
  const Handle: { seed: number };
  export = Handle;
}
