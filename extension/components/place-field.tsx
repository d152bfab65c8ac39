/** A place typed by name or postcode, with a list of those that may be meant. What can mean several is asked, never taken. */
import { useEffect, useId, useState } from 'preact/hooks';
import type { Candidate } from '../../src/places/candidate.ts';
import type { Place } from '../../src/trip/great-circle.ts';
import type { DistanceUnit } from '../../src/units/length.ts';
import { choices, placeDetail, placeName, placeOf, placeTrouble } from './place-words.ts';
import { useWords } from './speech.ts';
import type { Places } from './use-places.ts';

export interface PlaceFieldProps {
  readonly path: string;
  readonly label: string;
  readonly value: Place | null;
  /** Stands in the field while nothing is chosen: what the ad says. */
  readonly first?: string | null;
  readonly places: Places;
  /** What is near it comes first. */
  readonly home: Place | null;
  readonly unit: DistanceUnit;
  /** Id of what explains the field. */
  readonly hint?: string;
  /** Null when the field was emptied. */
  readonly onPlace: (place: Place | null) => void;
}

export function PlaceField({ path, label, value, first = null, places, home, unit, hint, onPlace }: PlaceFieldProps) {
  const words = useWords();
  const { t } = words;
  const id = useId();
  const [draft, setDraft] = useState<string | null>(null);
  const [open, setOpen] = useState(false);
  const [active, setActive] = useState(-1);
  const [left, setLeft] = useState(false);
  const { gazetteer, state, want } = places;
  const shown = draft ?? value?.name ?? first ?? '';
  const unsettled = draft !== null || (value === null && shown !== '');
  const found = gazetteer && unsettled ? gazetteer.find(shown, home) : null;
  const options = gazetteer && found ? choices(gazetteer, found, shown, home) : [];
  const listed = open && options.length > 0;
  const trouble = found && (left || draft === null) ? placeTrouble(found) : null;
  // A long list scrolls in itself; the line that the keys are at must be seen.
  useEffect(() => {
    if (active >= 0) document.getElementById(`${id}-${active}`)?.scrollIntoView?.({ block: 'nearest' });
  }, [active]);
  const close = () => {
    setOpen(false);
    setActive(-1);
  };
  const take = (candidate: Candidate) => {
    onPlace(placeOf(candidate));
    setDraft(null);
    close();
  };
  /** What is clearly meant is taken; an emptied field says that nothing is known; else the text stays, with what is wrong with it. */
  const settle = () => {
    if (draft !== null && draft.trim() === '') {
      onPlace(null);
      setDraft(null);
    } else if (draft !== null && found?.ok && found.chosen) take(found.chosen);
    setLeft(true);
  };
  const move = (step: number) => {
    want();
    setOpen(true);
    if (options.length > 0) setActive((active + step + (active < 0 && step < 0 ? 1 : 0) + options.length) % options.length);
  };
  const key = (event: KeyboardEvent) => {
    if (event.key === 'ArrowDown') move(1);
    else if (event.key === 'ArrowUp') move(-1);
    else if (event.key === 'Enter') {
      const chosen = listed ? options[active] : undefined;
      if (chosen) take(chosen);
      else {
        settle();
        setOpen(!(found?.ok && found.chosen));
      }
    } else if (event.key === 'Escape' && (open || draft !== null)) {
      if (!listed) setDraft(null);
      close();
    } else return;
    event.preventDefault();
  };
  const says = [
    state === 'reading' && t('places_reading'),
    state === 'failed' && t('places_unreadable'),
    trouble ? t(trouble) : listed && t('places_count', { n: options.length }),
  ]
    .filter(Boolean)
    .join(' ');
  return (
    <span class="field place-field">
      <label for={id} class="field-label">
        {label}
      </label>
      <input
        id={id}
        type="text"
        role="combobox"
        aria-autocomplete="list"
        aria-expanded={listed}
        aria-controls={listed ? `${id}-list` : undefined}
        aria-activedescendant={listed && active >= 0 ? `${id}-${active}` : undefined}
        aria-invalid={trouble ? 'true' : undefined}
        aria-describedby={[says && `${id}-says`, hint].filter(Boolean).join(' ') || undefined}
        autocomplete="off"
        maxLength={120}
        value={shown}
        data-path={path}
        onFocus={want}
        onInput={(event) => {
          want();
          setDraft(event.currentTarget.value);
          setLeft(false);
          setOpen(true);
          setActive(-1);
        }}
        onKeyDown={key}
        onBlur={() => {
          settle();
          close();
        }}
      />
      {listed && (
        <div id={`${id}-list`} role="listbox" tabIndex={-1} aria-label={label} class="place-list">
          {options.map((option, index) => (
            <div
              key={`${option.country} ${option.lat} ${option.lon} ${option.name}`}
              id={`${id}-${index}`}
              role="option"
              tabIndex={-1}
              aria-selected={index === active}
              data-place={placeName(option)}
              // At the press, before the field loses the focus; keys choose through the field.
              onMouseDown={(event) => {
                event.preventDefault();
                take(option);
              }}
            >
              {placeName(option)} <span class="quiet">{placeDetail(words, option, options, unit)}</span>
            </div>
          ))}
        </div>
      )}
      <span id={`${id}-says`} class={trouble || state === 'failed' ? 'complaint' : 'unseen'} role="status" data-says="">
        {says}
      </span>
    </span>
  );
}
