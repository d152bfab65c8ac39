/** What the kit lacks and what may be spent on it; where no kit was set up, by the usual list for the settings. */
import { useMemo } from 'preact/hooks';
import { defaultNeeds, type NamedNeed } from '../../../src/kit/need-list.ts';
import type { PiecePrice } from '../../../src/kit/piece-prices.ts';
import { restCost } from '../../../src/kit/state.ts';
import { type KitStatus, kitStatus, platformPrice } from '../../../src/kit/status.ts';
import type { KitFigures } from '../../../src/listing/settings.ts';
import { firstFigures } from '../kit/save.ts';
import { type OpenKit, paidFor } from '../kit/use-kit.ts';

export interface KitNeeds {
  /** False while nobody set up a kit: these are the usual needs. */
  readonly own: boolean;
  readonly figures: KitFigures;
  readonly needs: readonly NamedNeed[];
  readonly status: KitStatus;
  readonly platform: PiecePrice | null;
  /** The whole kit new and delivered, in minor units. */
  readonly allNew: number;
}

export function useKitNeeds(kit: OpenKit | null): KitNeeds | null {
  return useMemo(() => {
    if (kit === null) return null;
    const { settings } = kit;
    const own = kit.figures !== null && kit.needs.length > 0;
    const figures = kit.figures ?? firstFigures(settings);
    const needs = own ? kit.needs : defaultNeeds(figures);
    const { owned, bought } = kit;
    const status = kitStatus({ figures, needs, owned, paid: paidFor(owned, bought), settings });
    const platform = platformPrice(figures, settings);
    return { own, figures, needs, status, platform, allNew: Math.round(restCost(needs, settings, platform).fresh.likely) };
  }, [kit?.settings, kit?.needs, kit?.owned, kit?.bought]);
}
