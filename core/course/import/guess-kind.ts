/** Tells from the first bytes of a file which reader it is for. */

import type { ImportKind } from './proposal.ts';
import { isTiff } from './tiff-directory.ts';

const LOOKED_AT = 16_384;

const GEOJSON_TYPE =
  /"type"\s*:\s*"(FeatureCollection|Feature|GeometryCollection|(Multi)?(Point|LineString|Polygon))"/;

/** Undefined where the bytes say nothing: the person has to say. */
export function guessImportKind(bytes: Uint8Array): ImportKind | undefined {
  if (isTiff(bytes)) return 'heights';
  // what is looked for is ASCII in every encoding that is read
  const head = String.fromCharCode(...bytes.subarray(0, LOOKED_AT));
  const root = /<(?!\?|!)(?:[\w.-]+:)?([\w.-]+)/.exec(withoutComments(head))?.[1];
  const start = /[<{[]/.exec(head)?.[0];
  if (start === '<') return root === 'osm' ? 'osm' : root === 'gpx' ? 'gpx' : undefined;
  if (start !== '{') return undefined;
  const overpass = head.search(/"(elements|osm3s)"\s*:/);
  const geojson = head.search(GEOJSON_TYPE);
  if (overpass < 0) return geojson < 0 ? undefined : 'geojson';
  return geojson >= 0 && geojson < overpass ? 'geojson' : 'osm';
}

function withoutComments(xml: string): string {
  return xml.replace(/<!--[\s\S]*?(-->|$)/g, '');
}
