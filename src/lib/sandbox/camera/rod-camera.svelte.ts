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

/** One's own rod as the rod: a camera and tape. */
export class RodCamera {
  phase = $state<CameraPhase>('off');
  says = $state('');
  stream = $state.raw<MediaStream | null>(null);
  shown = $state.raw<TapeReader['shown']>([]);
  #task: FilmedTask | null = null;
  #reader = new TapeReader(1);
  #rod: WatchedRod | null = null;
  #stop: AbortController | null = null;

  constructor(private readonly session: TakenSession) {}

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
    this.session.isFilmed = true;
    this.session.retake = (live) => {
      const graded = this.#rod ? this.#rod.retake(live) : live;
      this.#tell();
      return graded;
    };
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
    this.session.isFilmed = false;
    this.session.retake = null;
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
    this.#rod = new WatchedRod(this.session, () => this.#task ?? task);
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
