/** A number edited in place. Every good value counts at once; a bad one gets a message at the field, and the last good one keeps counting. */
import type { ComponentChildren } from 'preact';
import { useId, useState } from 'preact/hooks';
import type { Decimal } from './parse-input.ts';
import { useWords } from './speech.ts';

export interface NumberFieldProps {
  readonly path: string;
  readonly label: string;
  readonly labelShown?: boolean;
  readonly value: number | null;
  readonly write: (value: number) => string;
  readonly parse: (text: string, decimal: Decimal) => number | null;
  /** Both ends are allowed. */
  readonly low: number;
  readonly high: number;
  /** Said when the text is no number within the limits. */
  readonly complaint: string;
  readonly onValue: (value: number) => void;
  /** When given, an emptied field is no mistake. */
  readonly onEmpty?: (() => void) | undefined;
  /** Stands behind the field, and is told with it. */
  readonly unit?: string | undefined;
  /** What else stands there, such as a select. */
  readonly children?: ComponentChildren;
  readonly width?: number;
  /** Id of what explains the field. */
  readonly hint?: string | undefined;
  readonly data?: Readonly<Record<`data-${string}`, string>>;
}

export function NumberField(props: NumberFieldProps) {
  const id = useId();
  const { decimal } = useWords().say;
  const [draft, setDraft] = useState<string | null>(null);
  const [complains, setComplains] = useState(false);
  const good = (text: string): number | null => {
    const value = props.parse(text, decimal);
    return value !== null && value >= props.low && value <= props.high ? value : null;
  };
  const mayStand = (text: string): boolean => good(text) !== null || (text.trim() === '' && props.onEmpty !== undefined);
  const take = (text: string) => {
    setDraft(text);
    if (complains && mayStand(text)) setComplains(false);
    const value = good(text);
    if (value !== null) props.onValue(value);
    else if (text.trim() === '') props.onEmpty?.();
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
  const explained = [complains && `${id}-complaint`, props.unit && `${id}-unit`, props.hint].filter(Boolean).join(' ');
  const shown = draft ?? (props.value === null ? '' : props.write(props.value));
  return (
    <span class="field">
      <label for={id} class={props.labelShown ? 'field-label' : 'unseen'}>
        {props.label}
      </label>
      <span class="field-row">
        <input
          id={id}
          type="text"
          inputMode="decimal"
          autocomplete="off"
          value={shown}
          placeholder="?"
          style={{ width: `${Math.max(props.width ?? 4, shown.length + 1)}ch` }}
          data-path={props.path}
          aria-invalid={complains ? 'true' : undefined}
          aria-describedby={explained || undefined}
          onInput={(event) => take(event.currentTarget.value)}
          onBlur={leave}
          onKeyDown={(event) => {
            if (event.key === 'Enter') leave();
            if (event.key === 'Escape') dropDraft();
          }}
          {...props.data}
        />
        {props.unit && (
          <span id={`${id}-unit`} class="unit">
            {props.unit}
          </span>
        )}
        {props.children}
      </span>
      {complains && (
        <span id={`${id}-complaint`} class="complaint" role="alert">
          {props.complaint}
        </span>
      )}
    </span>
  );
}
