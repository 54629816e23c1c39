/** The pictures of the help pages by name: a page asks for one as for an image, `![](picture:flight-in-wind)`. */

import type { Words } from '../../../core/words/words.ts';
import { useWords } from '../../state/use-words.ts';
import { captureBySpeed } from './capture-speed.ts';
import { dragAndLift } from './drag-and-lift.ts';
import { flightInWind } from './flight-in-wind.ts';
import { lieEllipses } from './lie-ellipses.ts';
import { makeShare } from './make-share.ts';
import type { PlotData } from './plot-data.ts';
import { Plot, type PlotWords } from './plot.tsx';
import { runByGround } from './run-by-ground.ts';
import { WINDOW_PICTURES, WindowPicture } from './window-pictures.tsx';

interface HelpPlot {
  readonly data: () => PlotData;
  readonly words: (words: Words) => PlotWords;
}

export const HELP_PLOTS: Readonly<Record<string, HelpPlot>> = {
  'flight-in-wind': { data: flightInWind, words: ({ help }) => help.pictures.flightInWind },
  'drag-and-lift': { data: dragAndLift, words: ({ help }) => help.pictures.dragAndLift },
  'run-by-ground': { data: runByGround, words: ({ help }) => help.pictures.runByGround },
  'capture-speed': { data: captureBySpeed, words: ({ help }) => help.pictures.captureSpeed },
  'make-share': { data: makeShare, words: ({ help }) => help.pictures.makeShare },
  'lie-ellipses': { data: lieEllipses, words: ({ help }) => help.pictures.lieEllipses },
};

const SCHEME = 'picture:';

/** The name that an image's address asks for; null for any other address: nothing is fetched. */
export function pictureName(address: string): string | null {
  const name = address.startsWith(SCHEME) ? address.slice(SCHEME.length) : '';
  return Object.hasOwn(HELP_PLOTS, name) || Object.hasOwn(WINDOW_PICTURES, name) ? name : null;
}

/** Each is worked out once, when it is first shown. */
const drawn = new Map<string, PlotData>();

function dataOf(name: string): PlotData {
  const known = drawn.get(name) ?? HELP_PLOTS[name]!.data();
  drawn.set(name, known);
  return known;
}

export function HelpPicture({ name }: { readonly name: string }) {
  const words = useWords();
  if (Object.hasOwn(WINDOW_PICTURES, name)) return <WindowPicture name={name} />;
  return <Plot data={dataOf(name)} words={HELP_PLOTS[name]!.words(words)} figures={words.figures} />;
}
