/** The build gives the solver's code as gzipped bytes; see `packedCode` in build.mjs. */
declare module 'highs/runtime' {
  const packed: Uint8Array<ArrayBuffer>;
  export default packed;
}
