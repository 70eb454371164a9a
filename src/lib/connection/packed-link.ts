import { DataError, parseData } from '$lib/scoring';
import type * as v from 'valibot';
import { packedText, unpackedText } from './packed-text';

/** Refused before it is unpacked, characters: ten times the longest that we make. */
const LONGEST_FRAGMENT = 20_000;

/** Something that goes as a link, whole: whoever has the address needs nothing else of it. */
export interface LinkKind<S extends v.GenericSchema> {
  /** What its fragment starts with; the number is that of this packing. */
  mark: string;
  /** "card", as in "is no card". */
  name: string;
  schema: S;
}

export async function linkFragment<S extends v.GenericSchema>(
  { mark }: LinkKind<S>,
  thing: v.InferInput<S>
): Promise<string> {
  return mark + (await packedText(JSON.stringify(thing)));
}

/** Reads a fragment, with or without its #. Throws DataError naming field and value. */
export async function readLinkFragment<S extends v.GenericSchema>(
  { mark, name, schema }: LinkKind<S>,
  fragment: string
): Promise<v.InferOutput<S>> {
  const text = fragment.replace(/^#/, '');
  const none = new DataError('link', text.slice(0, 12), `is no ${name}`);
  if (text.length > LONGEST_FRAGMENT) {
    throw new DataError('link', text.length, `must have ${LONGEST_FRAGMENT} letters or fewer`);
  }
  if (!text.startsWith(mark)) throw none;
  const json = await unpackedText(text.slice(mark.length));
  let thing: unknown;
  try {
    thing = JSON.parse(json);
  } catch {
    throw none;
  }
  return parseData(schema, thing);
}
