import { describe, expect, test } from 'vitest';
import {
  planComparison,
  proofText,
  shareText,
  spellText
} from '../../../src/lib/app/log/log-words';
import { logFile } from '../../../src/lib/app/log/log-export';
import { readLook } from '../../../src/lib/app/log/looks';
import {
  LOGGED_RETRIEVES,
  loggedSpell,
  nextSpell,
  recounted,
  settingsOf
} from '../../../src/lib/app/log/spell-draft';
import { countedShare, logGroups } from '../../../src/lib/practice';
import { logEntry } from '../../../src/lib/wire';
import * as v from 'valibot';
import { anEntry, anOutfit, aPlan } from '../../practice/samples';

const made = { id: 'entry-of-one-noon-x', at: '2030-05-01T12:00:00.000Z' };
const ON = '2030-05-01';
const settings = { units: 'imperial', scheme: 'auto' } as const;
const fresh = { outfits: [], settings };
const plain = (text: string) => text.replaceAll('\u00a0', ' ');

describe('the next spell', () => {
  test('is where and with what the last one was, with nothing counted yet', () => {
    const last = anEntry('entry-of-one-morning', { retrieve: 'hop', drops_s: [11] });
    const draft = nextSpell({ ...fresh, last }, ON);
    expect(draft).toMatchObject({ place: 'North hump', retrieve: 'hop', depth_m: 6.1, bites: 0 });
    expect(draft).toMatchObject({ felt: [], drops_s: [], looks: [], casts: 10 });
  });

  test('of a new day is as planned, with the jig to begin with', () => {
    const draft = nextSpell(
      { ...fresh, earlier: anEntry('entry-of-last-week-x'), plan: aPlan('plan-of-one-morning') },
      ON
    );
    expect(draft).toMatchObject({ plan: 'plan-of-one-morning', outfit: 'o1', depth_m: 6.096 });
  });

  test('of a new day without a plan is in the water and with the gear that other pages had last', () => {
    const water = { depth_m: 7, out_m: 20, temperature_C: 9, ground: 'mud', wind: 'calm' } as const;
    const outfits = [anOutfit('o1'), anOutfit('o2')];
    const before = { outfits, settings: { ...settings, outfit: 'o2', water } };
    const draft = nextSpell({ ...before, earlier: anEntry('entry-of-last-week-x') }, ON);
    expect(draft).toMatchObject({ outfit: 'o2', depth_m: 7, ground: 'mud', place: 'North hump' });
    expect(draft.plan).toBeUndefined();
    expect(settingsOf({ ...draft, depth_m: 5 }, before.settings)).toEqual({
      outfit: 'o2',
      water: { ...water, depth_m: 5 }
    });
  });

  test('is what the record takes, whatever it begins with', () => {
    const drafts = [
      nextSpell(fresh, ON),
      nextSpell({ ...fresh, outfits: [anOutfit('o1')] }, ON),
      nextSpell({ ...fresh, plan: aPlan('plan-of-one-morning') }, ON)
    ];
    for (const draft of drafts) {
      const entry = loggedSpell(draft, made);
      expect(v.parse(logEntry, entry)).toEqual(entry);
      expect(LOGGED_RETRIEVES).toContain(entry.retrieve);
    }
  });

  test('is logged on the day on which it was begun, without spaces around its place', () => {
    const begun = { ...nextSpell(fresh, ON), place: 'North hump ' };
    const entry = loggedSpell(begun, { ...made, at: '2030-05-03T09:00:00.000Z' });
    expect([entry.on, entry.place]).toEqual([ON, 'North hump']);
  });

  test('never holds more fish than bites, nor more bites than casts', () => {
    const draft = nextSpell(fresh, ON);
    expect(recounted(draft, { fish: 2 })).toMatchObject({ fish: 2, bites: 2, casts: 10 });
    expect(recounted({ ...draft, bites: 3, fish: 2 }, { bites: 1 })).toMatchObject({ fish: 1 });
    expect(recounted({ ...draft, bites: 3, fish: 3 }, { casts: 2 })).toMatchObject({
      casts: 2,
      bites: 2,
      fish: 2
    });
    expect(recounted({ ...draft, casts: 1 }, { bites: 4 })).toMatchObject({ casts: 4, bites: 4 });
  });
});

test('a look is typed in the learner’s units, and a field that cannot be is named', () => {
  const draft = { move: 1, out: '40', travel: '16', height: '' };
  expect(readLook(draft, 'imperial')).toMatchObject({
    out_m: 12.192,
    travel_m: expect.closeTo(0.4064, 6)
  });
  expect(readLook({ ...draft, out: 'far' }, 'metric')).toEqual({
    fault: 'Jig out must be like 12 m.'
  });
  expect(readLook({ ...draft, travel: '' }, 'metric')).toMatchObject({
    fault: 'Fill in how far it came, or how high.'
  });
});

describe('against the plan', () => {
  const plan = aPlan('plan-of-one-morning');
  const fished = (drops_s: number[], more = {}) =>
    planComparison(
      plan,
      [anEntry('entry-of-one-morning', { plan: plan.id, drops_s, ...more })],
      'imperial'
    ).map((line) => [plain(line.said), plain(line.fished)]);

  test('stand depth, jig and count, each beside what was fished', () => {
    expect(fished([12, 13])).toEqual([
      ['Depth 20 ft', '20 ft'],
      ['Jig: Half ounce on twelve pound', 'Half ounce on twelve pound'],
      ['First: drag', 'drag 2 of 10 casts bitten'],
      ['Count 11 s ± 4', '13 s in 2 drops: as planned']
    ]);
    expect(fished([17])[3][1]).toMatch(/slower/);
    expect(fished([5])[3][1]).toMatch(/quicker/);
  });

  test('a count of another jig or another depth is not held against it', () => {
    expect(fished([12], { outfit: 'o9' })).toHaveLength(3);
    expect(fished([12], { depth_m: 9 })).toHaveLength(3);
  });
});

test('a log says how little it proves', () => {
  const entries = [1, 2].map((n) => anEntry(`entry-of-one-morning-${n}`, { retrieve: `r${n}` }));
  expect(proofText(logGroups(entries, 'retrieve'), 1)).toBe(
    '1 day on the water. The bars overlap: this log can’t tell them apart yet.'
  );
  expect(plain(shareText(countedShare(2, 5)))).toMatch(/^2 of 5 \(\d+ to \d+%\)$/);
  expect(spellText(entries[0])).toBe(
    'Half ounce on twelve pound: r1, steady, 2 bites, 1 fish in 10 casts, felt bottom and tap'
  );
});

test('a saved log holds no place unless it is asked for', async () => {
  const entries = [anEntry('entry-of-one-morning')];
  for (const kind of ['json', 'csv'] as const) {
    expect(await logFile(entries, kind, false, ON).text()).not.toContain('North hump');
    expect(await logFile(entries, kind, true, ON).text()).toContain('North hump');
  }
});
