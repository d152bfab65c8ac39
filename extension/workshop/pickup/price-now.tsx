/** The call, the offer and the most to pay, as they are with everything measured so far; read out when they change. */
import type { Money } from '../../../src/units/money.ts';
import { Announcer } from '../../components/announcer.tsx';
import { useWords } from '../../components/speech.ts';
import { priceLine } from '../../panel/call.tsx';
import type { OpenFind } from '../finds/use-find.ts';

/** The most to pay once one stands there: the drive is spent either way. Null where that is what is said already. */
function mostAtTheDoor({ core, session, settings, evaluation, said }: OpenFind): Money | null {
  const most = evaluation.worth.walkAway;
  if (!most || !evaluation.trip) return null;
  const there = { ...settings, distance: { value: 0, unit: evaluation.trip.distance.unit }, tolls: 0, van: null };
  const door = core.evaluate(session.listing, there, said).worth.walkAway;
  return door && door.minor > most.minor ? door : null;
}

export function PriceNow({ open }: { readonly open: OpenFind }) {
  const words = useWords();
  const { say, t } = words;
  const { evaluation } = open;
  const door = mostAtTheDoor(open);
  const line = priceLine(words, evaluation);
  const atDoor = door && t('pickup_at_the_door', { most: { money: door } });
  return (
    <div class="price-now" data-call={evaluation.call.kind}>
      <p class="price-now-call">{say(evaluation.call.says)}</p>
      <p>{line}</p>
      {atDoor && <p class="quiet">{atDoor}</p>}
      <Announcer text={[say(evaluation.call.says), line].join(' ')} />
    </div>
  );
}
