import { describe, expect, test } from 'vitest';
import { isSayable, readNumber, saidUnit, stepped } from '../../../src/lib/app/lesson/said-number';

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

  test('is no more than any rod, reel or fall gives', () => {
    expect(isSayable(600, feet)).toBe(true);
    expect(isSayable(700, feet)).toBe(false);
  });
});
