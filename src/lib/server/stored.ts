import type * as v from 'valibot';
import { DataError, parseData } from '../scoring';
import { storedAssignment, type Assignment } from '../wire';

/** What a row holds as JSON. Throws DataError for what this version cannot read. */
export function parseStored<S extends v.GenericSchema>(schema: S, json: string): v.InferOutput<S> {
  return parseData(schema, JSON.parse(json));
}

/** The same; null where this version cannot read it, so that one bad row spoils no page. */
export function readStored<S extends v.GenericSchema>(
  schema: S,
  json: string
): v.InferOutput<S> | null {
  try {
    return parseStored(schema, json);
  } catch (fault) {
    if (fault instanceof DataError || fault instanceof SyntaxError) return null;
    throw fault;
  }
}

/** Homework by its row. Every try that is sent asks for it, and its challenges take milliseconds. */
const tasks = new Map<string, Assignment>();
/** More than are worked on at a time. */
const MOST_TASKS = 200;

export function storedTask(json: string): Assignment {
  const known = tasks.get(json);
  if (known) return known;
  if (tasks.size >= MOST_TASKS) tasks.clear();
  const read = parseStored(storedAssignment, json);
  tasks.set(json, read);
  return read;
}
