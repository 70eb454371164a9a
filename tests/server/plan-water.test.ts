import { expect, test } from 'vitest';
import { loadLessons } from '../../src/lib/course';
import { jigFor } from '../../src/lib/compute/jobs/jig-for';
import { planLesson } from '../../src/lib/server/lesson-plan';
import type { Conditions } from '../../src/lib/wire';

/** What a guide would not do, or could not, with this water, wind and bottom. */
const lessons = loadLessons();
const mild: Conditions = {
  temperature_C: 16,
  depth_m: 3.35,
  ground: 'gravel',
  wind: 'calm',
  fish: 'unknown'
};
const jig = jigFor(mild);
const plan = (minutes: number, conditions = mild) =>
  planLesson({ conditions, jig, minutes, hands: [null] }, lessons);

test('nobody sweeps a rod against line in somebody’s hand', () => {
  for (const who of [[null], [null, null]]) {
    const { blocks } = planLesson({ conditions: mild, jig, minutes: 480, hands: who }, lessons);
    const said = blocks.find(({ title }) => title === 'Bite or bottom')?.steps.join() ?? '';
    expect(said).toMatch(/Clip the line to a rag/);
    expect(said).toMatch(/say “sweep”. The rod stays still/);
    expect(said).not.toMatch(/end of the line|answers with the rod/);
  }
});

test('in strong wind the plan says first to stay in, and hangs no jig on purpose', () => {
  const rocky = (wind: Conditions['wind']) => plan(240, { ...mild, ground: 'chunk rock', wind });
  expect(rocky('strong').warning).toMatch(/^Too windy for a first day: go another day/);
  expect(JSON.stringify(rocky('strong').blocks)).not.toMatch(/on purpose|Hang one/);
  expect(JSON.stringify(rocky('breeze').blocks)).toMatch(/A snag, on purpose/);
  for (const wind of ['calm', 'breeze'] as const) expect(rocky(wind).warning).toBe('');
});

test('what a drag feels like is that of the day’s bottom: smooth over rock is off it', () => {
  const felt = (ground: Conditions['ground']) =>
    plan(240, { ...mild, ground })
      .blocks.find(({ title }) => title === 'First retrieve: drag')
      ?.steps.find((step) => /it’s (down|sliding)/.test(step));
  expect(felt('chunk rock')).toMatch(/^Knocks and catches: it’s down\. Light and smooth: it’s up/);
  expect(felt('sand')).toMatch(/: a light, steady drag: it’s sliding on bottom/);
  for (const rough of ['gravel', 'boulders', 'shell bed'] as const)
    expect(felt(rough)).toMatch(/smooth: it’s up/);
});

test('how far a jig came is read off the line: nobody measures two inches on the bottom', () => {
  const { blocks, takes } = plan(120);
  const steps = blocks.find(({ title }) => title === 'First retrieve: drag')?.steps.join() ?? '';
  expect(steps).toMatch(/Ink a dot on the line.*Call how far the jig came.*the dot moved as far/);
  expect(steps).not.toMatch(/within/);
  expect(takes).toContain('Waterproof pen');
});

test('the wait after a drag is the one of the water’s season, not of all seasons, and slow fish get the longest', () => {
  const why = (temperature_C: number, fish: Conditions['fish'] = 'unknown') =>
    plan(120, { ...mild, temperature_C, fish }).blocks.find(({ title }) =>
      title.startsWith('First retrieve: drag')
    )?.why;
  expect(why(7)).toMatch(/then wait 10 seconds or more\.$/);
  expect(why(16)).toMatch(/then wait 2 to 10 seconds\.$/);
  expect(why(0)).toEqual(why(7));
  expect(why(39)).toMatch(/then wait 1 to 3 seconds\.$/);
  for (const temperature_C of [7, 16, 39])
    expect(why(temperature_C, 'slow')).toMatch(/then wait 10 seconds or more\.$/);
});

test('a jig heavier than guides tie on says why, in 28 ft as in 11', () => {
  const why = (depth_m: number, wind: Conditions['wind'], jig_kg?: number) => {
    const conditions = { ...mild, depth_m, wind, jig_kg };
    const day = { conditions, jig: jigFor(conditions), minutes: 120, hands: [null] };
    const { blocks } = planLesson(day, lessons);
    return blocks.find(({ title }) => title === 'Cast and count down')?.why;
  };
  // As a day's plan has it: a size up is what guides tie on in this wind.
  for (const depth_m of [3.35, 8.5])
    expect(why(depth_m, 'strong')).toMatch(/one size up, for the wind/);
  for (const plain of [why(3.35, 'calm'), why(8.5, 'strong', 0.0283)])
    expect(plain).not.toMatch(/Most guides/);
});

test('in 32 ft no task says the depth of its lesson, and a bloated fish goes down again', () => {
  const sheet = (depth_m: number) => {
    const conditions = { ...mild, depth_m, temperature_C: 27, fish: 'active' as const };
    return plan(240, conditions);
  };
  const [deep, shallow] = [9.75, 6].map(sheet);
  expect(JSON.stringify(deep.blocks)).toMatch(/retrieve: stroke.*Snap the jig/);
  expect(JSON.stringify(deep.blocks)).not.toMatch(/In \{10 ft/);
  expect(JSON.stringify(deep.blocks)).toMatch(/Up from deep and bloated/);
  expect(deep.takes).toContain('Descending device');
  expect(shallow.takes).not.toContain('Descending device');
});

test('the talk has what the day brings: cold water under 70 °F, heat, wind, and glasses always', () => {
  const talk = (change: Partial<Conditions>) =>
    plan(120, { ...mild, ...change }).blocks[0].steps.join();
  for (const one of [talk({}), talk({ temperature_C: 27 })]) expect(one).toMatch(/Glasses on/);
  expect(talk({ temperature_C: 15.6 })).toMatch(/cold water: Float a minute/);
  expect(talk({ temperature_C: 22 })).not.toMatch(/cold water/);
  expect(talk({ temperature_C: 27 })).toMatch(/Heat: Drink/);
  expect(talk({})).not.toMatch(/Heat:|Wind coming up/);
  expect(talk({ wind: 'strong' })).toMatch(/Wind coming up: Head in/);
  expect(plan(120, { ...mild, temperature_C: 27 }).takes).toContain('Drinking water');
});

test('a bite is told from bottom on the ramp, in five minutes; the hours are for fishing', () => {
  const run = { conditions: mild, jig, minutes: 240, run_min: 15, hands: [null] };
  const { blocks } = planLesson(run, lessons);
  const titles = blocks.map(({ title }) => title);
  expect(titles.slice(1, 4)).toEqual(['Dry land: the hand', 'Bite or bottom', 'Launch and run']);
  expect(blocks[2].minutes).toBeLessThanOrEqual(10);
  expect(blocks.find(({ title }) => title.startsWith('First'))?.minutes).toBeLessThanOrEqual(45);
  const fished = blocks.find(({ title }) => title === 'The client picks, and says why');
  expect(fished?.minutes).toBeGreaterThanOrEqual(40);
  expect(fished?.steps.join()).toMatch(/Then fish it/);
});
