import { parseSetup, type GroundKind } from '../../src/lib/model';
import { FeltWave } from '../../src/lib/sandbox/felt-wave';
import { Hand } from '../../src/lib/sandbox/hand';
import { LiveTry } from '../../src/lib/sandbox/live-try';
import { watchInk } from '../../src/lib/sandbox/palette';
import { blendPoses, newPose } from '../../src/lib/sandbox/pose';
import { ROD_LIMITS } from '../../src/lib/sandbox/rod-angles';
import { Scene } from '../../src/lib/sandbox/scene';
import { stageOf } from '../../src/lib/sandbox/stage';
import { Stepper } from '../../src/lib/sandbox/stepper';

/**
 * Practice water without its controls: the model, the felt channel's sound and the three pictures, as
 * a session calls them, with a clock that can be turned by hand.
 */
const FRAME_MS = 1000 / 60;
/** A try lasts this long, ms; then the next begins. */
const TRY_MS = 8000;
const TICK_MS = 10;
const START = { elevation_deg: 10, azimuth_deg: 20 };

class Water {
  private readonly scene = new Scene();
  private readonly stepper = new Stepper(TICK_MS);
  private live!: LiveTry;
  private felt!: FeltWave;
  private heard = 0;
  private share = 0;
  private blended = newPose(0);
  private begun_ms = -Infinity;
  private tries = 0;

  constructor(private readonly kinds: readonly GroundKind[]) {
    for (const name of ['whole', 'rod', 'bottom'] as const) {
      const [back, front] = document.querySelectorAll<HTMLCanvasElement>(`#${name} canvas`);
      this.scene[name].attach(back, front, this.scene.layOut);
    }
    watchInk(document.body, (ink) => this.scene.setInk(ink));
  }

  /** Model and felt channel up to `now_ms`. */
  step(now_ms: number): void {
    if (now_ms - this.begun_ms >= TRY_MS) this.begin(now_ms);
    const { live } = this;
    live.hand.pointAt(now_ms, handAt(now_ms - this.begun_ms));
    this.share = this.stepper.advance(now_ms - 25, (t_ms) => live.tick(t_ms));
    const last = live.trace.t_s.length - 1;
    if (last > this.heard) this.felt.render(live.trace, this.heard, last);
    this.heard = last;
  }

  draw(): void {
    const { live, blended } = this;
    blendPoses(live.before, live.now, this.share, blended);
    const { trace } = live;
    this.scene.draw({ pose: blended, trace, ticks: trace.t_s.length, isHidden: false });
  }

  private begin(now_ms: number): void {
    const kind = this.kinds[this.tries++ % this.kinds.length];
    const setup = parseSetup({
      water: { depth_m: 4.5 },
      bottom: { ground: { kind, seed: this.tries } },
      line: { diameter_m: 0.0003 },
      bait: { mass_kg: 0.0142 },
      start: { bait_x_m: 16, slack_m: 0.05 }
    });
    const task = { setup, plane: 'sweep', start: START } as const;
    this.scene.setStage(stageOf({ ...task, units: 'imperial', target: null, ghosts: [] }));
    const hand = new Hand(START.azimuth_deg, ROD_LIMITS.sweep);
    this.live = new LiveTry(setup, 'sweep', START, hand);
    this.live.begin();
    this.felt = new FeltWave(setup);
    this.heard = 0;
    this.blended = newPose(this.live.now.x.length);
    this.stepper.pause();
    this.begun_ms = now_ms;
  }
}

/** Two sweeps with a rest between them, degrees. */
function handAt(t_ms: number): number {
  const ease = (from_ms: number) => {
    const u = Math.min(Math.max((t_ms - from_ms) / 2500, 0), 1);
    return u * u * (3 - 2 * u);
  };
  return START.azimuth_deg + 25 * ease(300) + 25 * ease(4500);
}

/** Reading a pixel waits for everything that was drawn before. */
function flush(): void {
  for (const canvas of document.querySelectorAll<HTMLCanvasElement>('canvas:last-child')) {
    canvas.getContext('2d')?.getImageData(0, 0, 1, 1);
  }
}

const nextFrame = () => new Promise<number>((resolve) => requestAnimationFrame(resolve));

/**
 * A live try in the browser's own time. Model and drawing are callbacks of their own, so that a trace
 * of the browser tells them apart. Returns the time from frame to frame, ms.
 */
function live(kind: GroundKind, seconds: number, isFlushed: boolean): Promise<number[]> {
  const water = new Water([kind]);
  const frame_ms: number[] = [];
  return new Promise((resolve) => {
    let first_ms = NaN;
    let before_ms = NaN;
    function stepFrame(now_ms: number): void {
      if (Number.isNaN(first_ms)) first_ms = now_ms;
      else frame_ms.push(now_ms - before_ms);
      before_ms = now_ms;
      if (now_ms - first_ms > seconds * 1000) return resolve(frame_ms);
      water.step(now_ms);
      requestAnimationFrame(stepFrame);
      requestAnimationFrame(drawFrame);
    }
    function drawFrame(): void {
      water.draw();
      if (isFlushed) flush();
    }
    // The pictures are measured first.
    void nextFrame()
      .then(nextFrame)
      .then(() => {
        requestAnimationFrame(stepFrame);
      });
  });
}

let kept: { water: Water; now_ms: number } | null = null;

/** So many frames one after the other, in the water of the call before. */
async function many(kinds: readonly GroundKind[], frames: number): Promise<void> {
  kept ??= { water: new Water(kinds), now_ms: 0 };
  await nextFrame();
  for (let i = 1; i <= frames; i++) {
    kept.now_ms += FRAME_MS;
    // What is drawn piles up unless the browser is let to it now and then.
    kept.water.step(kept.now_ms);
    kept.water.draw();
    if (i % 30 === 0) await nextFrame();
  }
}

export type Bench = { live: typeof live; many: typeof many };
Object.assign(window, { bench: { live, many } satisfies Bench });
