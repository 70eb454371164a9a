import { describe, expect, test } from 'vitest';
import { startOptions } from '../../scripts/start-options.mjs';

describe('what npm start is asked for', () => {
  test('is nothing, https, or a port', () => {
    expect(startOptions([], {})).toEqual({ isHttps: false, port: null });
    expect(startOptions(['--https'], { PORT: '4000' })).toEqual({ isHttps: true, port: 4000 });
    expect(startOptions([], { PORT: '0' }).port).toBe(0);
  });

  test.each(['--port', '--htps', '4000'])('%s is refused by name, not passed over', (arg) => {
    expect(() => startOptions([arg], {})).toThrow(arg);
    expect(() => startOptions([arg], {})).toThrow('PORT');
  });

  test.each(['abc', '-1', '70000', '80.5'])('a port of %s is refused', (port) => {
    expect(() => startOptions([], { PORT: port })).toThrow(`“${port}”`);
  });
});
