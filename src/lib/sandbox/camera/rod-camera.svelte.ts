import type { Try } from '../live-try';
import { cameraFrames } from './camera-frames';
import { tapeFaultText } from './camera-words';
import { CameraFault, closeCamera, openCamera } from './open-camera';
import { TapeReader } from './tape-reader';
import { WatchedRod, type FilmedSession, type FilmedTask, type WatchPhase } from './watched-rod';

/** A session that a camera may take over, and give back. */
interface TakenSession extends FilmedSession {
  isFilmed: boolean;
  retake: ((live: Try) => Try | null) | null;
}

export type CameraPhase = 'off' | 'tap' | WatchPhase;

/** One's own rod as the rod: a camera and tape. Set up once, it may go from water to water. */
export class RodCamera {
  phase = $state<CameraPhase>('off');
  says = $state('');
  stream = $state.raw<MediaStream | null>(null);
  shown = $state.raw<TapeReader['shown']>([]);
  /** What the last try was graded from, and how far it may be off; empty before one. */
  graded = $state('');
  #session: TakenSession | null = null;
  #task: FilmedTask | null = null;
  #reader = new TapeReader(1);
  #rod: WatchedRod | null = null;
  #stop: AbortController | null = null;

  /** @param outlasts whether it stays on when its water goes, for the next one; its owner closes it */
  constructor(private readonly outlasts = false) {}

  /** This water's rod is the camera's now, until what is handed back is called: the water is gone. */
  join(session: TakenSession): () => void {
    this.#session = session;
    if (this.phase !== 'off') this.#lend(session);
    return () => {
      if (!this.outlasts) this.close();
      if (this.#session === session) this.#session = null;
    };
  }

  #lend(session: TakenSession): void {
    session.isFilmed = true;
    session.retake = (live) => {
      const graded = this.#rod ? this.#rod.retake(live) : live;
      this.#tell();
      this.graded = graded && graded !== live ? this.says : '';
      return graded;
    };
  }

  /** What a rod moves: the water there is; between two waters nothing. */
  #water(): FilmedSession {
    const now = () => this.#session;
    return {
      get phase() {
        return now()?.phase ?? 'showing';
      },
      get units() {
        return now()?.units ?? 'imperial';
      },
      tilt: (t_ms, turned_deg) => now()?.tilt(t_ms, turned_deg),
      next: () => now()?.next()
    };
  }

  /** What the rod is to do now. For a move in another plane the camera has to stand elsewhere. */
  take(task: FilmedTask): void {
    const isOther = this.#task !== null && this.#task.plane !== task.plane;
    this.#task = task;
    if (isOther && this.phase !== 'off') this.close();
  }

  async open(video: () => HTMLVideoElement | undefined): Promise<void> {
    try {
      this.stream = await openCamera(window);
    } catch (error) {
      if (!(error instanceof CameraFault)) throw error;
      this.says = error.message;
      return;
    }
    if (this.#session) this.#lend(this.#session);
    this.#rod = null;
    this.#reader = new TapeReader(this.#isLift ? 2 : 1);
    this.phase = 'tap';
    this.says = this.#isLift ? 'Tap the outer tape, near the tip.' : 'Tap the tape.';
    this.#stop = new AbortController();
    const player = video() ?? document.createElement('video');
    void this.#watch(this.stream, player, this.#stop.signal);
  }

  close(): void {
    this.#stop?.abort();
    closeCamera(this.stream);
    this.stream = null;
    this.#rod = null;
    this.phase = 'off';
    this.says = '';
    this.graded = '';
    if (!this.#session) return;
    this.#session.isFilmed = false;
    this.#session.retake = null;
  }

  /** A tap on the picture, in shares of it. */
  tap(across: number, down: number): void {
    const fault = this.#reader.teach(across, down);
    if (fault) this.says = tapeFaultText(fault);
    else this.calibrate();
  }

  /** Over the poses again. */
  calibrate(): void {
    const task = this.#task;
    if (!task) return;
    this.#rod = new WatchedRod(this.#water(), () => this.#task ?? task);
    this.#tell();
  }

  /** The line is laid anew: the rod has to come to its start, and be still, again. */
  putDown(): void {
    this.#rod?.putDown();
    this.#tell();
  }

  async #watch(stream: MediaStream, video: HTMLVideoElement, signal: AbortSignal): Promise<void> {
    const { width = 16, height = 9 } = stream.getVideoTracks()[0]?.getSettings() ?? {};
    for await (const { t_ms, picture } of cameraFrames(stream, video, signal)) {
      if (signal.aborted) return;
      this.#reader.take(picture, height / width);
      if (!this.#reader.isTaught || !this.#rod) continue;
      this.#rod.look(t_ms, this.#reader.read());
      this.shown = this.#reader.shown;
      this.#tell();
    }
  }

  get #isLift(): boolean {
    return this.#task?.plane === 'lift';
  }

  #tell(): void {
    if (this.#rod) ({ phase: this.phase, says: this.says } = this.#rod);
  }
}
