import {
  frameTimes,
  motionOf,
  outcomeOf,
  scaleFaultOf,
  type AnglerSide,
  type FilmedMove,
  type Pixel,
  type ScaleMarks
} from '$lib/film';
import type { Clip } from './clip';
import { CORNERS, ENDS, endText, scaleFaultText } from './film-words';
import { followSpots, type MarkedSpots } from './follow-spots';
import { afterMark, NO_TRACK, sightings, SPOTS, stretchOf, trimmed, withMark } from './spot-track';
import type { FilmedSpot, SpotTrack } from './spot-track';

/** What the cross is put on: a point of the scale, or a spot. */
export type Marking = 'scale' | FilmedSpot;

const NO_TRACKS: Readonly<Record<FilmedSpot, SpotTrack>> = {
  bait: NO_TRACK,
  bottom: NO_TRACK,
  tip: NO_TRACK
};

/** While following every so many frames are shown: each costs as much as following one. */
const SHOWN_EVERY = 4;

/** One clip that is being measured. */
export class Measuring {
  /** The frame that is shown. */
  at = $state(0);
  /** Where the cross is, pixels of the clip. */
  cross = $state.raw<Pixel>({ x_px: 0, y_px: 0 });
  marking = $state<Marking>('scale');
  kind = $state<ScaleMarks['kind']>('four');
  points = $state.raw<readonly Pixel[]>([]);
  /** Width and height of the rectangle, or the one length, m. */
  width_m = $state(0);
  height_m = $state(0);
  angler = $state<AnglerSide>('right');
  /** How far off the marks' plane the jig may have been, as a share of its distance. */
  offPlane = $state(0);
  tracks = $state.raw(NO_TRACKS);
  isFollowing = $state(false);
  said = $state('');
  /** What frames are shown on. */
  canvas: HTMLCanvasElement | null = null;
  #following: AbortController | null = null;

  constructor(readonly clip: Clip) {
    this.cross = { x_px: clip.size.width_px / 2, y_px: clip.size.height_px / 2 };
  }

  readonly marks = $derived.by((): ScaleMarks => {
    const pixels = this.points;
    return this.kind === 'two'
      ? { kind: 'two', pixels, length_m: this.width_m }
      : { kind: 'four', pixels, width_m: this.width_m, height_m: this.height_m };
  });
  readonly scaleFault = $derived(scaleFaultOf(this.marks));
  readonly scaleSaid = $derived(
    this.scaleFault && this.points.length >= this.asked.length
      ? scaleFaultText(this.scaleFault)
      : ''
  );
  /** What was followed, from the first to the last frame of the jig; null while something is missing. */
  readonly filmed = $derived.by((): FilmedMove | null => {
    const stretch = stretchOf(this.tracks.bait);
    if (this.scaleFault || !stretch || stretch.from === stretch.to) return null;
    if (!this.tracks.bait.get(stretch.from)?.at) return null;
    const { stamps_s, size } = this.clip;
    const { marks, angler, offPlane, tracks } = this;
    const hasBottom = Boolean(tracks.bottom.get(stretch.from)?.at);
    return {
      ...{ marks, size, angler, offPlane },
      times: frameTimes(stamps_s.slice(stretch.from, stretch.to + 1)),
      bait: sightings(tracks.bait, stretch, stamps_s),
      bottom: hasBottom ? sightings(tracks.bottom, stretch, stamps_s) : undefined
    };
  });
  /** Once it is followed: at every frame shown on the way it would be worked out over the whole track anew. */
  readonly rows = $derived(this.filmed && !this.isFollowing ? motionOf(this.filmed) : []);
  readonly outcome = $derived(outcomeOf(this.rows));

  /** Names of the points that a scale needs. */
  get asked(): readonly string[] {
    return this.kind === 'four' ? CORNERS : ENDS;
  }

  setKind(kind: ScaleMarks['kind']): void {
    this.kind = kind;
    this.points = [];
    this.marking = 'scale';
  }

  step(by: number): void {
    this.show(this.at + by);
  }

  show(index: number): void {
    this.at = Math.min(Math.max(Math.round(index), 0), this.clip.stamps_s.length - 1);
  }

  moveCross({ x_px, y_px }: Pixel): void {
    const { width_px, height_px } = this.clip.size;
    this.cross = {
      x_px: Math.min(Math.max(x_px, 0), width_px - 1),
      y_px: Math.min(Math.max(y_px, 0), height_px - 1)
    };
  }

  /** MarkedSpots what is being marked where the cross is. */
  mark(): void {
    if (this.isFollowing) return;
    if (this.marking !== 'scale') return this.#markSpot(this.marking);
    const isFull = this.points.length >= this.asked.length;
    this.points = [...(isFull ? [] : this.points), this.cross];
    if (this.points.length === this.asked.length) this.marking = 'bait';
  }

  #markSpot(spot: FilmedSpot): void {
    const t_s = this.clip.stamps_s[this.at];
    this.#keep(spot, withMark(this.tracks[spot], this.at, t_s, this.cross));
    this.said = '';
  }

  /** Forgets the points of the scale. */
  scaleAnew(): void {
    this.points = [];
    this.marking = 'scale';
  }

  /** Forgets where this spot was seen. */
  forget(spot: FilmedSpot): void {
    this.#keep(spot, NO_TRACK);
    this.marking = spot;
  }

  /** The move is over in this frame: what was followed after it does not count. */
  endHere(): void {
    for (const spot of SPOTS) this.#keep(spot, trimmed(this.tracks[spot], 0, this.at));
  }

  /** And begins in this one. */
  beginHere(): void {
    for (const spot of SPOTS) this.#keep(spot, trimmed(this.tracks[spot], this.at, Infinity));
  }

  /** Follows from this frame on all that is marked in it. */
  async follow(): Promise<void> {
    const from = this.at;
    const marks: MarkedSpots = SPOTS.flatMap((spot) => {
      const seen = this.tracks[spot].get(from);
      return seen?.at ? [[spot, seen] as const] : [];
    });
    if (this.isFollowing) return;
    if (!marks.some(([spot]) => spot === 'bait')) {
      this.marking = 'bait';
      this.said = 'Mark the jig in this frame first.';
      return;
    }
    const slip_px = (spot: FilmedSpot) => marks.find(([one]) => one === spot)?.[1].sd_px ?? 0;
    // Grown in place and shown now and then: a new track a frame would copy a minute's 3600 as many times.
    const grown = marks.map(([spot]) => [spot, trimmed(this.tracks[spot], 0, from)] as const);
    const growing = Object.fromEntries(grown) as Partial<Record<FilmedSpot, (typeof grown)[0][1]>>;
    const show = () => (this.tracks = { ...this.tracks, ...growing });
    show();
    this.#following = new AbortController();
    this.isFollowing = true;
    this.said = '';
    const { signal } = this.#following;
    const end = await followSpots(
      this.clip,
      from,
      marks,
      signal,
      (index, spot, seen) => {
        growing[spot]?.set(index, afterMark(seen, slip_px(spot)));
        if (index % SHOWN_EVERY === 0) show();
      },
      (frame) => {
        if (frame.index % SHOWN_EVERY !== 0) return undefined;
        this.at = frame.index;
        return this.canvas ? frame.draw(this.canvas) : undefined;
      }
    );
    show();
    this.isFollowing = false;
    this.at = end.index;
    if ('spot' in end) this.marking = end.spot;
    this.said = endText(end, this.clip.stamps_s[end.index]);
  }

  /** Shows the frame that it is at. False where it cannot be decoded. */
  async draw(): Promise<boolean> {
    return this.canvas === null || this.clip.draw(this.at, this.canvas);
  }

  stop(): void {
    this.#following?.abort();
  }

  close(): void {
    this.stop();
    this.clip.close();
  }

  #keep(spot: FilmedSpot, track: SpotTrack): void {
    this.tracks = { ...this.tracks, [spot]: track };
  }
}
