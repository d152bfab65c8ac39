/** What is said of some goods by how they differ from others. Phrases that sellers write: common practice, no source. */
import { expect, it } from 'vitest';
import { readText } from './goods.ts';

/** "bar: rust-light; 2 plate: no-rust", goods without a condition left out. */
const said = (text: string): string =>
  readText(text)
    .items.filter(({ conditions }) => conditions.length > 0)
    .map(
      ({ kind, unitWeight, conditions }) =>
        `${kind.value}${unitWeight ? ` ${unitWeight.value.value}` : ''}: ${conditions.map(({ value }) => value).join(' ')}`,
    )
    .join('; ');

it.each([
  // Said not to be so.
  ['Olympic bar and 2x45 plates. Bar has light rust, plates don’t. $100', 'bar: rust-light; plate 45: no-rust'],
  ['Olympic bar and 4x45 plates. The bar is rusty, the plates are not.', 'bar: rust; plate 45: no-rust'],
  ['4x45 olympic, 2x25. The 25s have rust, the 45s do not have any', 'plate 45: no-rust; plate 25: rust'],
  ['Olympic bar and curl bar. The bar is bent, the curl bar isn’t', 'bar: bent; curl-bar: straight'],
  ['Langhantel und Scheiben 4 x 20 kg. Die Stange hat Flugrost, die Scheiben nicht.', 'bar: rust-light; plate 20: no-rust'],
  // Said to be so after all, or too.
  ['Olympic bar and 4x45 plates. No rust on the bar but the plates have some', 'bar: no-rust; plate 45: rust'],
  ['Olympic bar, 4x45 plates. The bar is rusty, the plates too.', 'bar: rust; plate 45: rust'],
  ['Langhantel und Scheiben 4 x 20 kg. Die Stange ist rostig, die Scheiben auch.', 'bar: rust; plate 20: rust'],
  // Left out of what is said of all.
  ['Olympic bar, 4x45 plates. Everything rusty except the bar', 'plate 45: rust'],
  ['Olympic bar, 4x45 plates. All rusty apart from the bar.', 'plate 45: rust'],
  ['All but the bar are rusty. bar, 4x45 olympic', 'plate 45: rust'],
  ['Everything is rust free except the curl bar. bar, curl bar, 4x45 olympic', 'bar: no-rust; plate 45: no-rust'],
  ['Langhantel, 4 x 20 kg Scheiben. Alles ohne Rost außer der Stange.', 'plate 20: no-rust'],
  // Taken together.
  ['rack and bench, both rusty. olympic bar spins fine', 'rack: rust; bench: rust; bar: spins'],
  ['Bar and plates are all rusty. olympic 45s x4', 'bar: rust; plate 45: rust'],
  ['Langhantel und Hantelbank, beide mit Rost', 'bar: rust; bench: rust'],
  // Not of what nothing was said of.
  ['Olympic bar and 4x45 plates. Plates have light rust, I do not ship', 'plate 45: rust-light'],
  ['Olympic bar, light rust. 4x45 plates. Bench is not for sale', 'bar: rust-light'],
  ['4x45 olympic plates and a bar. plates have chips, bar is fine', 'plate 45: chipped'],
])('%s', (text, wanted) => expect(said(text)).toBe(wanted));

it.each([
  ['bar bearings free, been up the loft since 2015', 'bar: spins stored-indoors'],
  ['olympic bar, sleeves gummed up, need a clean', 'bar: seized-sleeves'],
  ['adjustable weight bench, vinyl split at the front, foam crumbling at one end', 'bench: torn'],
  ['Olympic plates 4x45. Odd brands, mixed rims', 'plate 45: mismatched'],
  ['4x45 olympic plates. One of the tens is a different brand', ''],
  ['45# bumpers x4 olympic, one has a small tear around the insert', 'bumper 45: torn'],
  ['trap bar, chrome has flaked off one handle, other handle mint', ''],
])('%s', (text, wanted) => expect(said(text)).toBe(wanted));

it('reads a bearing that is free as no gift', () => {
  expect(readText('olympic barbell, bearings are free, $80').asking.amount?.value.minor).toBe(8000);
});
