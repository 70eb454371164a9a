import { expect, test } from 'vitest';
import { grade } from '../../src/lib/compute/jobs/grade';
import { judgeQuestion } from '../../src/lib/compute/jobs/question';
import { itemOf } from '../../src/lib/course/items';
import { MODEL_VERSION } from '../../src/lib/model';
import { exportName, homeworkTable } from '../../src/lib/server/export';
import { evenHand, sampleChallenge, sampleTask } from './samples';
import type {
  ClientProgress,
  KeptAnswer,
  KeptTry,
  LawnDrags,
  SubmittedTry
} from '../../src/lib/wire';

const NOW = '2031-05-01T08:00:00.000Z';
const kept = { received_at: NOW, id: 'of-sixteen-letters' };
const input = evenHand(sampleChallenge, 9, 3);
const graded = {
  ...grade({ challenge: sampleChallenge, input }),
  agrees: true,
  model: MODEL_VERSION
};

function tried(at: string, said: Partial<SubmittedTry> = {}): KeptTry {
  const challenge = sampleChallenge.id;
  const made = { input, challenge, marks: graded.marks, model: MODEL_VERSION };
  return { ...kept, graded, sent: { kind: 'try', id: kept.id, at, ...made, ...said } };
}

/** Of a question about the season that needs no run of the model. */
function answered(): KeptAnswer {
  const { answer } = itemOf('mood', 7);
  if (answer.form !== 'choose') throw new Error(answer.form);
  const given = { item: 'mood', seed: 7, given: answer.key };
  const judged = judgeQuestion({ given, objectives: ['season'] });
  const model = MODEL_VERSION;
  return {
    ...kept,
    sent: { ...given, kind: 'answer', id: kept.id, right: true, report: 'knew', model, at: NOW },
    graded: { ...judged, agrees: true, model }
  };
}

function client(
  nickname: string,
  tries: KeptTry[],
  answers: KeptAnswer[] = [],
  joined_at = NOW,
  lawn: LawnDrags[] = []
): ClientProgress {
  const one = { challenge: sampleChallenge, tries, passed: 0, isDone: true, level: null };
  const about = {
    objective: 'season',
    answers,
    asked: 1,
    right: 1,
    guessed: 0,
    isDone: true,
    backTo: null
  };
  return {
    client: { id: joined_at, nickname, joined_at, note: '' },
    ...{ lessons: [], challenges: [one], objectives: [about], isDone: true },
    ...{ lawn: { meant_m: 0.3048, sets: lawn }, words: [] },
    log: [],
    ...{ disagreements: 0, setAside: 0, lastSeen: NOW, lastDone: NOW }
  };
}

/** Cells by column; commas inside quotes are none of the table's. */
function rowsOf(text: string): Record<string, string>[] {
  const cellsOf = (line: string) => [...line.matchAll(/("(?:[^"]|"")*"|[^,]*)(?:,|$)/g)];
  const lines = text.slice(1).trimEnd().split('\r\n').map(cellsOf);
  const [head, ...rows] = lines.map((cells) => cells.map(([, cell]) => cell));
  return rows.map((cells) => Object.fromEntries(head.map((name, i) => [name, cells[i]])));
}

test('a table has a line a try or answer in the guide’s units and by their clock', () => {
  const guessed = tried('2031-05-01T08:05:00.000Z', { guess_m: 0.3048, guess_lifted: false });
  const clients = [client('=cmd()', [tried(NOW), guessed], [answered()])];
  const reader = { units: 'imperial', zone: 'America/Chicago' } as const;
  const text = homeworkTable(clients, sampleTask, reader);
  // Without the mark a spreadsheet reads the letters of names as those of another country.
  expect(text.charCodeAt(0)).toBe(0xfeff);
  const tip_in = `${Math.round(((graded.mark?.tip_m ?? 0) / 0.0254) * 100) / 100}`;
  expect(rowsOf(text)).toMatchObject([
    {
      ...{ Client: "'=cmd()", Kind: 'try', Task: 'Drag it one foot', Made: '2031-05-01 03:00' },
      ...{ Try: '1', 'Jig hidden': 'no', Jig: '5/8 oz', Depth: '10 ft', Late: 'no', Guess: '' },
      ...{ Figure: 'How far the jig went', Unit: 'in', 'Asked from': '10.03', 'Asked to': '13.97' },
      ...{ 'Tip went': tip_in, 'Tip unit': 'in', 'Phone said otherwise': '' },
      ...{ 'All goals': expect.stringMatching(/^"?Travel: .*; On the bottom: /), Question: '' }
    },
    { Made: '2031-05-01 03:05', Try: '2', 'Jig hidden': 'yes', Guess: '"1 ft, stayed down"' },
    {
      ...{ Client: "'=cmd()", Kind: 'answer', Right: 'yes', 'Came by': 'knew' },
      Question: expect.stringMatching(/ .*[?.]"?$/)
    }
  ]);
});

test('what a phone said otherwise stands beside what counts, and else nothing does', () => {
  const other = { ...tried(NOW, { marks: 99 }), graded: { ...graded, agrees: false } };
  const [row] = rowsOf(
    homeworkTable([client('Ina', [other])], sampleTask, { units: 'imperial', zone: 'UTC' })
  );
  expect(row).toMatchObject({ Marks: `${graded.marks}`, 'Phone said otherwise': '99' });
});

test('drags on the lawn stand beside the tries, each a line in the same unit', () => {
  const moved_m = [0.3048, 0.4064, ...Array(8).fill(0.254)];
  const measured = client('Ina', [tried(NOW)], [], NOW, [{ moved_m, at: NOW }]);
  const rows = rowsOf(
    homeworkTable([measured], sampleTask, { units: 'imperial', zone: 'America/Chicago' })
  ).filter(({ Kind }) => Kind === 'real rod');
  expect(rows).toHaveLength(10);
  expect(rows[1]).toMatchObject({
    ...{ Client: 'Ina', Made: '2031-05-01 03:00', Try: '2', Reached: '16', Unit: 'in' },
    ...{ 'Asked from': '12', 'Asked to': '12' }
  });
  // One column is one figure: a spreadsheet sorts real rod and screen together.
  const screen = rowsOf(
    homeworkTable([client('Ina', [tried(NOW)])], sampleTask, { units: 'imperial', zone: 'UTC' })
  );
  expect(rows[1].Figure).toBe(screen[0].Figure);
});

test('two of one name are told apart, and what was done late says so', () => {
  const late = client('Wim', [tried('2031-05-10T12:00:00.000Z')]);
  const other = client('wim', [tried(NOW)], [], '2031-05-02T09:30:00.000Z');
  const rows = rowsOf(homeworkTable([late, other], sampleTask, { units: 'metric', zone: 'UTC' }));
  expect(rows.map((row) => [row.Client, row.Late, row.Unit])).toEqual([
    ['Wim 1 (first seen 2031-05-01 08:00)', 'yes', 'cm'],
    ['wim 2 (first seen 2031-05-02 09:30)', 'no', 'cm']
  ]);
});

test('its file is named by the homework and the reader’s day', () => {
  const title = 'Vor Samstag: Öl & Jig';
  const evening = '2031-05-10T01:00:00.000Z';
  expect(exportName(title, evening, 'UTC', 'csv')).toBe('vor-samstag-ol-jig-2031-05-10.csv');
  expect(exportName(title, evening, 'America/Chicago', 'json')).toBe(
    'vor-samstag-ol-jig-2031-05-09.json'
  );
});

test('what a client wrote is a line, and so is who has not begun', () => {
  const wrote = { ...client('Ina', []), words: [{ id: 'w', text: 'The tape slid.', at: NOW }] };
  const table = homeworkTable([wrote, client('Bo', [])], sampleTask, {
    units: 'metric',
    zone: 'UTC'
  });
  expect(rowsOf(table).map(({ Client, Kind, Answer }) => [Client, Kind, Answer])).toEqual([
    ['Ina', 'word', 'The tape slid.'],
    ['Bo', 'not begun', '']
  ]);
});
