import { expect, test, vi } from 'vitest';
import { render } from 'vitest-browser-svelte';
import { page } from 'vitest/browser';
import '../../src/app.css';
import {
  parseScenario,
  recordScenario,
  type RecordedRun,
  type RodInput
} from '../../src/lib/model';
import Replay from '../../src/lib/sandbox/Replay.svelte';
import { smallWater } from './waters';

const setup = smallWater();
const run = aRun(40);

function aRun(ticks: number): RecordedRun {
  const input: RodInput = {
    kind: 'rod_input',
    rate_Hz: 100,
    elevation_deg: Array.from({ length: ticks }, (_, i) => (36 * i) / ticks),
    azimuth_deg: 0
  };
  return recordScenario(parseScenario({ ...setup, move: input, hold_s: 1 }));
}

/** Presses a button and catches the file that it hands to the browser. */
async function saved(button: string): Promise<File> {
  const made = new Map<string, Blob>();
  const files: Blob[] = [];
  const addressOf = URL.createObjectURL.bind(URL);
  const address = vi.spyOn(URL, 'createObjectURL').mockImplementation((file) => {
    const name = addressOf(file);
    return (made.set(name, file as Blob), name);
  });
  const click = vi.spyOn(HTMLAnchorElement.prototype, 'click').mockImplementation(function (
    this: HTMLAnchorElement
  ) {
    files.push(made.get(this.href) as Blob);
  });
  await page.getByRole('button', { name: button }).click();
  await expect.poll(() => files.length).toBe(1);
  address.mockRestore();
  click.mockRestore();
  return files[0] as File;
}

const firstBytes = async (file: Blob, count: number) => [
  ...new Uint8Array(await file.slice(0, count).arrayBuffer())
];

/** How many colours a picture has, of those at every so many points of it. */
function coloursOf(picture: CanvasImageSource, width: number, height: number): number {
  const canvas = new OffscreenCanvas(width, height);
  const context = canvas.getContext('2d') as OffscreenCanvasRenderingContext2D;
  context.drawImage(picture, 0, 0);
  const { data } = context.getImageData(0, 0, width, height);
  return new Set(
    Array.from({ length: data.length / 4 }, (_, i) => data.slice(4 * i, 4 * i + 3).join())
  ).size;
}

test('the plots become a picture for paper, whatever the light on the screen', async () => {
  document.documentElement.dataset.scheme = 'dark';
  await render(Replay, { run, units: 'imperial' });
  await page.getByText('Save this run').click();
  const file = await saved('Plots PNG');
  delete document.documentElement.dataset.scheme;
  expect(await firstBytes(file, 4)).toEqual([0x89, 0x50, 0x4e, 0x47]);
  expect(file.name).toBe('feltfoot-plot.png');
  const picture = await createImageBitmap(file);
  expect(picture.width).toBeGreaterThanOrEqual(1600);
  expect(coloursOf(picture, picture.width, picture.height)).toBeGreaterThan(20);
  const corner = new OffscreenCanvas(1, 1).getContext('2d') as OffscreenCanvasRenderingContext2D;
  corner.drawImage(picture, 0, 0);
  expect([...corner.getImageData(0, 0, 1, 1).data]).toEqual([255, 255, 255, 255]);
});

test('the replay becomes a clip, with something to be seen in it', async () => {
  await render(Replay, { run, units: 'imperial' });
  await page.getByText('Save this run').click();
  const file = await saved('Clip WebM');
  expect(await firstBytes(file, 4)).toEqual([0x1a, 0x45, 0xdf, 0xa3]);
  expect(file.name).toBe('feltfoot-clip.webm');
  const film = document.createElement('video');
  film.muted = true;
  film.src = URL.createObjectURL(file);
  // Asked for before it plays: on a busy machine so short a film may be over when play() returns.
  const frame = new Promise((done) => film.requestVideoFrameCallback(done));
  await film.play();
  await frame;
  expect(coloursOf(film, film.videoWidth, film.videoHeight)).toBeGreaterThan(20);
});

/** A canvas of which the recorder gets no picture before `late_ms`. */
function slowCamera(late_ms: number) {
  const capture = HTMLCanvasElement.prototype.captureStream;
  return vi.spyOn(HTMLCanvasElement.prototype, 'captureStream').mockImplementation(function (
    this: HTMLCanvasElement
  ) {
    const stream = capture.call(this, 0);
    const [track] = stream.getTracks() as CanvasCaptureMediaStreamTrack[];
    const begin = () => {
      const each = setInterval(() => {
        if (track.readyState === 'ended') clearInterval(each);
        else track.requestFrame();
      }, 33);
    };
    if (late_ms !== null) setTimeout(begin, late_ms);
    return stream;
  });
}

test('a recorder that gets its pictures late makes a clip that plays', async () => {
  const slow = slowCamera(2500);
  await render(Replay, { run, units: 'imperial' });
  await page.getByText('Save this run').click();
  const file = await saved('Clip WebM');
  slow.mockRestore();
  const film = Object.assign(document.createElement('video'), { muted: true });
  film.src = URL.createObjectURL(file);
  const frame = new Promise((done) => film.requestVideoFrameCallback(done));
  await film.play();
  await frame;
  expect(film.videoWidth).toBeGreaterThan(0);
});

test('where the recorder gets no picture nothing is saved, and that is said', async () => {
  const mute = vi.spyOn(MediaRecorder.prototype, 'start').mockImplementation(() => {});
  await render(Replay, { run, units: 'imperial' });
  await page.getByText('Save this run').click();
  await page.getByRole('button', { name: 'Clip WebM' }).click();
  await expect.element(page.getByText('this device was too busy to record one')).toBeVisible();
  await expect.element(page.getByRole('button', { name: 'Clip WebM' })).toBeVisible();
  mute.mockRestore();
});

test('a clip that is stopped is not kept, and that is said', async () => {
  await render(Replay, { run: aRun(2000), units: 'imperial' });
  await page.getByText('Save this run').click();
  await page.getByRole('button', { name: 'Clip WebM' }).click();
  await page.getByRole('button', { name: 'Stop the clip' }).click();
  await expect.element(page.getByText('No clip: you stopped it')).toBeVisible();
  await expect.element(page.getByRole('button', { name: 'Clip WebM' })).toBeVisible();
});

test('where nothing can be recorded there is no button, and a sentence says why', async () => {
  const can = vi.spyOn(MediaRecorder, 'isTypeSupported').mockReturnValue(false);
  await render(Replay, { run, units: 'imperial' });
  await page.getByText('Save this run').click();
  await expect.element(page.getByText('can’t record a WebM clip')).toBeVisible();
  await expect.element(page.getByRole('button', { name: 'Clip WebM' })).not.toBeInTheDocument();
  can.mockRestore();
});
