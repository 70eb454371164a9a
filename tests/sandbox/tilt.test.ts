import { describe, expect, test, vi } from 'vitest';
import { askForTilt, bringText, Tilt } from '../../src/lib/sandbox/tilt';

function levelled(plane: 'lift' | 'sweep', alpha: number, beta: number, start_deg = 0): Tilt {
  const tilt = new Tilt(plane, start_deg);
  tilt.read({ alpha, beta });
  return tilt;
}

describe('a phone as the rod', () => {
  test('raises the rod by its tilt, whatever counted as level', () => {
    expect(levelled('lift', 100, 4).read({ alpha: 130, beta: 34 })).toBeCloseTo(30, 9);
  });

  test('sweeps clockwise to positive, past north too', () => {
    const tilt = levelled('sweep', 10, 0);
    tilt.read({ alpha: 2, beta: 5 });
    expect(tilt.read({ alpha: 345, beta: 5 })).toBeCloseTo(25, 9);
  });

  test('is taken up where the rod starts, and says how far off that is', () => {
    const tilt = levelled('sweep', 0, 0, 60);
    expect(tilt.away_deg).toBe(60);
    expect(tilt.read({ alpha: 330, beta: 0 })).toBeNull();
    expect(tilt.away_deg).toBeCloseTo(30, 9);
    expect(bringText('sweep', 30)).toMatch(/30° to the right/);
    expect(tilt.read({ alpha: 303, beta: 0 })).toBeNull();
    expect(tilt.away_deg).toBeNull();
    expect(tilt.read({ alpha: 283, beta: 0 })).toBeCloseTo(20, 9);
  });

  test('is brought back to the start before the next try, with level as it was', () => {
    const tilt = levelled('lift', 0, 0, 10);
    tilt.read({ alpha: 0, beta: 9 });
    expect(tilt.read({ alpha: 0, beta: 50 })).toBeCloseTo(41, 9);
    tilt.putDown();
    expect(tilt.read({ alpha: 0, beta: 50 })).toBeNull();
    expect(tilt.away_deg).toBeCloseTo(-40, 9);
    expect(bringText('lift', -40)).toMatch(/40° down/);
    tilt.read({ alpha: 0, beta: 12 });
    expect(tilt.read({ alpha: 0, beta: 22 })).toBeCloseTo(10, 9);
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

  test('points anew from where it is levelled', () => {
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
    [{ isSecureContext: true }, /doesn’t tell/],
    [
      {
        isSecureContext: true,
        DeviceOrientationEvent: { requestPermission: vi.fn().mockResolvedValue('denied') }
      },
      /blocked/
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
