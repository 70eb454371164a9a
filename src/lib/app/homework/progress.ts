import { type Assignment, type HomeworkResult, packetOf } from '$lib/wire';
import { parsePacket } from '$lib/practice';
import type { Shelf } from '$lib/shell';
import { forgetWayBack } from './way-back';

const KEY = 'feltfoot-homework-in-hand';
/** The last so many homeworks; older ones have been handed back or given up. */
const MOST_KEPT = 5;

interface Kept {
  assignment: string;
  packet: unknown;
}

/** What was done of this homework so far, or an empty result. */
export function loadProgress(shelf: Shelf, assignment: Assignment, model: string): HomeworkResult {
  const fresh = { assignment, by: '', model, tries: [], answers: [] };
  const kept = readShelf(shelf).find((one) => one.assignment === nameOf(assignment));
  if (!kept) return fresh;
  try {
    const packet = parsePacket(kept.packet);
    return packet.kind === 'result' ? packet.result : fresh;
  } catch {
    return fresh;
  }
}

/** Returns whether it could be kept. */
export function saveProgress(shelf: Shelf, result: HomeworkResult): boolean {
  const assignment = nameOf(result.assignment);
  const others = readShelf(shelf).filter((one) => one.assignment !== assignment);
  const now = { assignment, packet: packetOf({ kind: 'result', result }) };
  try {
    shelf.setItem(KEY, JSON.stringify([...others, now].slice(-MOST_KEPT)));
    return true;
  } catch {
    return false;
  }
}

export function forgetHomework(shelf: Shelf): void {
  shelf.removeItem(KEY);
  forgetWayBack(shelf);
}

function readShelf(shelf: Shelf): Kept[] {
  try {
    const read: unknown = JSON.parse(shelf.getItem(KEY) ?? '[]');
    return Array.isArray(read) ? read.filter((one) => typeof one?.assignment === 'string') : [];
  } catch {
    return [];
  }
}

function nameOf(assignment: Assignment): string {
  return JSON.stringify(assignment);
}
