/** Pickup: the list of finds that the buyer is going for, or the sheet for one of them. */
import type { ScreenProps } from '../screens.ts';
import { WithStore } from '../use-store.tsx';
import { Choose } from './choose.tsx';
import { Sheet } from './sheet.tsx';

export default function Pickup({ host, rest, only }: ScreenProps) {
  return <WithStore host={host}>{rest === '' ? <Choose /> : <Sheet key={rest} host={host} id={rest} only={only} />}</WithStore>;
}
