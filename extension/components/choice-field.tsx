/** A choice out of a short list, edited in place. */
import { useId } from 'preact/hooks';

export interface Option {
  readonly value: string;
  readonly words: string;
}

export interface ChoiceFieldProps {
  readonly path: string;
  readonly label: string;
  readonly labelShown?: boolean;
  readonly value: string;
  readonly options: readonly Option[];
  /** Id of what explains the choice. */
  readonly hint?: string | undefined;
  readonly onChoice: (value: string) => void;
}

export function ChoiceField({ path, label, labelShown, value, options, hint, onChoice }: ChoiceFieldProps) {
  const id = useId();
  return (
    <span class="field">
      <label for={id} class={labelShown ? 'field-label' : 'unseen'}>
        {label}
      </label>
      <select
        id={id}
        data-path={path}
        value={value}
        aria-describedby={hint}
        onChange={(event) => onChoice(event.currentTarget.value)}
      >
        {options.map((option) => (
          <option key={option.value} value={option.value} selected={option.value === value}>
            {option.words}
          </option>
        ))}
      </select>
    </span>
  );
}
