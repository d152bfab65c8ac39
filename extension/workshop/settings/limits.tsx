/** Limits of flags that are common practice or assumptions, which the buyer may set otherwise. */
import { CHANGEABLE, LIMITS, type LimitName } from '../../../src/flags/limits.ts';
import type { Settings } from '../../../src/listing/settings.ts';
import { useWords } from '../../components/speech.ts';
import { FigureSetting } from './figure-setting.tsx';
import type { Figure, Quantity } from './figures.ts';
import type { Shown } from './use-settings.ts';

const QUANTITIES: Readonly<Record<string, Quantity>> = { mm: 'mm', lb: 'weight', fraction: 'percent', money: 'money' };
const HIGHEST: Readonly<Record<string, number>> = { mm: 20_000, lb: 10_000, fraction: 1, money: 100_000 };

const without = ({ limits }: Settings, name: LimitName): Settings['limits'] =>
  Object.fromEntries(Object.entries(limits).filter(([one]) => one !== name));

export function Limits({ shown }: { readonly shown: Shown }) {
  const { t } = useWords();
  const figure = (name: (typeof CHANGEABLE)[number]): Figure => {
    const { value, unit } = LIMITS[name];
    return {
      name: `limit_${name}`,
      quantity: QUANTITIES[unit] ?? 'mm',
      low: 0,
      high: HIGHEST[unit] ?? value * 100,
      read: ({ limits }) => limits[name] ?? value,
      // A limit that is as it was is no limit of the buyer's own.
      write: (given, now) => ({
        limits: given === null || given === value ? without(now, name) : { ...now.limits, [name]: given },
      }),
    };
  };
  return (
    <details>
      <summary>{t('settings_limits_show')}</summary>
      {CHANGEABLE.map((name) => (
        <FigureSetting key={name} figure={figure(name)} shown={shown} />
      ))}
    </details>
  );
}
