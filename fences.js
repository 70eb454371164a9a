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
  course: {
    fence: 'course-is-data',
    may: ['model', 'scoring'],
    pure: true,
    because: 'lessons are data that name scenarios and goals, and know no learner and no screen'
  },
  practice: {
    fence: 'practice-from-marks',
    may: ['scoring', 'course'],
    pure: true,
    because: 'the learner’s record is made of marks and lessons, never of physics'
  },
  sandbox: {
    fence: 'sandbox-knows-no-lesson',
    may: ['model', 'scoring'],
    pure: false,
    because: 'it gets a scenario and hands back a trace, so that every page can use it'
  },
  server: {
    fence: 'server-draws-nothing',
    may: ['model', 'scoring', 'course', 'practice'],
    pure: false,
    because: 'what it stores and grades must not depend on how a browser shows it'
  }
};

/** @param {string} name @returns {string[]} the rooms that this one must not import */
export function closedTo(name) {
  return Object.keys(rooms).filter((other) => other !== name && !rooms[name].may.includes(other));
}

/** Why a pure room has no clock, chance, page or machine: the reason in every purity message. */
export const purity =
  '[fence: pure-room] Pure rooms get time and randomness as arguments and touch no page and no ' +
  'machine, so that the same input gives the same result in the browser, on the server and in tests';
