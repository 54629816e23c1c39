/** A field that takes its value in when it is left or Enter is pressed, and puts the old one back where it is refused. */

import { useEffect, useId, useState } from 'preact/hooks';

interface Props {
  readonly name: string;
  readonly value: string;
  readonly disabled?: boolean;
  readonly placeholder?: string;
  /** Behind the field. */
  readonly unit?: string;
  readonly numeric?: boolean;
  /** Suggestions for what is typed. */
  readonly choices?: readonly string[];
  /** Where the value is one of these: they are chosen by their words. */
  readonly options?: readonly { readonly value: string; readonly words: string }[];
  /** False where the value is refused. */
  readonly take: (text: string) => boolean;
}

export function ValueField({
  name,
  value,
  disabled,
  placeholder,
  unit,
  numeric,
  choices,
  options,
  take,
}: Props) {
  const id = useId();
  const [text, setText] = useState(value);
  useEffect(() => setText(value), [value]);
  const takeIn = (): void => {
    if (text !== value && !take(text)) setText(value);
  };
  return (
    <div class="value-field">
      <label for={id}>{name}</label>
      <span>
        {options === undefined ? (
          <input
            id={id}
            type="text"
            inputMode={numeric === true ? 'decimal' : 'text'}
            class={numeric === true ? 'short-input' : ''}
            value={text}
            disabled={disabled === true}
            placeholder={placeholder ?? ''}
            list={choices === undefined ? undefined : `${id}-choices`}
            onInput={(event) => setText(event.currentTarget.value)}
            onBlur={takeIn}
            onKeyDown={(event) => {
              if (event.key === 'Enter') takeIn();
              if (event.key === 'Escape') setText(value);
            }}
          />
        ) : (
          <select
            id={id}
            value={value}
            disabled={disabled === true}
            onChange={(event) => {
              if (!take(event.currentTarget.value)) event.currentTarget.value = value;
            }}
          >
            <option value="">{placeholder ?? ''}</option>
            {options.map((choice) => (
              <option key={choice.value} value={choice.value}>
                {choice.words}
              </option>
            ))}
            {value !== '' && !options.some((choice) => choice.value === value) && (
              <option value={value}>{value}</option>
            )}
          </select>
        )}
        {unit !== undefined && <span class="faint"> {unit}</span>}
        {choices !== undefined && (
          <datalist id={`${id}-choices`}>
            {choices.map((choice) => (
              <option key={choice} value={choice} />
            ))}
          </datalist>
        )}
      </span>
    </div>
  );
}
