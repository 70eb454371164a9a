import { OBJECTIVES } from '../course/items/objectives';
import { DataError, parseData } from '../scoring';
import { assignment, readPacket, within, type Assignment, type Packet } from '../wire';

/** Throws DataError with the path, from `field` on, and the value of the first fault. */
export function parseAssignment(input: unknown, field = ''): Assignment {
  return within(field, () => refusingUnknown(parseData(assignment, input)));
}

/** Reads what came as a link or a file. Throws DataError, for questions that this Feltfoot lacks too. */
export function parsePacket(input: unknown): Packet {
  const packet = readPacket(input);
  if (packet.kind === 'assignment') within(packet.kind, () => refusingUnknown(packet.assignment));
  else within('result.assignment', () => refusingUnknown(packet.result.assignment));
  return packet;
}

function refusingUnknown(read: Assignment): Assignment {
  for (const [i, id] of read.objectives.entries()) {
    if (OBJECTIVES.some((one) => one.id === id)) continue;
    throw new DataError(`objectives.${i}`, id, 'no question is about this');
  }
  return read;
}

/** Letters that set apart a challenge in a guide's own gear. */
const OWN_GEAR = /^-[0-9a-z]{8}$/;

/**
 * In another gear a challenge is another one, and has an id of its own: tries are kept by id.
 * @param suffix eight small letters or digits, new each time
 */
export function ownGearId(id: string, suffix: string): string {
  return `${id}-${suffix}`;
}

/** Whether what was asked is the course's challenge `id`, in whatever gear. */
export function isInAnyGear(asked: string, id: string): boolean {
  return asked === id || (asked.startsWith(id) && OWN_GEAR.test(asked.slice(id.length)));
}
