import { afterEach, expect, test, vi } from 'vitest';
import { Picture } from '../../src/lib/sandbox/picture';

/** A place on a page so many CSS pixels large, with two canvases of their own. */
function placeOf(clientWidth: number, clientHeight: number) {
  const place = { clientWidth, clientHeight };
  const setTransform = vi.fn();
  const context = { setTransform, clearRect: () => {} };
  const canvas = () => ({ width: 0, height: 0, parentElement: place, getContext: () => context });
  return { back: canvas(), front: canvas(), setTransform };
}

function pictureIn(place: ReturnType<typeof placeOf>, enlarged: string): Picture {
  vi.stubGlobal('devicePixelRatio', 1.5);
  vi.stubGlobal('getComputedStyle', () => ({ getPropertyValue: () => enlarged }));
  vi.stubGlobal(
    'ResizeObserver',
    class {
      constructor(readonly resized: () => void) {}
      observe = () => this.resized();
      disconnect = () => {};
    }
  );
  const picture = new Picture();
  const sheet = (one: object) => one as unknown as HTMLCanvasElement;
  picture.attach(sheet(place.back), sheet(place.front), () => {});
  return picture;
}

afterEach(() => vi.unstubAllGlobals());

test.each([
  ['', 800, 420, 1.5],
  ['2', 400, 210, 3]
])(
  'with --enlarged “%s” it counts in %i × %i and stays crisp',
  (enlarged, width, height, scale) => {
    const place = placeOf(800, 420);
    const picture = pictureIn(place, enlarged);
    expect([picture.width, picture.height]).toEqual([width, height]);
    expect([place.front.width, place.front.height]).toEqual([1200, 630]);
    picture.paintFront(() => {});
    expect(place.setTransform).toHaveBeenCalledWith(scale, 0, 0, scale, 0, 0);
  }
);
