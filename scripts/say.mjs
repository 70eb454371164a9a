import { cpus } from 'node:os';

// One friendly line per thing that happens, so that a first run never looks stuck.
const began = Date.now();

/** @param {string} text */
export function say(text) {
  console.log(`feltfoot  ${text}`);
}

/** @param {number} from Milliseconds, as of Date.now(). */
export function since(from = began) {
  return `${((Date.now() - from) / 1000).toFixed(1)} s`;
}

/** Of all cores since the machine was started, ms: busy, and all. */
function coreTimes() {
  const times = cpus().map((core) => core.times);
  const all = times.flatMap(Object.values).reduce((sum, ms) => sum + ms, 0);
  return { all, busy: all - times.reduce((sum, { idle }) => sum + idle, 0) };
}

/** Starts a watch of wall time and cores: "61.2 s, cores 93 % busy", with whatever else the machine does. */
export function stopwatch() {
  const from = { at: Date.now(), ...coreTimes() };
  return () => {
    const { all, busy } = coreTimes();
    const share = Math.round((100 * (busy - from.busy)) / Math.max(1, all - from.all));
    return `${since(from.at)}, cores ${share} % busy`;
  };
}
