import { celsiusToFahrenheit } from '../model';

/**
 * Where to look and how to start, by the water at the surface, where a graph reads it. Common practice, no source; lakes differ
 * and neighbouring rows run into each other.
 */
export interface SeasonRow {
  id: 'cold' | 'cool' | 'mild' | 'warm';
  /** Water at the surface, °F: from, and up to. */
  water_F: readonly [from: number, to: number];
  /** The row's name on the map. */
  says: string;
  where: string;
  /** Where first while they spawn, before what is said of after it. */
  inSpawn?: string;
  /** Where else on the way back, which passes through the same water. */
  inFall?: string;
  retrieve: string;
  pause: string;
  why: string;
}

export const SEASON_MAP: readonly SeasonRow[] = [
  {
    id: 'cold',
    water_F: [32, 50],
    says: 'Under {50 °F|10 °C}, winter',
    where: 'channel-swing banks and deep edges',
    retrieve: 'short, slow drags',
    pause: '10 seconds or more',
    why: 'Cold fish hardly move: keep it in front of them.'
  },
  {
    id: 'cool',
    water_F: [50, 60],
    says: '{50 to 60 °F|10 to 15 °C}, spring and late fall',
    where: 'points near spawning pockets',
    inFall: 'steep points in fall',
    retrieve: 'drags with a short hop',
    pause: '3 to 10 seconds',
    why: 'Cool fish follow a little way: a short hop gets them to look.'
  },
  {
    id: 'mild',
    water_F: [60, 75],
    says: '{60 to 75 °F|15 to 24 °C}, after the spawn, and early fall',
    where: 'first drops, humps, rock',
    inSpawn: 'near the beds, and leave the fish on them; then',
    retrieve: 'a mix of drags and hops',
    pause: '2 to 10 seconds',
    why: 'Fish are spread out and their mood changes: mix it up, and keep what works.'
  },
  {
    id: 'warm',
    water_F: [75, 90],
    says: 'Over {75 °F|24 °C}, summer',
    where: 'offshore ledges and humps',
    retrieve: 'long hops and strokes',
    pause: '1 to 3 seconds',
    why: 'Warm, active fish go for what rises and falls.'
  }
];

/** Said of spring, in water of 60 to 70 °F. Common practice, no source. */
export const ON_BEDS = 'In spring many fish are on beds: check your rules.';
const SPAWN_C = [15.5, 21.2] as const;
export const isSpawnWater = (temperature_C: number) =>
  temperature_C >= SPAWN_C[0] && temperature_C <= SPAWN_C[1];

/** The row of water of this temperature, °C; off the map the nearest. */
export function seasonRowNear(temperature_C: number): SeasonRow {
  const [first, last] = [SEASON_MAP[0], SEASON_MAP[SEASON_MAP.length - 1]];
  const degF = celsiusToFahrenheit(temperature_C);
  return seasonRowAt(Math.min(last.water_F[1] - 1, Math.max(first.water_F[0], degF)));
}

/** The row whose rests suit: slow fish are waited for as in cold water, whatever the water. Common practice, no source. */
export function restRow({ temperature_C, fish }: { temperature_C: number; fish: string }) {
  return fish === 'slow' ? SEASON_MAP[0] : seasonRowNear(temperature_C);
}

/** The row of water of this temperature. Throws RangeError off the map. */
export function seasonRowAt(degF: number): SeasonRow {
  const row = SEASON_MAP.find(({ water_F: [from, to] }) => from <= degF && degF < to);
  if (!row) throw new RangeError(`no season has water of ${degF} °F`);
  return row;
}
