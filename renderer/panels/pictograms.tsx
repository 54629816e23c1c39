/** The few pictures on buttons, drawn on a 20 by 20 grid with one stroke width. */

const PATHS = {
  undo: 'M8 5L4 9l4 4M4.5 9H12a4 4 0 0 1 0 8h-2',
  redo: 'M12 5l4 4-4 4M15.5 9H8a4 4 0 0 0 0 8h2',
  print: 'M6 8V3h8v5M6 14H4V8h12v6h-2M6 12h8v5H6z',
  help: 'M7.5 7.5a2.5 2.5 0 1 1 3.6 2.2c-.8.4-1.1.9-1.1 1.8M10 14.6v.2',
  close: 'M5 5l10 10M15 5L5 15',
  plus: 'M10 4v12M4 10h12',
  minus: 'M4 10h12',
  fit: 'M4 8V4h4M12 4h4v4M16 12v4h-4M8 16H4v-4',
  bring: 'M10 3v9M6.5 8.5L10 12l3.5-3.5M4 14v3h12v-3',
  tee: 'M6 4h8M7 4c0 4 3 4 3 8v5',
  warn: 'M10 4l7 12H3zM10 9v3M10 14v.2',
} as const;

export type Pictogram = keyof typeof PATHS;

export function Picture({ of }: { readonly of: Pictogram }) {
  return (
    <svg class="picture" viewBox="0 0 20 20" width="18" height="18" aria-hidden="true">
      <path d={PATHS[of]} />
    </svg>
  );
}
