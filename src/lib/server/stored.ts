import type * as v from 'valibot';
import { DataError, parseData } from '../scoring';
import { roomState, storedAssignment } from '../wire';

/** What a row holds as JSON. Throws DataError for what this version cannot read. */
function parseStored<S extends v.GenericSchema>(schema: S, json: string): v.InferOutput<S> {
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

/** More are not looked at at a time. */
const MOST_KEPT = 200;

/** Reads rows that are asked for again and again, and takes milliseconds for each. Nobody writes into them. */
function keeping<S extends v.GenericSchema>(schema: S): (json: string) => v.InferOutput<S> {
  const kept = new Map<string, v.InferOutput<S>>();
  return (json) => {
    const known = kept.get(json);
    if (known) return known;
    if (kept.size >= MOST_KEPT) kept.clear();
    const read = parseStored(schema, json);
    kept.set(json, read);
    return read;
  };
}

/** Every try that is sent asks for its homework. */
export const storedTask = keeping(storedAssignment);
/** Every vote asks for its room. */
export const storedRoom = keeping(roomState);
