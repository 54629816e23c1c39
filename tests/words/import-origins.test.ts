import { describe, expect, it } from 'vitest';
import { readGeojson } from '../../core/course/import/geojson.ts';
import { readGpx } from '../../core/course/import/gpx.ts';
import { EMPTY_CONTEXT, type ImportProposal, originSaid } from '../../core/course/import/proposal.ts';
import type { Fault, Result } from '../../core/result.ts';
import { faultText, sayIn } from '../../core/words/told.ts';
import { wordsIn } from '../../core/words/words.ts';

const german = wordsIn('de');
const at = (lon: number) => ({ type: 'Point', coordinates: [lon, 52] });
const feature = (properties: object, lon = 4) => ({ type: 'Feature', properties, geometry: at(lon) });
const collection = (...features: readonly unknown[]): string =>
  JSON.stringify({ type: 'FeatureCollection', features });
const gpx = `<gpx><wpt lat="52" lon="4"><name>Larch</name></wpt><trk><name>Stroll</name><trkseg>
  <trkpt lat="52" lon="4"/><trkpt lat="52.001" lon="4"/></trkseg></trk><rte><name>Drive</name></rte></gpx>`;

function proposalOf(read: Result<ImportProposal, readonly Fault[]>): ImportProposal {
  if (!read.ok) throw new Error(read.error[0]?.message ?? 'refused');
  return read.value;
}

function leftOutOf({ leftOut }: ImportProposal): object {
  return {
    english: leftOut.flatMap(({ examples }) => examples),
    german: leftOut.flatMap(({ told }) => told.examples.map((example) => sayIn(example, german))),
  };
}

describe('what a thing of a map file is called', () => {
  it('is told in German for GeoJSON', () => {
    const proposal = proposalOf(
      readGeojson(
        collection(feature({ kiosk: 'yes', name: 'Hut' }), feature({ natural: 'tree' }), null),
        EMPTY_CONTEXT,
      ),
    );
    expect(leftOutOf(proposal)).toEqual({
      english: ['feature 0 "Hut"', 'feature 2'],
      german: ['Objekt 0 „Hut“', 'Objekt 2'],
    });
    const [tree] = proposal.features;
    expect([tree!.origin, sayIn(originSaid(tree!), german)]).toEqual(['feature 1', 'Objekt 1']);
  });

  it('is told in German where nothing of the file is in degrees', () => {
    const read = readGeojson(collection(feature({ natural: 'tree', name: 'Larch' }, 4000)), EMPTY_CONTEXT);
    if (read.ok) throw new Error('taken');
    expect(faultText(read.error[0]!, german).message).toContain('Die Koordinaten von Objekt 0 „Larch“ sind');
  });

  it('is told in German for GPX', () => {
    expect(leftOutOf(proposalOf(readGpx(gpx, EMPTY_CONTEXT)))).toEqual({
      english: ['waypoint "Larch"', 'track "Stroll"', 'route "Drive"'],
      german: ['Wegpunkt „Larch“', 'Track „Stroll“', 'Route „Drive“'],
    });
  });
});
