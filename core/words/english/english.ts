/** All words in English: the pattern for the other languages. */

import { bar } from './bar.ts';
import { cards } from './cards.ts';
import { courseEdits } from './course-edits.ts';
import { courseFaults } from './course-faults.ts';
import { courseFile } from './course-file.ts';
import { courseImport } from './course-import.ts';
import { courseNotes } from './course-notes.ts';
import { courseReading } from './course-reading.ts';
import { day } from './day.ts';
import { drawing } from './drawing.ts';
import { faults } from './faults.ts';
import { features } from './features.ts';
import { golf } from './golf.ts';
import { help } from './help.ts';
import { host } from './host.ts';
import { map } from './map.ts';
import { mapImport } from './map-import.ts';
import { pictures } from './pictures.ts';
import { plan } from './plan.ts';
import { player } from './player.ts';
import { prepare } from './prepare.ts';
import { refusals } from './refusals.ts';
import { round } from './round.ts';
import { sensitivity } from './sensitivity.ts';
import { sheet } from './sheet.ts';
import { shortGame } from './short-game.ts';
import { shots } from './shots.ts';
import { spread } from './spread.ts';
import { system } from './system.ts';
import { tour } from './tour.ts';
import { trees } from './trees.ts';
import { underlay } from './underlay.ts';
import { figures } from './figures.ts';

const language = 'en' as const;

export const english = {
  language,
  figures,
  bar,
  cards,
  courseEdits,
  courseFaults,
  courseFile,
  courseImport,
  courseNotes,
  courseReading,
  day,
  drawing,
  faults,
  features,
  golf,
  help,
  host,
  map,
  mapImport,
  pictures,
  plan,
  player,
  prepare,
  refusals,
  round,
  sensitivity,
  sheet,
  shortGame,
  shots,
  spread,
  system,
  tour,
  trees,
  underlay,
};
