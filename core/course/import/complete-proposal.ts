/** The last step of every reader: shapes put in order, each feature tried by the course reader, holes assigned, all counted. */

import { inEnglish, type Said, told, type Told, toldFault } from '../../words/told.ts';
import { type Fault, type Result, refuse, succeed } from '../../result.ts';
import { checkGeometry, crossesItself, tidyGeometry } from '../edits/shape.ts';
import { kindTold } from '../edits/words.ts';
import type { FeatureKind } from '../feature-kind.ts';
import { MOST_FEATURES, MOST_VERTICES } from '../parse.ts';
import { positionsOf } from '../positions.ts';
import { readFeature } from '../read-feature.ts';
import { KIND_RULES } from '../schema.ts';
import { assignHoles, type HoleAssignment } from './assign-holes.ts';
import type { LeftOutList } from './left-out.ts';
import { isTangled, MOST_LINE_POINTS } from './tangled-line.ts';
import {
  type ImportContext,
  type ImportKind,
  type ImportProposal,
  originSaid,
  OSM_ID_MEMBER,
  type ProposedFeature,
} from './proposal.ts';

export interface RawProposal {
  readonly kind: ImportKind;
  readonly features: readonly ProposedFeature[];
  readonly leftOut: LeftOutList;
  readonly notes: readonly Told[];
  readonly sources: readonly string[];
  readonly replaces?: ImportProposal['replaces'];
  readonly courseName?: string;
}

const MOST_HOLE_LINES = 1000;
/** Longer outlines are left to the check: looking for crossings takes long on outlines made to be slow. */
const MOST_LOOKED_AT = 2000;

/** Refuses only what would be too much for a course file; single features that cannot be used are left out and listed. */
export function completeProposal(
  raw: RawProposal,
  context: ImportContext,
): Result<ImportProposal, readonly Fault[]> {
  const { leftOut } = raw;
  const notes = [...raw.notes];
  const usable: ProposedFeature[] = [];
  let vertices = 0;
  let crossing = 0;
  for (const feature of raw.features) {
    const tidy = usableFeature(feature);
    if ('why' in tidy) {
      leftOut.add(kindTold(feature.kind), tidy.why, originSaid(feature));
      continue;
    }
    const osmId = tidy.properties[OSM_ID_MEMBER];
    if (typeof osmId === 'string' && context.knownOsmIds.has(osmId)) {
      leftOut.add(
        kindTold(feature.kind),
        told(({ courseImport }) => courseImport.why.known),
        originSaid(feature),
      );
      continue;
    }
    const corners = positionsOf(tidy.geometry).length;
    if (corners <= MOST_LOOKED_AT && crossesItself(tidy.geometry)) crossing++;
    vertices += corners;
    usable.push(tidy);
  }
  if (usable.length > MOST_FEATURES || vertices > MOST_VERTICES) {
    const message = told(({ courseImport }) => courseImport.faults.tooMuch, {
      features: usable.length,
      corners: vertices,
      mostFeatures: MOST_FEATURES,
      mostCorners: MOST_VERTICES,
    });
    return refuse([toldFault({ severity: 'error', code: 'too-much-to-import', where: 'file', message })]);
  }
  const lines = usable.filter(({ kind }) => kind === 'hole').length;
  if (lines > MOST_HOLE_LINES) {
    const message = told(({ courseImport }) => courseImport.faults.manyLines, {
      count: lines,
      most: MOST_HOLE_LINES,
    });
    return refuse([toldFault({ severity: 'error', code: 'too-much-to-import', where: 'file', message })]);
  }
  if (crossing > 0) {
    notes.push(told(({ courseImport }) => courseImport.notes.crossing, { count: crossing }));
  }
  const numbered = numberLines(usable, context, notes);
  const { features, assigned, unassigned } = withoutStrays(assignHoles(numbered, context.holes), leftOut);
  notes.push(...doubleHoles(features, context));
  return succeed({
    kind: raw.kind,
    features,
    counts: countKinds(features),
    assigned,
    unassigned,
    leftOut: leftOut.list(),
    notes: notes.map(inEnglish),
    toldNotes: notes,
    sources: raw.sources,
    replaces: raw.replaces ?? [],
    ...(raw.courseName === undefined ? {} : { courseName: raw.courseName }),
  });
}

/** Hole lines without a number get the lowest free ones, in the order of the file. */
function numberLines(
  features: readonly ProposedFeature[],
  context: ImportContext,
  notes: Told[],
): readonly ProposedFeature[] {
  const isUnnumbered = ({ kind, properties }: ProposedFeature) =>
    kind === 'hole' && properties['ref'] === undefined;
  const taken = new Set(context.holes.map(({ hole }) => hole));
  for (const { kind, properties } of features) if (kind === 'hole') taken.add(Number(properties['ref']));
  const given: number[] = [];
  let number = 0;
  const numbered = features.map((feature) => {
    if (!isUnnumbered(feature)) return feature;
    do number++;
    while (taken.has(number));
    given.push(number);
    return { ...feature, properties: { ...feature.properties, ref: String(number) } };
  });
  if (given.length > 0) {
    const first = given.slice(0, 18).join(', ');
    const numbers =
      given.length > 18 ? told(({ courseImport }) => courseImport.notes.andSoOn, { numbers: first }) : first;
    notes.push(told(({ courseImport }) => courseImport.notes.numbered, { count: given.length, numbers }));
  }
  return numbered;
}

/** A marker that found no hole cannot be read from a course file: it is left out, and indices close the gap. */
function withoutStrays(placed: HoleAssignment, leftOut: LeftOutList): HoleAssignment {
  const why = new Map(placed.unassigned.map((each) => [each.feature, each.told]));
  const newIndex = new Map<number, number>();
  const features = placed.features.filter((feature, index) => {
    const reason = why.get(index);
    if (reason !== undefined && KIND_RULES[feature.kind].required.includes('ref')) {
      leftOut.add(
        kindTold(feature.kind),
        told(({ courseImport }) => courseImport.why.noHole, { why: reason }),
        originSaid(feature),
      );
      return false;
    }
    newIndex.set(index, newIndex.size);
    return true;
  });
  const moved = <T extends { readonly feature: number }>(list: readonly T[]) =>
    list.flatMap((each) => {
      const feature = newIndex.get(each.feature);
      return feature === undefined ? [] : [{ ...each, feature }];
    });
  return { features, assigned: moved(placed.assigned), unassigned: moved(placed.unassigned) };
}

const IT = told(({ features }) => features.it);

/** The feature as the course will hold it, or why it cannot. */
function usableFeature(feature: ProposedFeature): ProposedFeature | { readonly why: Said } {
  const checked = checkGeometry(feature.geometry, IT);
  if (!checked.ok) return { why: checked.error.told ?? checked.error.message };
  if (
    feature.kind === 'path' &&
    feature.geometry.type === 'LineString' &&
    isTangled(feature.geometry.coordinates)
  ) {
    return { why: told(({ courseImport }) => courseImport.why.tangled, { most: MOST_LINE_POINTS }) };
  }
  const geometry = tidyGeometry(feature.geometry);
  const rounded = checkGeometry(geometry, IT);
  if (!rounded.ok) return { why: rounded.error.told ?? rounded.error.message };
  const properties = { ...feature.properties };
  const ref = readRef(properties['ref']);
  if (ref === undefined) delete properties['ref'];
  else properties['ref'] = ref;
  // a marker without a number may yet find its hole, and a line gets one
  const needsRef = KIND_RULES[feature.kind].required.includes('ref') && ref === undefined;
  const tried = readFeature(
    { type: 'Feature', properties: needsRef ? { ...properties, ref: '1' } : properties, geometry },
    0,
  );
  const error = tried.faults.find(({ severity }) => severity === 'error');
  return error === undefined
    ? { ...feature, properties, geometry }
    : { why: error.told?.message ?? error.message };
}

/** `7`, `07` and 7 name hole 7; everything else names none. */
export function readRef(ref: unknown): string | undefined {
  if (typeof ref !== 'string' && typeof ref !== 'number') return undefined;
  const found = /^\s*0*([1-9]\d{0,3})\s*$/.exec(String(ref));
  return found === null ? undefined : found[1]!;
}

function countKinds(features: readonly ProposedFeature[]): ImportProposal['counts'] {
  const counts = new Map<FeatureKind, number>();
  for (const { kind } of features) counts.set(kind, (counts.get(kind) ?? 0) + 1);
  return [...counts].map(([kind, count]) => ({ kind, count }));
}

function doubleHoles(features: readonly ProposedFeature[], context: ImportContext): Told[] {
  const seen = new Set(context.holes.map(({ hole }) => hole));
  const twice = new Set<number>();
  for (const { kind, properties } of features) {
    if (kind !== 'hole') continue;
    const hole = Number(properties['ref']);
    if (seen.has(hole)) twice.add(hole);
    seen.add(hole);
  }
  if (twice.size === 0) return [];
  return [
    told(({ courseImport }) => courseImport.notes.twice, {
      holes: [...twice].sort((a, b) => a - b).join(', '),
    }),
  ];
}
