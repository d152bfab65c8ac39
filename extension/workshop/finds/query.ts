/** What the list shows: search, filters and order, as the buyer sets them. */
import type { Thing } from '../../../src/kit/same-thing.ts';
import type { Kind } from '../../../src/listing/reading.ts';
import type { ListQuery, Order, Status } from '../../store/index.ts';

export const CALLS = ['go', 'haggle', 'ask', 'leave'] as const;

export interface Wanted {
  readonly words: string;
  readonly status: Status | 'all';
  readonly call: (typeof CALLS)[number] | 'all';
  readonly kind: Kind | 'all';
  /** Only what fills something that the kit lacks. */
  readonly fillsKit: boolean;
  readonly order: Order;
  readonly descending: boolean;
}

export const ALL_FINDS: Wanted = {
  words: '',
  status: 'all',
  call: 'all',
  kind: 'all',
  fillsKit: false,
  order: 'changed',
  descending: true,
};

/** Orders in which the best comes first when they begin with the largest. */
const LARGEST_FIRST: readonly Order[] = ['changed', 'kept', 'usable', 'saving'];

/** Another order begins with what a buyer wants to see first; the same one again turns round. */
export const inOrder = (wanted: Wanted, order: Order): Wanted => ({
  ...wanted,
  order,
  descending: wanted.order === order ? !wanted.descending : LARGEST_FIRST.includes(order),
});

/** `lacking`: what the kit lacks. */
export const queryOf = (wanted: Wanted, lacking: readonly Thing[], from: number, count: number): ListQuery => ({
  order: wanted.order,
  descending: wanted.descending,
  ...(wanted.status === 'all' ? {} : { statuses: [wanted.status] }),
  ...(wanted.kind === 'all' ? {} : { kinds: [wanted.kind] }),
  ...(wanted.call === 'all' ? {} : { calls: [wanted.call] }),
  ...(wanted.words.trim() === '' ? {} : { words: wanted.words }),
  ...(wanted.fillsKit ? { fills: lacking } : {}),
  from,
  count,
});

export const isFiltered = ({ words, status, call, kind, fillsKit }: Wanted): boolean =>
  words.trim() !== '' || status !== 'all' || call !== 'all' || kind !== 'all' || fillsKit;
