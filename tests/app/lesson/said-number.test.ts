import { describe, expect, test } from 'vitest';
import { loadLessons } from '../../../src/lib/course';
import { readNumber, readSaid, saidUnit, stepped } from '../../../src/lib/app/lesson/said-number';

const feet = saidUnit('feet', 'imperial');

describe('a number that is said', () => {
  test.each([
    ['feet', 'imperial', 'ft', 0.3048],
    ['feet', 'metric', 'm', 1],
    ['inches', 'imperial', 'in', 0.0254],
    ['inches', 'metric', 'cm', 0.01],
    ['seconds', 'metric', 's', 1]
  ] as const)('of %s is in the reader’s own %s unit', (say, units, name, size) => {
    expect(saidUnit(say, units)).toMatchObject({ name, size });
  });

  test.each([
    ['2.5', 2.5],
    [' 2,5 ', 2.5],
    ['0', 0],
    ['', null],
    ['-1', null],
    ['two', null]
  ])('is read from %j', (typed, number) => {
    expect(readNumber(typed)).toBe(number);
  });

  test('goes up and down by steps, from what was typed between two of them, and never below nothing', () => {
    expect(stepped('', feet, 1)).toBe('0.5');
    expect(stepped('2', feet, 1)).toBe('2.5');
    expect(stepped('2.3', feet, 1)).toBe('2.5');
    expect(stepped('2.3', feet, -1)).toBe('2');
    expect(stepped('0.5', feet, -1)).toBe('0');
    expect(stepped('0', feet, -1)).toBe('0');
  });

  test('is a foot in four presses, where it is said in inches', () => {
    const inches = saidUnit('inches', 'imperial');
    const presses = Array.from({ length: 4 }).reduce<string>((at) => stepped(at, inches, 1), '');
    expect(presses).toBe('12');
    expect(stepped('12', inches, -1)).toBe('9');
    expect(stepped('7', inches, 1)).toBe('9');
    expect(stepped('', saidUnit('inches', 'metric'), 1)).toBe('10');
  });

  test('is no more than any rod, reel or fall gives, and a length as much in each unit', () => {
    expect(readSaid('50', feet)).toEqual({ said: 50 * feet.size });
    expect(readSaid('300', saidUnit('seconds', 'imperial'))).toEqual({ said: 300 });
    for (const say of ['feet', 'inches'] as const)
      for (const units of ['imperial', 'metric'] as const) {
        const unit = saidUnit(say, units);
        expect(unit.most * unit.size, unit.name).toBeCloseTo(15, 0);
      }
  });

  test.each([
    ['700', 'seconds', 'Your call: “700” isn’t from 0 to 600 seconds.'],
    ['two', 'feet', 'Your call: “two” isn’t from 0 to 50 feet.'],
    ['-1', 'inches', 'Your call: “-1” isn’t from 0 to 600 inches.']
  ] as const)('is refused by what was typed, and what may be: %s', (typed, say, fault) => {
    expect(readSaid(typed, saidUnit(say, 'imperial'))).toEqual({ fault });
  });

  test('may be whatever an option of a lesson says', () => {
    const asked = loadLessons().flatMap(({ sections }) =>
      sections.flatMap((one) => (one.kind === 'predict' && one.question.say ? [one.question] : []))
    );
    expect(asked.length).toBeGreaterThan(3);
    for (const { ask, say = 'feet', options } of asked) {
      const most = Math.min(
        ...(['imperial', 'metric'] as const).map((units) => {
          const unit = saidUnit(say, units);
          return unit.most * unit.size;
        })
      );
      for (const { holds } of options)
        for (const range of Object.values(holds)) expect(range[1], ask).toBeLessThan(most);
    }
  });
});
