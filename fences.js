// The rooms of src/lib and what each may import of ours. ESLint reads it for every import statement,
// dependency-cruiser for what statements do not show: cycles and import().

/** @typedef {{ fence: string, may: string[], pure: boolean, because: string }} Room */

/** @type {Record<string, Room>} */
export const rooms = {
  model: {
    fence: 'model-alone',
    may: [],
    pure: true,
    because: 'the physics must be checkable and reusable without anything of ours around it'
  },
  scoring: {
    fence: 'scoring-from-model',
    may: ['model'],
    pure: true,
    because:
      'marks depend on the trace and the goal alone, so that a server grades the same try alike'
  },
  wire: {
    fence: 'wire-is-every-boundary',
    may: ['model', 'scoring'],
    pure: true,
    because:
      'what crosses a boundary has one schema, which must not depend on who sends, stores or shows it'
  },
  course: {
    fence: 'course-is-data',
    may: ['model', 'scoring'],
    pure: true,
    because: 'lessons are data that name scenarios and goals, and know no learner and no screen'
  },
  practice: {
    fence: 'practice-from-marks',
    may: ['scoring', 'wire', 'course'],
    pure: true,
    because: 'the learner’s record is made of marks and lessons, never of physics'
  },
  fit: {
    fence: 'fit-from-model',
    may: ['model', 'scoring', 'wire'],
    pure: true,
    because:
      'what an outfit is told to be must follow from the model and the measurements alone, as the session’s schema has them'
  },
  film: {
    fence: 'film-alone',
    may: [],
    pure: true,
    because:
      'what a length in a picture is worth must not depend on what anyone hopes to find with it'
  },
  compute: {
    fence: 'compute-from-pure-rooms',
    may: ['model', 'scoring', 'wire', 'course', 'practice', 'fit'],
    pure: false,
    because:
      'a job runs in a browser, a thread or a page alike, and so knows none of them: it gets plain data and gives plain data'
  },
  sandbox: {
    fence: 'sandbox-knows-no-lesson',
    may: ['model', 'scoring', 'wire', 'film'],
    pure: false,
    because: 'it gets a scenario and hands back a trace, so that every page can use it'
  },
  connection: {
    fence: 'connection-knows-no-errand',
    may: ['scoring', 'wire'],
    pure: false,
    because: 'it knows how to reach a server or a phone, not what is said to it'
  },
  learner: {
    fence: 'learner-keeps-the-record',
    may: ['wire', 'practice'],
    pure: false,
    because: 'the learner’s record is kept without knowing who asks for it'
  },
  shell: {
    fence: 'shell-is-around-every-page',
    may: ['model', 'scoring', 'wire', 'practice'],
    pure: false,
    because: 'every page stands in it, so it must not pull in what only some pages show'
  },
  app: {
    fence: 'app-is-what-pages-are-made-of',
    may: [
      'model',
      'scoring',
      'wire',
      'course',
      'practice',
      'fit',
      'film',
      'compute',
      'sandbox',
      'connection',
      'learner',
      'shell'
    ],
    pure: false,
    because: 'what a page shows is put together here, so that a page itself stays a few lines'
  },
  server: {
    fence: 'server-draws-nothing',
    may: ['model', 'scoring', 'wire', 'course', 'practice', 'compute'],
    pure: false,
    because: 'what it stores and grades must not depend on how a browser shows it'
  }
};

/** @param {string} name @returns {string[]} the rooms that this one must not import */
export function closedTo(name) {
  return Object.keys(rooms).filter((other) => other !== name && !rooms[name].may.includes(other));
}

/** @typedef {{ may: string[], because: string }} Feature */

/**
 * The features of src/lib/app and the siblings each may use, through their index only. The order is
 * from the ground up, so no two can ever use each other.
 * @type {Record<string, Feature>}
 */
export const features = {
  trust: {
    may: [],
    because: 'how far to trust the model is said without anything that was done with it'
  },
  try: {
    may: [],
    because: 'a try is the same wherever it is made, so it knows no lesson, homework or clinic'
  },
  record: {
    may: ['try'],
    because: 'the record is listed, saved and erased without a lesson, a guide or a server'
  },
  gear: {
    may: [],
    because: 'a rod, a line and a jig are the same wherever they are chosen'
  },
  testbench: {
    may: ['gear'],
    because: 'gear is tested without a lesson, a try or a guide'
  },
  club: {
    may: ['gear', 'testbench'],
    because: 'what several people measured is pooled without a server or a guide'
  },
  lesson: {
    may: ['try', 'gear'],
    because: 'a lesson is done without a guide, a question or a server'
  },
  quiz: {
    may: [],
    because: 'a question is asked alike in a review, in homework and in a clinic'
  },
  ruler: {
    may: ['try', 'gear'],
    because: 'a hand is described from tries, whoever asked for them'
  },
  home: {
    may: ['lesson', 'quiz', 'ruler'],
    because: 'what to do today is told from all that can be done'
  },
  card: {
    may: ['gear', 'ruler', 'plan'],
    because: 'a card is of an outfit, a hand and a planned day, whoever takes it along'
  },
  plan: {
    may: ['gear', 'ruler'],
    because: 'a day is planned for an outfit and a hand, and knows no guide’s desk'
  },
  log: {
    may: [],
    because: 'what was fished is kept without a lesson, a guide or a server'
  },
  film: {
    may: [],
    because: 'a clip is measured without a lesson, a try or a server'
  },
  water: {
    may: ['try', 'gear'],
    because: 'free practice has no task'
  },
  explore: {
    may: ['gear', 'ruler', 'water'],
    because: 'a chart is of gear, water and a hand, and no lesson asks for it'
  },
  homework: {
    may: ['try', 'gear', 'quiz', 'ruler', 'log'],
    because: 'the client’s side of homework must work without a guide’s pages'
  },
  guide: {
    may: ['gear', 'homework'],
    because: 'a guide looks at homework, and runs no clinic from the desk'
  },
  clinic: {
    may: ['try', 'record', 'quiz'],
    because: 'a hall of phones must not load what a guide’s desk needs'
  }
};

/** @param {string} name @returns {string[]} the siblings that this feature must not import */
export function siblingsClosedTo(name) {
  return Object.keys(features).filter(
    (other) => other !== name && !features[name].may.includes(other)
  );
}

/** Why a pure room has no clock, chance, page or machine: the reason in every purity message. */
export const purity =
  '[fence: pure-room] Pure rooms get time and randomness as arguments and touch no page and no ' +
  'machine, so that the same input gives the same result in the browser, on the server and in tests';
