import { expect, test } from 'vitest';
import { askedIn, clientIn } from '../../src/routes/guide/plan/asked';

test('an address asks for a client, a day and minutes, and for somebody new by itself', () => {
  const asked = askedIn(
    new URLSearchParams('client=home-1.ina_2&depth=6.1&minutes=45&wind=strong')
  );
  expect(asked).toMatchObject({ depth: 6.1, minutes: 45, wind: 'strong', ground: 'gravel' });
  expect(clientIn(asked)).toEqual({ homework: 'home-1', client: 'ina_2' });
  expect(clientIn(askedIn(new URLSearchParams()))).toBeNull();
});

test.each(['minutes=20', 'depth=deep', 'ground=lava', 'client=ina', 'key=1'])(
  'an address with %s is refused by its field',
  (address) => {
    expect(() => askedIn(new URLSearchParams(address))).toThrow(address.split('=')[0]);
  }
);
