import { describe, expect, test } from 'vitest';
import { applyChange, type RecordChange } from '../../src/lib/practice';
import { emptyRecord } from '../../src/lib/wire';
import { aRecord, anAnswer, anOutfit, aSession, aTry } from './samples';

const noon = '2030-05-01T12:00:00.000Z';
const one = '2030-05-01T13:00:00.000Z';

const geared = () =>
  aRecord({ outfits: [anOutfit('o0')], sessions: [aSession('session-of-no-day')] });

describe('a change to the record', () => {
  test('sets one setting and leaves the other', () => {
    const after = applyChange(aRecord(), { kind: 'set', settings: { units: 'imperial' } });
    expect(after.settings).toEqual({ units: 'imperial', scheme: 'dark' });
  });

  test('keeps the first prediction for a lesson, since it was a commitment', () => {
    const later = { lesson: 'one-foot', station: 'predict', option: 'half', at: noon };
    const after = applyChange(aRecord(), { kind: 'predicted', prediction: later });
    expect(after.predictions.map(({ option }) => option)).toEqual(['twice']);
  });

  test('keeps a prediction for each lesson', () => {
    const other = { lesson: 'slack', station: 'predict', option: 'half', at: noon };
    const after = applyChange(aRecord(), { kind: 'predicted', prediction: other });
    expect(after.predictions.map(({ lesson }) => lesson)).toEqual(['one-foot', 'slack']);
  });

  test('adds a try at the end', () => {
    const after = applyChange(aRecord(), { kind: 'tried', try: aTry('t3') });
    expect(after.tries.map(({ id }) => id)).toEqual(['t1', 't2', 't3']);
  });

  test('adds a station that was gone on to, the last one last and each once', () => {
    const change = { kind: 'reached', lesson: 'one-foot', station: 'about', at: noon } as const;
    expect(applyChange(aRecord(), change).progress).toEqual([
      { lesson: 'one-foot', reached: ['drag', 'about'], at: noon, finished: null }
    ]);
  });

  test('remembers when a lesson was first finished, whatever is read in it afterwards', () => {
    const end = { kind: 'finished', lesson: 'one-foot', station: 'field', at: noon } as const;
    const again = { kind: 'reached', lesson: 'one-foot', station: 'about', at: one } as const;
    const after = [end, again, { ...end, at: one }].reduce(applyChange, aRecord());
    expect(after.progress).toMatchObject([
      { reached: ['drag', 'about', 'field'], at: one, finished: noon }
    ]);
  });

  test('keeps an outfit in its place, the later state of it, and drops it on a word', () => {
    const both = [anOutfit('o1'), anOutfit('o2')];
    const heavier = anOutfit('o1', { name: 'Heavier', at: noon });
    const before = aRecord({
      outfits: both,
      settings: { units: 'metric', scheme: 'dark', outfit: 'o1' }
    });
    const after = applyChange(before, { kind: 'outfit kept', outfit: heavier });
    expect(after.outfits.map(({ name }) => name)).toEqual(['Heavier', both[1].name]);
    expect(applyChange(after, { kind: 'outfit kept', outfit: both[0] })).toEqual(after);
    const without = applyChange(after, { kind: 'outfit dropped', id: 'o1' });
    expect(without.outfits).toEqual([both[1]]);
    expect(without.settings).toEqual({ units: 'metric', scheme: 'dark' });
  });

  test('keeps a session in its later state, and drops it on a word', () => {
    const id = 'session-of-one-day';
    const before = aRecord({ sessions: [aSession(id)] });
    const more = aSession(id, { notes: 'Wind', at: noon });
    const after = applyChange(before, { kind: 'session kept', session: more });
    expect(after.sessions).toEqual([more]);
    expect(applyChange(after, { kind: 'session dropped', id }).sessions).toEqual([]);
  });

  test('erases everything', () => {
    expect(applyChange(aRecord(), { kind: 'erased' })).toEqual(emptyRecord());
  });

  const changes: RecordChange[] = [
    { kind: 'set', settings: { scheme: 'light' } },
    {
      kind: 'predicted',
      prediction: { lesson: 'slack', station: 'predict', option: 'half', at: noon }
    },
    { kind: 'tried', try: aTry('t3') },
    { kind: 'answered', answer: anAnswer('a1') },
    { kind: 'outfit kept', outfit: anOutfit('o1') },
    { kind: 'outfit dropped', id: 'o0' },
    { kind: 'session kept', session: aSession('session-of-one-day') },
    { kind: 'session dropped', id: 'session-of-no-day' },
    { kind: 'reached', lesson: 'one-foot', station: 'see', at: noon },
    { kind: 'finished', lesson: 'one-foot', station: 'field', at: noon },
    { kind: 'imported', record: aRecord({ tries: [aTry('t9')] }) },
    { kind: 'erased' }
  ];
  test.each(changes)('does no more when done twice, and spoils nothing: $kind', (change) => {
    const before = geared();
    const once = applyChange(before, change);
    expect(once).not.toEqual(before);
    expect(applyChange(once, change)).toEqual(once);
    expect(before).toEqual(geared());
  });
});
