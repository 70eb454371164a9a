import { describe, expect, test } from 'vitest';
import {
  dropPlace,
  keepFirst,
  keepPlace,
  keptPlaces,
  newPlace,
  withAnswer,
  withRefused,
  withTaken
} from '../../../src/lib/app/clinic/place';
import type { ClinicSubmission } from '../../../src/lib/wire';

const vote = (option: string, part = '1.1'): ClinicSubmission => {
  return { kind: 'vote', id: `vote-${option}-${part}`.padEnd(16, 'x'), part, option };
};

/** What a browser keeps, for one test. */
function shelf(): Storage {
  const kept = new Map<string, string>();
  return {
    getItem: (key: string) => kept.get(key) ?? null,
    setItem: (key: string, value: string) => void kept.set(key, value)
  } as Storage;
}

describe('a phone in two clinics', () => {
  const [reed, bay] = [newPlace('REED22', 'token-of-reed'), newPlace('BAY333', 'token-of-bay')];

  test('keeps both places, the one opened last first', () => {
    const storage = shelf();
    keepFirst(storage, reed);
    keepFirst(storage, bay);
    expect(keptPlaces(storage)).toEqual([bay, reed]);
    keepFirst(storage, reed);
    expect(keptPlaces(storage)).toEqual([reed, bay]);
  });

  test('keeps what is settled in one behind the other, and leaves one without the other', () => {
    const storage = shelf();
    keepFirst(storage, withAnswer(reed, vote('a')));
    keepFirst(storage, bay);
    keepPlace(storage, withTaken(withAnswer(reed, vote('a')), vote('a')));
    expect(keptPlaces(storage).map(({ code, unsent }) => [code, unsent.length])).toEqual([
      ['BAY333', 0],
      ['REED22', 0]
    ]);
    dropPlace(storage, bay);
    expect(keptPlaces(storage).map(({ code }) => code)).toEqual(['REED22']);
  });
});

describe('a vote', () => {
  const here = newPlace('REED22', 'token-of-reed');
  const why = 'The vote had closed. Yours doesn’t count.';

  test('that came too late is no vote any more, and says why', () => {
    const late = withRefused(withAnswer(here, vote('a')), vote('a'), why);
    expect(late).toMatchObject({ votes: {}, refused: { '1.1': why }, unsent: [] });
  });

  test('that was changed too late stands as it was taken before', () => {
    const taken = withTaken(withAnswer(here, vote('a')), vote('a'));
    const late = withRefused(withAnswer(taken, vote('b')), vote('b'), why);
    expect(late.votes).toEqual({ '1.1': 'a' });
  });

  test('refused after another was made leaves that one', () => {
    const both = withAnswer(withAnswer(here, vote('a')), vote('b'));
    expect(withRefused(both, vote('a'), why).votes).toEqual({ '1.1': 'b' });
  });

  test('in the same part again forgets that one was too late', () => {
    const late = withRefused(withAnswer(here, vote('a')), vote('a'), why);
    expect(withAnswer(late, vote('b')).refused).toEqual({});
  });
});
