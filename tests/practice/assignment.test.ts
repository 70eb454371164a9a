import { describe, expect, test } from 'vitest';
import { loadLessons } from '../../src/lib/course';
import { isInAnyGear, ownGearId, parseAssignment } from '../../src/lib/practice';
import { type Assignment, MOST, storedAssignment } from '../../src/lib/wire';
import { parseData } from '../../src/lib/scoring';
import { drag } from './drag';

const assignment: Assignment = {
  title: 'Before Saturday',
  from: 'Marit of Reed Bay',
  note: 'Slowly.\nTwice a day.',
  lessons: ['one-foot'],
  challenges: [drag],
  objectives: ['slack', 'season'],
  questions: 3,
  tries: 8,
  phase: 'half_seen',
  due: '2031-05-09'
};
const stored = (old: unknown) => parseData(storedAssignment, old);
const changed = (change: object) => ({ ...assignment, ...change });

describe('an assignment', () => {
  test('is read as it was written', () => {
    expect(parseAssignment(JSON.parse(JSON.stringify(assignment)))).toEqual(assignment);
  });

  test('asks for a lesson, a challenge or an objective: one of them is enough', () => {
    const nothing = { lessons: [], challenges: [], objectives: [] };
    expect(() => parseAssignment(changed(nothing))).toThrow(/^challenges: must ask for a lesson/);
    for (const part of ['lessons', 'challenges', 'objectives'] as const) {
      const one = changed({ ...nothing, [part]: assignment[part] });
      expect(parseAssignment(one)[part]).toEqual(assignment[part]);
    }
  });

  test('has its lines cleaned of what nobody typed', () => {
    const { title, note } = parseAssignment(
      changed({ title: ' A\tb\u0000 ', note: 'x\n\u0007y ' })
    );
    expect([title, note]).toEqual(['A b', 'x\n y']);
  });

  test.each([
    ['title', { title: ' ' }, 'must not be empty, got ""'],
    ['from', { from: 'x'.repeat(81) }, 'must be 80 letters or fewer'],
    ['note', { note: 'x'.repeat(1001) }, 'must be 1000 letters or fewer'],
    ['tries', { tries: 0 }, 'must be a number from 1 to 60, got 0'],
    ['questions', { questions: 21 }, 'must be a number from 1 to 20, got 21'],
    ['questions', { questions: 1.5 }, 'must be a whole number, got 1.5'],
    ['objectives.1', { objectives: ['slack', 'luck'] }, 'no question is about this, got "luck"'],
    ['objectives', { objectives: ['slack', 'slack'] }, 'names one twice'],
    ['lessons', { lessons: ['one-foot', 'one-foot'] }, 'names one twice'],
    ['challenges', { challenges: [drag, drag] }, 'names one twice'],
    ['challenges', { challenges: Array(MOST.challenges + 1).fill(drag) }, 'too many challenges'],
    ['phase', { phase: 'kept' }, 'expected'],
    ['due', { due: 'soon' }, 'must be a day like 2031-05-30, got "soon"'],
    ['prize', { prize: 1 }, 'unknown key, got 1'],
    ['challenges.0.hold_s', { challenges: [{ ...drag, hold_s: -1 }] }, '']
  ])('is refused for its %s', (path, change, reason) => {
    expect(() => parseAssignment(changed(change), 'task')).toThrow(`task.${path}: ${reason}`);
  });

  test('from before keeps what it said, and gets the phase that its challenges had', () => {
    const { title, note, lessons, tries, due } = assignment;
    const before = { title, note, lessons, tries, due };
    const hidden = { ...drag, visibility: 'unseen' as const };
    const filled = stored({ ...before, challenges: [hidden] });
    expect(filled).toMatchObject({ ...before, phase: 'unseen', objectives: [], from: '' });
    expect(parseAssignment(filled)).toEqual(filled);
    expect(stored({ ...before, challenges: [] }).phase).toBe('seen');
    expect(stored(assignment)).toEqual(assignment);
  });
});

describe('a challenge in the guide’s own gear', () => {
  const ids = loadLessons().flatMap(({ challenges }) => challenges.map(({ id }) => id));

  test('is the course’s one, and no other of the course', () => {
    for (const asked of ids.flatMap((id) => [id, ownGearId(id, '0a1b2c3d')])) {
      const same = ids.filter((id) => isInAnyGear(asked, id));
      expect(same).toEqual([asked.replace('-0a1b2c3d', '')]);
    }
  });
});
