/** A sentence to be shown: a key of _locales and its parameters. The core never writes sentences; `say` does, with a locale's strings. */
import type { Distance } from '../units/length.ts';
import type { Weight } from '../units/mass.ts';
import type { Money } from '../units/money.ts';

/** What a locale writes in its own way. A bare number is written to two decimals. */
export type Figure =
  | number
  | { readonly number: number; readonly digits: number }
  | { readonly money: Money }
  /** Price per pound or kilogram. */
  | { readonly rate: Money; readonly per: 'lb' | 'kg' }
  | { readonly weight: Weight }
  | { readonly mm: number }
  | { readonly degrees: number }
  | { readonly distance: Distance }
  /** Of 100; whole unless `digits` says otherwise. */
  | { readonly percent: number; readonly digits?: number }
  /** A date as "2026-05-31". */
  | { readonly day: string };

export type Param = string | Figure | { readonly message: Message };

export interface Message {
  readonly key: string;
  readonly params?: Readonly<Record<string, Param>>;
}

export const message = (key: string, params?: Readonly<Record<string, Param>>): Message => (params ? { key, params } : { key });
