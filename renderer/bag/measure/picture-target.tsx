/** A photo of the practice ground: two marks at known distances, then a click where each ball came down. */

import { tell, told, type Told } from '../../../core/words/told.ts';
import { useEffect, useRef, useState } from 'preact/hooks';
import { addShots } from '../../../core/player/edits/shots.ts';
import type { RecordedShot } from '../../../core/player/format.ts';
import {
  metresPerPoint,
  type PictureScale,
  type PicturePoint,
  placeInPicture,
  scaleOfPicture,
} from '../../../core/player/picture-target.ts';
import { refuse, type Result } from '../../../core/result.ts';
import { Field } from '../../panels/field.tsx';
import { asideText, inUnits, lengthText, unitShort } from '../../state/measures.ts';
import { useApp } from '../../state/use-app.ts';
import { NumberField } from '../number-field.tsx';
import { today } from '../short-game/short-page.tsx';
import { useBag, useDesk } from '../state/use-bag.ts';
import type { Words } from '../../../core/words/words.ts';
import { useWords } from '../../state/use-words.ts';

const MOST_BYTES = 60_000_000;
/** A click is a few points off on a photo of usual size. */
const CLICK_POINTS = 4;

interface Photo {
  readonly address: string;
  readonly name: string;
  readonly width: number;
  readonly height: number;
}

export function PictureTarget() {
  const words = useWords();
  const desk = useDesk();
  const units = useApp((state) => state.settings.units);
  const bag = useBag((state) => state.file?.history.present.bag ?? null);
  const locked = useBag((state) => state.file?.access.may !== 'write');
  const [photo, setPhoto] = useState<Photo | null>(null);
  const [fault, setFault] = useState<string | null>(null);
  const [points, setPoints] = useState<readonly PicturePoint[]>([]);
  const [near, setNear] = useState<number | null>(null);
  const [far, setFar] = useState<number | null>(null);
  const [heightM, setHeightM] = useState(1.6);
  const [club, setClub] = useState('');
  const [roll, setRoll] = useState(0);
  const picker = useRef<HTMLInputElement>(null);
  useEffect(
    () => () => {
      if (photo !== null) URL.revokeObjectURL(photo.address);
    },
    [photo],
  );
  const metres = units === 'yards' ? 0.9144 : 1;
  const scale = scaleFrom(photo, points, near, far, heightM);
  const balls = points.slice(2);
  const read = balls.map((point) =>
    scale?.ok === true ? placeInPicture(scale.value, point) : refuse(told(({ shots }) => shots.photo.noFit)),
  );
  const shots = read.flatMap((place): RecordedShot[] =>
    place.ok
      ? [
          {
            club,
            swing: 'full',
            carryM: tenth(place.value.distanceM / (1 + roll / 100)),
            directionDeg: tenth((place.value.direction * 180) / Math.PI),
            ...(roll > 0 ? { totalM: tenth(place.value.distanceM) } : {}),
            lie: 'range',
            at: today(),
          },
        ]
      : [],
  );
  const open = (file: File): void => {
    if (file.size > MOST_BYTES) {
      setFault(words.shots.photo.tooLarge({ name: file.name }));
      return;
    }
    const address = URL.createObjectURL(file);
    const image = new Image();
    image.onload = () => {
      setFault(null);
      setPoints([]);
      setPhoto({ address, name: file.name, width: image.naturalWidth, height: image.naturalHeight });
    };
    image.onerror = () => {
      URL.revokeObjectURL(address);
      setFault(words.shots.photo.noPicture({ name: file.name }));
    };
    image.src = address;
  };
  const take = (): void => {
    const counted = words.shots.count({ count: shots.length });
    if (desk.edit(words.shots.photo.addStep({ shots: counted }), (document) => addShots(document, shots))) {
      desk.store.dispatch({ type: 'said', words: words.shots.added({ shots: counted }) });
      setPoints(points.slice(0, 2));
    }
  };
  return (
    <section class="picture-target" aria-label={words.shots.measure.photo}>
      <p class="faint small-print">{words.shots.photo.explain}</p>
      <div class="bag-row">
        <button type="button" class="small-button" onClick={() => picker.current?.click()}>
          {words.shots.photo.choose}
        </button>
        <input
          ref={picker}
          class="unseen"
          type="file"
          tabIndex={-1}
          aria-label={words.shots.photo.photo}
          accept="image/jpeg,image/png,image/webp"
          onChange={(event) => {
            const file = event.currentTarget.files?.[0];
            if (file !== undefined) open(file);
            event.currentTarget.value = '';
          }}
        />
        <NumberField
          name={words.shots.photo.nearer}
          unit={unitShort(units)}
          value={near === null ? null : inUnits(near, units)}
          least={5}
          most={400}
          decimals={1}
          take={(length) => setNear(length * metres)}
        />
        <NumberField
          name={words.shots.photo.farther}
          unit={unitShort(units)}
          value={far === null ? null : inUnits(far, units)}
          least={5}
          most={430}
          decimals={1}
          take={(length) => setFar(length * metres)}
        />
        <NumberField
          name={words.shots.photo.camera}
          unit="m"
          value={heightM}
          least={0.3}
          most={30}
          decimals={2}
          take={setHeightM}
        />
      </div>
      {fault !== null && (
        <p class="field-fault" role="alert">
          {fault}
        </p>
      )}
      {photo !== null && (
        <>
          <p class="next-step" role="status">
            {nextStep(words, points.length, near, far, scale)}
          </p>
          <PhotoStage photo={photo} points={points} add={(point) => setPoints([...points, point])} />
          <div class="bag-row">
            <button
              type="button"
              class="small-button"
              disabled={points.length === 0}
              onClick={() => setPoints(points.slice(0, -1))}
            >
              {words.shots.photo.takeBack}
            </button>
            <button
              type="button"
              class="small-button"
              disabled={points.length === 0}
              onClick={() => setPoints([])}
            >
              {words.shots.photo.again}
            </button>
            <Field
              name={words.shots.photo.hitWith}
              control={(id) => (
                <select id={id} value={club} onChange={(event) => setClub(event.currentTarget.value)}>
                  <option value="">{words.shots.chooseClub}</option>
                  {(bag ?? [])
                    .filter(({ kind }) => kind !== 'putter')
                    .map(({ name }) => (
                      <option key={name} value={name}>
                        {name}
                      </option>
                    ))}
                </select>
              )}
            />
            <NumberField
              name={words.shots.photo.roll}
              unit={words.shots.photo.ofCarry}
              value={roll}
              least={0}
              most={40}
              decimals={0}
              take={setRoll}
            />
            <button
              type="button"
              class="main-button"
              disabled={locked || club === '' || shots.length === 0}
              onClick={take}
            >
              {words.shots.add({ shots: words.shots.count({ count: shots.length }) })}
            </button>
          </div>
          {balls.length > 0 && (
            <ol class="photo-balls" aria-label={words.shots.photo.balls}>
              {read.map((place, i) => (
                <li key={i} class={place.ok ? undefined : 'warning'}>
                  {place.ok
                    ? `${lengthText(place.value.distanceM, units)}, ${asideText(place.value.distanceM * Math.sin(place.value.direction), units, words)}${clickDoubt(words, scale, place.value.distanceM, units)}`
                    : tell(place.error, words)}
                </li>
              ))}
            </ol>
          )}
        </>
      )}
    </section>
  );
}

function tenth(value: number): number {
  return Math.round(value * 10) / 10 + 0;
}

function clickDoubt(
  words: Words,
  scale: Result<PictureScale, Told> | null,
  distanceM: number,
  units: 'yards' | 'metres',
): string {
  if (scale?.ok !== true) return '';
  return words.shots.photo.clickDoubt({
    length: lengthText(Math.max(1, CLICK_POINTS * metresPerPoint(scale.value, distanceM)), units),
  });
}

function scaleFrom(
  photo: Photo | null,
  [first, second]: readonly PicturePoint[],
  near: number | null,
  far: number | null,
  heightM: number,
): Result<PictureScale, Told> | null {
  if (photo === null || first === undefined || second === undefined || near === null || far === null)
    return null;
  return scaleOfPicture(
    [
      { at: first, distanceM: near },
      { at: second, distanceM: far },
    ],
    heightM,
    photo.width,
  );
}

function nextStep(
  words: Words,
  clicks: number,
  near: number | null,
  far: number | null,
  scale: Result<PictureScale, Told> | null,
): string {
  if (clicks === 0) return words.shots.photo.clickNear;
  if (clicks === 1) return words.shots.photo.clickFar;
  if (near === null || far === null) return words.shots.photo.typeDistances;
  if (scale?.ok === false) return tell(scale.error, words);
  return words.shots.photo.clickBalls;
}

interface StageProps {
  readonly photo: Photo;
  readonly points: readonly PicturePoint[];
  readonly add: (point: PicturePoint) => void;
}

/** Arrow keys move a cross-hair, Enter clicks where it is. */
function PhotoStage({ photo, points, add }: StageProps) {
  const words = useWords();
  const [hair, setHair] = useState<PicturePoint | null>(null);
  const { width, height, address, name } = photo;
  const size = width / 90;
  const pressed = (event: KeyboardEvent): void => {
    const from = hair ?? { x: width / 2, y: height / 2 };
    const step = (event.shiftKey ? 40 : 5) * (width / 1600);
    const moves: Readonly<Record<string, readonly [number, number]>> = {
      ArrowLeft: [-step, 0],
      ArrowRight: [step, 0],
      ArrowUp: [0, -step],
      ArrowDown: [0, step],
    };
    const move = moves[event.key];
    if (move !== undefined) {
      event.preventDefault();
      setHair({
        x: Math.min(width, Math.max(0, from.x + move[0])),
        y: Math.min(height, Math.max(0, from.y + move[1])),
      });
    } else if (event.key === 'Enter' || event.key === ' ') {
      event.preventDefault();
      add(from);
    }
  };
  return (
    <svg
      class="photo-stage"
      viewBox={`0 0 ${width} ${height}`}
      tabindex={0}
      role="application"
      aria-label={words.shots.photo.stage({ name })}
      onKeyDown={pressed}
      onClick={(event) => {
        const toScreen = event.currentTarget.getScreenCTM();
        if (toScreen === null) return;
        const { x, y } = new DOMPoint(event.clientX, event.clientY).matrixTransform(toScreen.inverse());
        if (x >= 0 && x <= width && y >= 0 && y <= height) add({ x, y });
      }}
    >
      <image href={address} x="0" y="0" width={width} height={height} />
      {points.map((point, i) => (
        <g key={i} class={i < 2 ? 'photo-mark' : 'photo-ball'}>
          <circle cx={point.x} cy={point.y} r={size / 2} stroke-width={size / 6} />
          <text x={point.x + size} y={point.y + size / 2} font-size={size * 1.6} stroke-width={size / 4}>
            {i < 2 ? [words.shots.photo.near, words.shots.photo.far][i] : i - 1}
          </text>
        </g>
      ))}
      {hair !== null && (
        <path
          class="photo-hair"
          stroke-width={size / 8}
          d={`M${hair.x - size} ${hair.y}h${2 * size}M${hair.x} ${hair.y - size}v${2 * size}`}
        />
      )}
    </svg>
  );
}
