/** Several values in one field, edited in place. A good list counts at once; a bad one gets a message, and the last good one keeps counting. */
import { useId, useState } from 'preact/hooks';

export interface ListFieldProps {
  readonly path: string;
  readonly label: string;
  /** The list as it counts now, written out; empty when there is none. */
  readonly value: string;
  readonly isGood: (text: string) => boolean;
  readonly onText: (text: string) => void;
  readonly onEmpty: () => void;
  readonly complaint: string;
  readonly hint: string;
}

export function ListField({ path, label, value, isGood, onText, onEmpty, complaint, hint }: ListFieldProps) {
  const id = useId();
  const [draft, setDraft] = useState<string | null>(null);
  const [complains, setComplains] = useState(false);
  const mayStand = (text: string): boolean => text.trim() === '' || isGood(text);
  const take = (text: string) => {
    setDraft(text);
    if (complains && mayStand(text)) setComplains(false);
    if (text.trim() === '') onEmpty();
    else if (isGood(text)) onText(text);
  };
  const leave = () => {
    if (draft === null) return;
    if (mayStand(draft)) setDraft(null);
    else setComplains(true);
  };
  const dropDraft = () => {
    setDraft(null);
    setComplains(false);
  };
  return (
    <span class="field field-list">
      <label for={id} class="field-label">
        {label}
      </label>
      <input
        id={id}
        type="text"
        autocomplete="off"
        value={draft ?? value}
        data-path={path}
        aria-invalid={complains ? 'true' : undefined}
        aria-describedby={complains ? `${id}-complaint` : `${id}-hint`}
        onInput={(event) => take(event.currentTarget.value)}
        onBlur={leave}
        onKeyDown={(event) => {
          if (event.key === 'Enter') leave();
          if (event.key === 'Escape') dropDraft();
        }}
      />
      {complains ? (
        <span id={`${id}-complaint`} class="complaint" role="alert">
          {complaint}
        </span>
      ) : (
        <span id={`${id}-hint`} class="line-notes">
          {hint}
        </span>
      )}
    </span>
  );
}
