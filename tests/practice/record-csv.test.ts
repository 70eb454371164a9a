import { expect, test } from 'vitest';
import { MODEL_VERSION } from '../../src/lib/model';
import { recordCsv } from '../../src/lib/practice';
import { anAnswer, aRecord, aTry } from './samples';

const record = aRecord({
  tries: [
    aTry('t1', { phase: 'kept', guess_m: 0.4, guess_lifted: true }),
    aTry('t2', { guess_down: false }),
    aTry('t3', { marks: 91, model: '1.3.0' })
  ],
  answers: [anAnswer('a1', { given: ['mud', 'sand'], right: false })]
});

test('the whole record is one table, a row each, in SI', () => {
  const csv = recordCsv(record, ({ id }) =>
    id !== 't2'
      ? {
          result: { travel_m: 0.31234, peak_height_m: 0.02 },
          grade: { marks: 83, passed: true }
        }
      : null
  );
  expect(csv.split('\r\n')).toEqual([
    'kind,at,what,phase,marks,passed,travel_m,peak_height_m,guess_m,guess_lifted,guess_down,answer,right,model,marks_model',
    `try,2030-05-01T08:15:00.000Z,reed-bay-drag,kept,83,yes,0.3123,0.02,0.4,yes,,,,1.0.0,${MODEL_VERSION}`,
    'try,2030-05-01T08:15:00.000Z,reed-bay-drag,,,,,,,,no,,,1.0.0,',
    'try,2030-05-01T08:15:00.000Z,reed-bay-drag,,91,yes,0.3123,0.02,,,,,,1.3.0,1.3.0',
    'prediction,2030-05-01T08:10:00.000Z,one-foot/predict,,,,,,,,,twice,,,',
    'answer,2030-05-01T08:30:00.000Z,mark-drag/17,,,,,,,,,mud sand,no,1.1.0,',
    'lesson,2030-05-01T08:20:00.000Z,one-foot,,,,,,,,,begun,,,',
    ''
  ]);
});
