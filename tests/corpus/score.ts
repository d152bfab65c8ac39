/** Compares a reading with a label, field by field. */
import type { Reading } from '../../src/listing/reading.ts';
import { inPounds } from '../../src/units/mass.ts';
import { inMajor } from '../../src/units/money.ts';
import { type Label, weightOf } from './case.ts';
import { scoreItems, scorePlateWeight } from './score-items.ts';
import { Judge, near, type Verdict } from './verdict.ts';

export function judge(name: string, reading: Reading, label: Label): Verdict {
  const judged = new Judge(name, reading, label);
  const language = label.lang ?? 'en';
  judged.compare('language', reading.language, language, reading.language === language);
  const about = label.aboutThisTrade ?? true;
  scoreTrade(judged, reading, about);
  if (!about) return judged.verdict;
  const wanted = label.wanted ?? false;
  judged.compare('wanted', reading.wanted, wanted, reading.wanted === wanted, true);
  if (wanted) return judged.verdict;
  scoreAsking(judged, reading, label.asking ?? {});
  scoreItems(judged, reading, label);
  scorePlateWeight(judged, reading, label);
  const total = reading.statedTotal?.value ?? null;
  const want = weightOf(label.statedTotal);
  judged.compare(
    'statedTotal',
    total && `${total.value} ${total.unit}`,
    label.statedTotal ?? null,
    total === null || want === null ? total === want : near(inPounds(total), inPounds(want)),
  );
  return judged.verdict;
}

/** Negatives are counted once more on their own, since there are few of them. */
function scoreTrade(judged: Judge, reading: Reading, about: boolean): void {
  const right = reading.aboutThisTrade === about;
  for (const field of about ? ['aboutThisTrade'] : ['aboutThisTrade', 'negatives']) {
    const tally = judged.tally(field);
    if (right) tally.right += 1;
    else tally.wrong += 1;
  }
  if (right) return;
  judged.fault(`aboutThisTrade: read ${reading.aboutThisTrade}`);
  judged.confident('aboutThisTrade');
}

function scoreAsking(judged: Judge, { asking }: Reading, want: NonNullable<Label['asking']>): void {
  const basis = want.basis ?? 'none';
  const major = (fact: typeof asking.amount): number | null => (fact ? inMajor(fact.value) : null);
  judged.compareNumbers('asking.amount', major(asking.amount), want.amount ?? null, true);
  judged.compare('asking.basis', asking.basis, basis, asking.basis === basis, true);
  judged.compareNumbers('asking.unitAmount', major(asking.unitAmount), want.unitAmount ?? null);
  const currency = asking.currency?.value ?? null;
  if (want.amount && want.currency) judged.compare('asking.currency', currency, want.currency, currency === want.currency);
  judged.compareFlag('asking.firm', asking.firm?.value ?? false, want.firm ?? false);
  judged.compareFlag('asking.openToOffers', asking.openToOffers?.value ?? false, want.openToOffers ?? false);
}
