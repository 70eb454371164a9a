import { expect, test } from 'vitest';
import { homeLink, readHomeLink } from '../../../src/lib/app/clinic/home/home-link';
import { keyFile, secretIn } from '../../../src/lib/app/guide/key-file';
import { fromHash, toHash } from '../../../src/lib/app/try/try-link';
import { packedText, unpackedText } from '../../../src/lib/connection';
import type { RodInput } from '../../../src/lib/model';
import { shareToken } from '../../../src/lib/server/token';

/** The letters of base64url that no word holds, and some that one does. */
const ENDS = ['-', '_', '0', '9', 'a', 'Z'];
const at = 'https://feltfoot.example/guide/task';

/** Of any length, so that the last letter stands for six bits, or four, or two. */
const planOf = (i: number) =>
  `plan ${(Math.imul(i, 2654435761) >>> 0).toString(36)} ${'abc'.slice(i % 3)}`;

/** Of what is made one after another the first that ends so. */
async function madeWith(end: string, make: (i: number) => string | Promise<string>) {
  for (let i = 0; i < 4000; i++) {
    const made = await make(i);
    if (made.endsWith(end)) return { made, i };
  }
  throw new Error(`none ends in ${end}`);
}

test.each(ENDS)('a link to homework opens whole where its secret ends in %s', async (end) => {
  const { made } = await madeWith(end, (i) => shareToken('key', `homework ${i}`));
  for (const text of [`#${made}`, `${at}#${made}`, `Here: ${at}#${made}\n`, made, ` ${made}\n`]) {
    expect(secretIn(text), text).toBe(made);
  }
  expect(secretIn(keyFile('Lake', `${at}#${made}`))).toBe(made);
});

test('no part of what is too long for a secret is taken for one', () => {
  expect(secretIn(`#${'a'.repeat(65)}`)).toBeNull();
  expect(secretIn(`#${'a'.repeat(64)}-`)).toBeNull();
});

test.each(ENDS)(
  'a link that is packed, like a plan or a card, opens where it ends in %s',
  async (end) => {
    const { made, i } = await madeWith(end, (n) => packedText(planOf(n)));
    expect(await unpackedText(made)).toBe(planOf(i));
  }
);

test.each(ENDS)('the link home from a clinic opens where its secret ends in %s', (end) => {
  const link = homeLink({ code: 'AYXW6C', token: `${'t'.repeat(31)}${end}` });
  expect(readHomeLink(link)).toEqual({ link, reports: {} });
});

test('a link to a try opens whatever it ends in', () => {
  const ends = new Set<string>();
  for (let held = 1; held <= 80; held++) {
    const input: RodInput = {
      kind: 'rod_input',
      rate_Hz: 100,
      elevation_deg: 0,
      azimuth_deg: [60, 60.02, ...Array.from({ length: held }, () => 60.03)]
    };
    const hash = toHash({ challenge: 'exactly-one-foot', input });
    ends.add(hash.slice(-1));
    expect(fromHash(hash)).toEqual({ challenge: 'exactly-one-foot', input });
  }
  expect([...ends]).toEqual(expect.arrayContaining(ENDS));
});
