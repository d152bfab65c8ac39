/** Assumptions that the buyer may change, by their path into the settings: whether one is the buyer's own, changing it, putting it back. */
import type { Range } from '../units/range.ts';
import {
  type CategoryRate,
  DEFAULT_SETTINGS,
  RATE_CATEGORIES,
  type RateCategory,
  type Settings,
  settingsSchema,
} from './settings.ts';

/** Settings that are one figure. */
const FIGURES = ['sleeveMm', 'perMile', 'hourWorth', 'speedMph', 'salesTax', 'margin'] as const;
type Figure = (typeof FIGURES)[number];

/** "margin", or a cell of the rates table: "rates.iron.used". */
export type SettingPath = Figure | `rates.${RateCategory}.${keyof CategoryRate}`;

interface Cell {
  readonly category: RateCategory;
  readonly which: keyof CategoryRate;
}

const isFigure = (path: SettingPath): path is Figure => FIGURES.some((figure) => figure === path);

function cellAt(path: SettingPath): Cell | null {
  const [, name, which] = path.split('.');
  const category = RATE_CATEGORIES.find((one) => one === name);
  return category !== undefined && (which === 'used' || which === 'new' || which === 'shipping') ? { category, which } : null;
}

/** A cell has a low and a high end too; a figure does not. */
export const isCell = (path: SettingPath): boolean => !isFigure(path);

/** The buyer has put a figure of their own there. */
export function isOwn(settings: Settings, path: SettingPath): boolean {
  if (isFigure(path)) return settings[path] !== DEFAULT_SETTINGS[path];
  const cell = cellAt(path);
  return cell !== null && settings.rates[cell.category]?.[cell.which] !== undefined;
}

/**
 * The part of the settings that changes when the buyer puts a value of their own there, in the setting's own unit. `date` is the day on
 * which that is ("2026-05-31"). Null when the settings do not allow the value: out of order, out of its limits.
 */
export function withOwn(settings: Settings, path: SettingPath, value: Range, date: string): Partial<Settings> | null {
  const cell = cellAt(path);
  const changed: Partial<Settings> =
    cell === null
      ? { [path]: value.likely }
      : {
          rates: {
            ...settings.rates,
            [cell.category]: { ...settings.rates[cell.category], [cell.which]: { ...value, source: 'own', date } },
          },
        };
  return settingsSchema.safeParse({ ...settings, ...changed }).success ? changed : null;
}

/** The part of the settings that changes when the default, or what the finds taught, is to count again. */
export function withDefault(settings: Settings, path: SettingPath): Partial<Settings> {
  if (isFigure(path)) return { [path]: DEFAULT_SETTINGS[path] };
  const cell = cellAt(path);
  if (cell === null) return {};
  const { [cell.which]: _own, ...others } = settings.rates[cell.category] ?? {};
  const { [cell.category]: _row, ...rates } = settings.rates;
  return { rates: Object.keys(others).length > 0 ? { ...rates, [cell.category]: others } : rates };
}
