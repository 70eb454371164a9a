import { isNamed } from '../find';

/** The clients of one homework. */
export interface Group {
  id: string;
  title: string;
  clients: readonly { id: string; nickname: string }[];
}

export interface Options {
  title: string;
  options: { value: string; name: string }[];
}

/** Who can be picked: those of that name; homework without any is left out. */
export function optionsFor(groups: readonly Group[], typed: string): Options[] {
  return groups
    .map(({ id, title, clients }) => ({
      title,
      options: clients
        .filter(({ nickname }) => isNamed(nickname, typed))
        .map((one) => ({ value: `${id}.${one.id}`, name: one.nickname }))
    }))
    .filter(({ options }) => options.length > 0);
}
