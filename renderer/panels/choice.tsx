/** A few exclusive choices beside each other: radio buttons drawn as one strip. */

interface Props<T extends string> {
  readonly label: string;
  readonly name: string;
  readonly value: T;
  readonly entries: readonly (readonly [T, string])[];
  readonly choose: (chosen: T) => void;
}

export function Choice<T extends string>({ label, name, value, entries, choose }: Props<T>) {
  return (
    <fieldset class="choice">
      <legend class="unseen">{label}</legend>
      {entries.map(([entry, words]) => (
        <label key={entry}>
          <input
            type="radio"
            name={name}
            value={entry}
            checked={entry === value}
            onChange={() => choose(entry)}
          />
          <span>{words}</span>
        </label>
      ))}
    </fieldset>
  );
}
