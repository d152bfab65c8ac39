/** Place lists, which the bundler makes of packages: see tests/build/place-lists.mjs. */
declare module 'places:*' {
  const packed: import('../../src/places/unpack.ts').Packed;
  export default packed;
}
