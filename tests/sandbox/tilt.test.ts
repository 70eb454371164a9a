import { describe, expect, test, vi } from 'vitest';
import { askForTilt, Tilt } from '../../src/lib/sandbox/tilt';

function levelled(plane: 'lift' | 'sweep', alpha: number, beta: number): Tilt {
  const tilt = new Tilt(plane);
  tilt.read({ alpha, beta });
  return tilt;
}

describe('a phone as the rod', () => {
  test('raises the rod by its tilt, whatever it started from', () => {
    expect(levelled('lift', 100, 4).read({ alpha: 130, beta: 34 })).toBeCloseTo(30, 9);
  });

  test('sweeps clockwise to positive, past north too', () => {
    const tilt = levelled('sweep', 10, 0);
    tilt.read({ alpha: 2, beta: 5 });
    expect(tilt.read({ alpha: 345, beta: 5 })).toBeCloseTo(25, 9);
  });

  test('leaves the rod alone while the hand only trembles', () => {
    const tilt = levelled('lift', 0, 0);
    expect(tilt.read({ alpha: 0, beta: 1.2 })).toBeNull();
    expect(tilt.read({ alpha: 0, beta: 2 })).toBeCloseTo(2, 9);
    expect(tilt.read({ alpha: 0, beta: 1.2 })).toBeCloseTo(1.2, 9);
  });

  test('takes no notice of readings without angles, nor of the heading of an upright phone', () => {
    const tilt = levelled('sweep', 50, 0);
    expect(tilt.read({ alpha: null, beta: null })).toBeNull();
    expect(tilt.read({ alpha: 200, beta: 88 })).toBeNull();
    expect(tilt.read({ alpha: 20, beta: 0 })).toBeCloseTo(30, 9);
  });

  test('begins anew from where it points when it is levelled', () => {
    const tilt = levelled('lift', 0, 0);
    tilt.read({ alpha: 0, beta: 40 });
    tilt.level();
    tilt.read({ alpha: 0, beta: 38 });
    expect(tilt.read({ alpha: 0, beta: 48 })).toBeCloseTo(10, 9);
  });
});

describe('asking for the sensors', () => {
  test.each([
    [{ isSecureContext: false }, /plain http/],
    [{ isSecureContext: true }, /does not tell/],
    [
      {
        isSecureContext: true,
        DeviceOrientationEvent: { requestPermission: vi.fn().mockResolvedValue('denied') }
      },
      /not allowed/
    ]
  ])('says why not: %o', async (page, why) => {
    expect(await askForTilt(page)).toMatch(why);
  });

  test('asks the device that wants to be asked, and no other', async () => {
    const requestPermission = vi.fn().mockResolvedValue('granted');
    const DeviceOrientationEvent = { requestPermission };
    expect(await askForTilt({ isSecureContext: true, DeviceOrientationEvent })).toBeNull();
    expect(requestPermission).toHaveBeenCalledOnce();
    expect(await askForTilt({ isSecureContext: true, DeviceOrientationEvent: {} })).toBeNull();
  });
});
