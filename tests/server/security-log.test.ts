import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { SecurityLog, securityEventOf } from '../../src/lib/server/security-log';

describe('what a watcher wants to know of', () => {
  test.each([
    ['POST', '/api/guide/session', 404, 'key refused'],
    ['POST', '/api/guide/passkey/open', 422, 'key refused'],
    ['POST', '/api/guide/session', 200, 'space opened'],
    ['GET', '/metrics', 403, 'refused'],
    ['POST', '/api/clinic/[code]/join', 429, 'too often'],
    ['POST', '/api/guide/clinic', 401, 'no key'],
    ['POST', '/api/guide/secret', 200, 'new secret'],
    ['DELETE', '/api/guide/space', 200, 'space deleted'],
    ['POST', '/api/homework/forget', 200, 'client deleted'],
    ['POST', '/api/homework/forget', 503, null],
    ['POST', '/api/homework/send', 200, null],
    ['GET', '/lessons', 404, null]
  ])('%s %s, answered %i, is “%s”', (method, route, status, event) => {
    expect(securityEventOf({ method, route, status })).toBe(event);
  });
});

describe('its log', () => {
  beforeEach(() => void vi.useFakeTimers());
  afterEach(() => void vi.useRealTimers());

  test('says the first at once, and of a flood how many there were, each minute', () => {
    const write = vi.fn();
    const watched = new SecurityLog(write);
    const joined = { method: 'POST', route: '/api/clinic/[code]/join', status: 429 };
    for (let i = 0; i < 500; i++) watched.note(joined);
    watched.note({ ...joined, status: 403 });
    vi.advanceTimersByTime(60_000);
    watched.note(joined);
    const { method, route } = joined;
    expect(write.mock.calls).toEqual([
      ['security', { what: 'too often', method, route, times: 1 }],
      ['security', { what: 'refused', method, route, times: 1 }],
      ['security', { what: 'too often', method, route, times: 499 }],
      ['security', { what: 'too often', method, route, times: 1 }]
    ]);
  });
});
