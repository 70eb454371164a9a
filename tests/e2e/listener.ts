import type { Locator } from '@playwright/test';

/** How long something is done: until so much is told, or for so long. */
export interface Until {
  /** Of the tip, in, as the rod tells it; of the reel. */
  tip_in?: number;
  reel_in?: number;
  /** From where the rod was, as it tells where it points; with the jig hidden it tells no more. */
  turn_deg?: number;
  /** So much of the tip, in, after which the jig is no further: it hangs. */
  stuck_in?: number;
  /** The rod’s own reading, degrees, at most. */
  down_to_deg?: number;
  /** A word that comes from here on. */
  hear?: string;
  ms?: number;
}

/** What a hand does that sees nothing: a control is held, pressed, or words are waited for. */
export interface Step extends Until {
  hold?: 'up' | 'down' | 'fast' | 'reel';
  /** Whether it goes on meanwhile, until it is held the next time, for so long more. */
  isLeftOn?: boolean;
  press?: 'start' | 'done' | 'faster' | 'slower' | 'more' | 'latch';
  times?: number;
  /** Where a switch waits meanwhile; keys are at the rod all along. */
  at?: 'up' | 'down' | 'fast';
}

/** How a control is worked. */
export type How = 'keys' | 'switch';

/** What a screen reader was told, in order, and when, ms from the beginning. */
export interface Told {
  readonly at_ms: number;
  readonly text: string;
}

/** From one control to the next, ms: people set their scanning from half a second to two. */
const SCAN_MS = 500;

/**
 * Does all of that in the page itself, whose clock a busy machine does not hold up. It reads what is told,
 * live regions and the rod’s reading, and nothing that is drawn or computed.
 */
export function doByEar(place: Locator, steps: readonly Step[], how: How): Promise<Told[]> {
  return place.evaluate(inPage, { steps, how, SCAN_MS });
}

/** The page has but this function, so all of it stands inside. */
async function inPage(
  place: Element,
  { steps, how, SCAN_MS }: { steps: readonly Step[]; how: How; SCAN_MS: number }
): Promise<Told[]> {
  const LIVE = '[aria-live="polite"], [role="status"], [role="alert"]';
  const from_ms = performance.now();
  const told: Told[] = [];
  const wait = (ms: number) => new Promise((done) => setTimeout(done, ms));
  const slider = () => place.querySelector('[role="slider"]') as HTMLElement;
  const plain = (text: string) => text.replace(/\s+/g, ' ').trim();
  const last = new Map<Element, string>();
  const listen = () => {
    for (const region of place.querySelectorAll(LIVE)) {
      const text = plain(region.textContent);
      if (last.get(region) === text) continue;
      last.set(region, text);
      if (text) told.push({ at_ms: Math.round(performance.now() - from_ms), text });
    }
  };
  const ear = new MutationObserver(listen);
  ear.observe(place, { subtree: true, childList: true, characterData: true });

  const inches = (name: string): number => {
    const said = plain(slider().getAttribute('aria-valuetext') ?? '');
    const found = new RegExp(`${name} (?:(\\d+) ft)? ?(?:(\\d*)(½)? in)?`).exec(said);
    return found ? 12 * Number(found[1] ?? 0) + Number(found[2] ?? 0) + (found[3] ? 0.5 : 0) : 0;
  };
  const ended = () => place.querySelector('[data-phase="moving"], [data-phase="ready"]') === null;

  const pointsTo = () => Number(slider().getAttribute('aria-valuenow'));

  async function until({ tip_in, reel_in, turn_deg, stuck_in, down_to_deg, hear, ms }: Until) {
    const since_ms = performance.now();
    const from_deg = pointsTo();
    const heard = told.length;
    let jig = -1;
    let tipThen = 0;
    const isDone = () => {
      if (ms !== undefined) return performance.now() - since_ms >= ms;
      if (tip_in !== undefined) return inches('tip') >= tip_in;
      if (reel_in !== undefined) return inches('reel') >= reel_in;
      if (turn_deg !== undefined) return Math.abs(pointsTo() - from_deg) >= turn_deg;
      if (down_to_deg !== undefined) return pointsTo() <= down_to_deg;
      if (stuck_in !== undefined) {
        if (inches('jig') !== jig) [jig, tipThen] = [inches('jig'), inches('tip')];
        return inches('tip') - tipThen >= stuck_in;
      }
      return hear === undefined || told.slice(heard).some(({ text }) => text.includes(hear));
    };
    while (!isDone() && !ended() && performance.now() - since_ms < 60_000)
      await new Promise(requestAnimationFrame);
  }

  // By keys: at the rod.
  const KEYS: Record<string, string> = {
    up: 'ArrowUp',
    down: 'ArrowDown',
    reel: ']',
    start: ' ',
    done: ' ',
    faster: '+',
    slower: '-'
  };
  const key = (type: 'keydown' | 'keyup', name: string) =>
    document.activeElement?.dispatchEvent(new KeyboardEvent(type, { key: name, bubbles: true }));

  // By one switch: what can be reached is gone through in turn, and the switch does what it stands at.
  const NAMES = {
    up: /^(Raise|Sweep)$/,
    down: /^(Lower|Forward)$/,
    fast: /^(Raise|Sweep) fast$/,
    reel: /^Reel in$/,
    start: /^Start$/,
    done: /^Done$/,
    faster: /^Faster$/,
    slower: /^Slower$/,
    more: /^More$/,
    latch: /^Press to go, press to stop$/
  };
  const nameOf = (element: Element) =>
    plain(element.getAttribute('aria-label') ?? element.textContent);
  let hasBegun = false;
  async function scanTo(name: RegExp): Promise<HTMLElement | null> {
    const reachable = () =>
      [...place.querySelectorAll<HTMLElement>('button:enabled, summary, [tabindex="0"]')].filter(
        (element) => element.checkVisibility()
      );
    for (let steps = 0; steps < 60; steps++) {
      if (ended()) return null;
      const now = document.activeElement as HTMLElement;
      if (place.contains(now) && name.test(nameOf(now))) return now;
      const all = reachable();
      const next = all[(all.indexOf(now) + 1) % all.length];
      // Before a try has begun nobody waits for anything: that much is not waited here, either.
      await wait(hasBegun ? SCAN_MS : 0);
      next.focus();
    }
    throw new Error(`no ${name} is reached by a switch`);
  }

  for (const { hold, isLeftOn, press, times = 1, at, ...how_long } of steps) {
    if (ended()) break;
    const name = hold ?? press;
    if (at && how === 'switch') await scanTo(NAMES[at]);
    if (name && how === 'switch') {
      const control = await scanTo(NAMES[name]);
      if (!control) break;
      hasBegun ||= hold !== undefined || press === 'start';
      for (let i = 0; i < times; i++) control.click();
      await until(how_long);
      if (hold && !isLeftOn && !ended()) control.click();
    } else if (name && name in KEYS) {
      slider().focus();
      for (let i = 0; i < times; i++) {
        key('keydown', KEYS[name]);
        if (press) key('keyup', KEYS[name]);
      }
      await until(how_long);
      if (hold && !isLeftOn) key('keyup', KEYS[hold]);
    } else await until(how_long);
  }
  ear.disconnect();
  return told;
}
