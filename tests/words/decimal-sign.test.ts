import { describe, expect, it } from 'vitest';
import { german } from '../../core/words/german/german.ts';

const { courseNotes, courseReading, courseImport, courseFaults, faults } = german;

// Decimal comma: German usage by DIN 1333 (from memory).
describe('in German a number has its decimal comma', () => {
  it.each([
    ['Äste ab 2,5 m', courseNotes.branches({ metres: 2.5 })],
    ['12,5 m hoch', courseNotes.high({ metres: 12.5 })],
    ['Dichte 0,12 je m', courseNotes.density({ density: 0.12 })],
    ['Krone 7,5 m breit', courseNotes.crown({ metres: 7.5 })],
    ['Höhe 12,5 m', courseReading.canopy.top({ metres: 12.5 })],
    ['unterste Äste 2,5 m', courseReading.canopy.base({ metres: 2.5 })],
    ['Dichte 0,12 je m', courseReading.canopy.density({ perM: 0.12 })],
    ['Kronenradius 3,75 m', courseReading.canopy.crown({ metres: 3.75 })],
    ['(3,5 m) liegen über dem Wipfel (2,5 m)', courseReading.canopy.upsideDown({ base: 3.5, top: 2.5 })],
    ['ohne Breite gilt als 2,5 m breit', courseImport.notes.width({ what: 'golf=cartpath', metres: 2.5 })],
    ['Fällt um 17,5 %', courseFaults.slopeSteep({ slope: 17.5, taken: 15 })],
    ['der Plan nimmt 12,5 %', courseFaults.slopeSteep({ slope: 17.5, taken: 12.5 })],
    ['aus 1,5 m', faults.putts.holedMetres({ made: 3, tries: 2, metres: 1.5 })],
    ['aus 2,5 ft', faults.putts.holed({ made: 3, tries: 2, feet: 2.5 })],
    ['2 Putts aus 1,5 m', faults.putts.count({ putts: 2, metres: 1.5 })],
    ['aus 1,5 m, der 0,4 m hinter', faults.putts.past({ metres: 1.5, past: 0.4 })],
  ])('%s', (wanted, said) => {
    expect(said).toContain(wanted);
  });
});
