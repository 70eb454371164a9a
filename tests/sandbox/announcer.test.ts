import { expect, test } from 'vitest';
import { Announcer } from '../../src/lib/sandbox/announcer';

test('a screen reader hears at most one thing a second, and the newest', () => {
  const said: string[] = [];
  const announcer = new Announcer((text) => said.push(text));
  announcer.tell('Off the bottom.');
  announcer.flush(5000);
  announcer.tell('On the bottom.');
  announcer.flush(5600);
  announcer.tell('Off the bottom.');
  announcer.flush(5999);
  expect(said).toEqual(['Off the bottom.']);
  expect(announcer.isWaiting).toBe(true);
  announcer.flush(6000);
  announcer.flush(9000);
  expect(said).toEqual(['Off the bottom.', 'Off the bottom.']);
  expect(announcer.isWaiting).toBe(false);
});

test('what is over at once is said at once, and not lost to what lasts', () => {
  const said: string[] = [];
  const announcer = new Announcer((text) => said.push(text));
  announcer.tell('even pull');
  announcer.flush(5000);
  announcer.tell('a knock', true);
  announcer.tell('even pull');
  announcer.flush(5016);
  expect(said).toEqual(['even pull', 'a knock']);
  announcer.tell('knocks', true);
  announcer.tell('even pull');
  announcer.flush(5900);
  expect(said, 'once a second is enough of them, too').toEqual(['even pull', 'a knock']);
  announcer.flush(6016);
  expect(said).toEqual(['even pull', 'a knock', 'knocks']);
});
