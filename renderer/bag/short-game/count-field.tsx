/** A small field for a whole number. */

interface Props {
  readonly label: string;
  readonly value: string;
  readonly most: number;
  readonly disabled?: boolean;
  readonly change: (text: string) => void;
}

export function CountField({ label, value, most, disabled, change }: Props) {
  return (
    <input
      type="text"
      inputMode="numeric"
      class="count-field"
      aria-label={label}
      aria-invalid={readCount(value, most) === null}
      value={value}
      disabled={disabled ?? false}
      onInput={(event) => change(event.currentTarget.value)}
    />
  );
}

/** Nothing typed counts as nought; null where it is no whole number from 0 to `most`. */
export function readCount(text: string, most: number): number | null {
  const plain = text.trim();
  if (plain === '') return 0;
  if (!/^\d{1,6}$/u.test(plain)) return null;
  const value = Number(plain);
  return value <= most ? value : null;
}
