/** Settings: everything has a default that works, so nothing here needs to be touched before the first ad. */
import type { ComponentChildren } from 'preact';
import { useWords } from '../../components/speech.ts';
import { failureMessage } from '../../store/index.ts';
import type { WorkshopHost } from '../host.ts';
import type { ScreenProps } from '../screens.ts';
import { WithStore } from '../use-store.tsx';
import { About } from './about.tsx';
import { Language, Mileage, Theme, Units } from './choices.tsx';
import { Exchange } from './exchange.tsx';
import { FigureSetting } from './figure-setting.tsx';
import { DEAL, DRIVE, type Figure, GEAR } from './figures.ts';
import { HiddenCautions } from './hidden-cautions.tsx';
import { Home } from './home.tsx';
import { Limits } from './limits.tsx';
import { SetAside } from './set-aside.tsx';
import { Transfer } from './transfer.tsx';
import { type Shown, useSettings } from './use-settings.ts';

export default function Settings({ host }: ScreenProps) {
  return (
    <WithStore host={host}>
      <Everything host={host} />
    </WithStore>
  );
}

function Everything({ host }: { readonly host: WorkshopHost }) {
  const { say, t } = useWords();
  const shown = useSettings(host);
  if (shown === null) return <p class="quiet">{t('workshop_opening')}</p>;
  return (
    <div class="settings">
      <p>{t('settings_about')}</p>
      {shown.failed && <p role="alert">{say(failureMessage(shown.failed))}</p>}
      <Part name="money">
        <Units shown={shown} />
        <Exchange shown={shown} />
      </Part>
      <Part name="drive">
        <Home shown={shown} />
        <Mileage shown={shown} />
        <Figures figures={DRIVE} shown={shown} />
      </Part>
      <Part name="gear">
        <Figures figures={GEAR} shown={shown} />
      </Part>
      <Part name="deal">
        <Figures figures={DEAL} shown={shown} />
      </Part>
      <Part name="flags">
        <Limits shown={shown} />
        <HiddenCautions shown={shown} />
      </Part>
      <Part name="look">
        <Language shown={shown} />
        <Theme shown={shown} />
      </Part>
      <Part name="data">
        <Transfer host={host} />
        <SetAside host={host} />
      </Part>
      <Part name="about">
        <About />
      </Part>
    </div>
  );
}

const Figures = ({ figures, shown }: { readonly figures: readonly Figure[]; readonly shown: Shown }) => (
  <>
    {figures.map((figure) => (
      <FigureSetting key={figure.name} figure={figure} shown={shown} />
    ))}
  </>
);

function Part({ name, children }: { readonly name: string; readonly children: ComponentChildren }) {
  const { t } = useWords();
  return (
    <section aria-labelledby={`settings-${name}`}>
      <h2 id={`settings-${name}`}>{t(`settings_part_${name}`)}</h2>
      {children}
    </section>
  );
}
