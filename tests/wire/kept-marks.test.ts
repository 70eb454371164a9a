import { expect, test } from 'vitest';
import { MODEL_VERSION } from '../../src/lib/model';
import { given, keptMarks } from '../../src/lib/wire';

const today = { marks: 64, passed: false };

test('marks given under another version of the model stand, and say which', () => {
  expect(keptMarks({ marks: 92, model: '1.3.0' }, today)).toEqual({
    marks: 92,
    passed: true,
    by: '1.3.0',
    model: '1.3.0',
    isRegraded: false
  });
});

test('a pass of then is no pass more than it was: what was given below it stands too', () => {
  const kept = keptMarks({ marks: 40, model: '1.3.0' }, { marks: 90, passed: true });
  expect(kept).toMatchObject({ marks: 40, passed: false });
});

test('under the version that gave them, marks are worked out and not believed', () => {
  const kept = keptMarks({ marks: 100, model: MODEL_VERSION }, today);
  expect(kept).toEqual({
    marks: 64,
    passed: false,
    by: MODEL_VERSION,
    model: null,
    isRegraded: false
  });
});

test('a try from before marks were kept has today’s, and says so', () => {
  const kept = keptMarks({ model: '1.0.0' }, today);
  expect(kept).toEqual({
    marks: 64,
    passed: false,
    by: MODEL_VERSION,
    model: null,
    isRegraded: true
  });
});

test('a try that today’s model cannot run keeps the marks it has, and else has none', () => {
  expect(keptMarks({ marks: 92, model: '1.3.0' }, null)?.marks).toBe(92);
  expect(keptMarks({ model: '1.3.0' }, null)).toBeNull();
});

test('what is given now carries today’s version', () => {
  expect(given(today)).toEqual({ marks: 64, model: MODEL_VERSION });
  expect(given(null)).toEqual({ model: MODEL_VERSION });
});
