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
  expect(steps).toMatch(/Call how far the jig came.*an ink dot on the line/);
  expect(steps).not.toMatch(/within/);
  expect(takes).toContain('Waterproof pen');
});

test('the wait after a drag is the one of the water’s season, not of all seasons', () => {
  const why = (temperature_C: number) =>
    plan(120, { ...mild, temperature_C, fish: 'slow' }).blocks.find(({ title }) =>
      title.startsWith('First retrieve: drag')
    )?.why;
  expect(why(7)).toMatch(/then wait 10 seconds or more\.$/);
  expect(why(16)).toMatch(/then wait 2 to 10 seconds\.$/);
  expect(why(0)).toEqual(why(7));
  expect(why(39)).toMatch(/then wait 1 to 3 seconds\.$/);
});

test('a jig heavier than guides tie on says why, in 28 ft as in 11', () => {
  const why = (depth_m: number, wind: Conditions['wind'], jig_kg?: number) => {
    const conditions = { ...mild, depth_m, wind, jig_kg };
    const day = { conditions, jig: jigFor(conditions), minutes: 120, hands: [null] };
    const { blocks } = planLesson(day, lessons);
    return blocks.find(({ title }) => title === 'Cast and count down')?.why;
  };
  expect(why(8.5, 'strong')).toMatch(
    /Most guides tie on \{weight:0\.0\d+\} this deep\. Heavier.*wind/
  );
  expect(why(3.35, 'strong')).toMatch(/one size up, for the wind/);
  for (const plain of [why(3.35, 'calm'), why(8.5, 'strong', 0.0283)])
    expect(plain).not.toMatch(/Most guides/);
});
