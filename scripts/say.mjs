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
