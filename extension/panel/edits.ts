/** The buyer's hand on the reading: what the fields call, without passing it through every part. */
import { createContext } from 'preact';
import { useContext } from 'preact/hooks';
import type { Correction, Doubt, Reading } from '../../src/listing/reading.ts';
import type { Place } from '../../src/trip/great-circle.ts';
import { putBack, putBackItem, reopenDoubt, type Session, setSeller, settleDoubt, setValue, startSession } from './session.ts';

export interface Edits {
  readonly session: Session;
  /** The reading before any correction: what a value is put back to. */
  readonly asRead: Reading | null;
  readonly set: (correction: Correction) => void;
  readonly putBack: (path: string) => void;
  readonly putBackItem: (item: string) => void;
  readonly settle: (doubt: Doubt, choice: number) => void;
  readonly reopen: (doubtId: string) => void;
  /** Where the seller is, by the buyer's word; null for nowhere known. */
  readonly setSeller: (place: Place | null) => void;
  /** Where the ad says that the seller is. It counts while the buyer has said nothing, and is not kept: the ad says it again. */
  readonly suppose: (place: Place | null) => void;
}

/** The buyer's hand on one session: every move is a step from one session to the next, which `change` takes. */
export const editsOf = (
  session: Session,
  asRead: Reading | null,
  change: (step: (session: Session) => Session) => void,
  suppose: Edits['suppose'],
): Edits => ({
  session,
  asRead,
  set: (correction) => change((one) => setValue(one, correction)),
  putBack: (path) => change((one) => putBack(one, path)),
  putBackItem: (item) => change((one) => putBackItem(one, item)),
  settle: (doubt, choice) => change((one) => settleDoubt(one, doubt, choice)),
  reopen: (doubt) => change((one) => reopenDoubt(one, doubt)),
  setSeller: (place) => change((one) => setSeller(one, place)),
  suppose,
});

const nothing = () => undefined;
const empty = startSession('', {
  origin: 'paste',
  address: null,
  title: '',
  text: '',
  struck: [],
  priceText: null,
  offers: [],
  language: null,
});

export const Editing = createContext<Edits>(editsOf(empty, null, nothing, nothing));

export const useEdits = (): Edits => useContext(Editing);
