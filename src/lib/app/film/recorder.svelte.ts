import { CameraFault, closeCamera, openCamera } from '$lib/sandbox';

/** Longer than a cast needs; beyond it somebody has forgotten the camera, s. */
export const LONGEST_S = 60;
/** Sharp enough to follow a jig, bits a second at 720p60. */
const BITS_PER_S = 12e6;
const TYPES = ['video/mp4;codecs=avc1', 'video/webm;codecs=vp9', 'video/webm;codecs=vp8'];

/** Records a clip with this device's camera. What is recorded stays with the page. */
export class ClipRecorder {
  stream = $state.raw<MediaStream | null>(null);
  isRecording = $state(false);
  /** Whole seconds of the clip so far. */
  recorded_s = $state(0);
  fault = $state('');
  #recorder: MediaRecorder | null = null;
  #ends: ReturnType<typeof setTimeout> | undefined;

  async open(): Promise<void> {
    this.fault = '';
    try {
      this.stream = await openCamera(window);
    } catch (error) {
      if (!(error instanceof CameraFault)) throw error;
      this.fault = error.message;
    }
  }

  begin(onclip: (clip: File) => void): void {
    if (!this.stream || typeof MediaRecorder === 'undefined') {
      this.fault = 'This browser can’t record. Use the camera app and choose the clip here.';
      return;
    }
    const mimeType = TYPES.find((type) => MediaRecorder.isTypeSupported(type));
    const parts: Blob[] = [];
    const recorder = new MediaRecorder(this.stream, { mimeType, videoBitsPerSecond: BITS_PER_S });
    this.recorded_s = 0;
    recorder.ondataavailable = ({ data }) => {
      this.recorded_s = parts.push(data);
    };
    recorder.onstop = () => {
      const type = recorder.mimeType.split(';')[0] || 'video/webm';
      const clip = new File(parts, `clip.${type.split('/')[1]}`, { type });
      this.close();
      onclip(clip);
    };
    // In pieces of a second, so that the browser can put them on the disk.
    recorder.start(1000);
    this.#recorder = recorder;
    this.isRecording = true;
    this.#ends = setTimeout(() => this.end(), 1000 * LONGEST_S);
  }

  end(): void {
    clearTimeout(this.#ends);
    this.isRecording = false;
    if (this.#recorder?.state === 'recording') this.#recorder.stop();
  }

  close(): void {
    this.end();
    closeCamera(this.stream);
    this.stream = null;
  }
}
