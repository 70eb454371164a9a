import { TICK_S } from '$lib/model';
import { handRun } from '$lib/scoring';
import { poseFor, showAt, type Film } from './film';
import { Player } from './player.svelte';
import type { Pose } from './pose';
import { readoutAt, readoutUntil_s, type Readout } from './readout';
import type { Scene } from './scene';
import type { Backdrop } from './stage';
import { feltBandOf, seriesOf, type FeltBand, type Series } from './series';

/** A film on the scene: the scrubber moves all three pictures and the numbers beside them. */
export class Showing {
  readonly series: Series;
  #felt: FeltBand | null = null;
  private readonly pose: Pose;
  /** Whether what is shown has passed. */
  isPassed = false;

  constructor(
    readonly film: Film,
    private readonly stage: Pick<Backdrop, 'heightAt' | 'target'>,
    /** Two films that are compared are played by one. */
    readonly player = new Player(film.ends_s)
  ) {
    this.series = seriesOf(handRun(film, film.result), stage.heightAt);
    this.pose = poseFor(film);
  }

  /** Worked out for whoever plots it: a film that is only watched has no use for it. */
  get felt(): FeltBand {
    return (this.#felt ??= feltBandOf(this.film.setup, this.film.result.trace));
  }

  get tick(): number {
    const last = this.series.t_s.length - 1;
    return Math.min(Math.round(this.player.time_s / TICK_S), last);
  }

  get readout(): Readout {
    return readoutAt(
      this.series,
      this.tick,
      this.film.lineIn_m(this.player.time_s),
      readoutUntil_s(this.film.result.events, this.stage.target)
    );
  }

  draw(scene: Scene): void {
    showAt(this.film, this.player.time_s, this.pose);
    const { trace, events } = this.film.result;
    scene.draw({
      pose: this.pose,
      trace,
      ticks: this.tick + 1,
      events,
      isHidden: false,
      isRevealed: true,
      isPassed: this.isPassed && this.player.time_s >= this.film.ends_s
    });
  }
}
