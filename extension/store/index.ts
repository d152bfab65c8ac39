/** The store of the extension: finds, kit, rates and settings in IndexedDB, shared by all pages of the extension. */

export { type Find, type Offer, type PricePoint, STATUSES, type Status, type Summary } from '../../src/finds/record.ts';
export type {
  AdToKeep,
  BadFile,
  Before,
  FindPage,
  Finds,
  Imported,
  KeptAd,
  Kit,
  ListQuery,
  MetAgain,
  OpenStore,
  Order,
  Preview,
  Rates,
  Removal,
  RemovalPage,
  Seen,
  SettingsStore,
  Shelf,
  Stop,
  Store,
} from './api.ts';
export { ORDERS } from './api.ts';
export { failureMessage, type Outcome, STORE_CODES, type StoreCode } from './failure.ts';
export { badFileMessage } from './file.ts';
export { type OpenOptions, openStore } from './open.ts';
export type { CapturedPrice, Need, Owned, RateRow, SetAside } from './records.ts';
export type { OldSettings } from './settings.ts';
