import { momentText } from '$lib/shell';
import { isNamed, sharedNames } from './find';

/** The clients of one homework. */
export interface Group {
  id: string;
  title: string;
  clients: readonly { id: string; nickname: string; joined_at: string }[];
}

export interface PickerOptions {
  title: string;
  options: { value: string; name: string }[];
}

/**
 * Who can be picked: those of that name; homework without any is left out. Two of one name are told
 * apart by when they were first seen.
 */
export function optionsFor(groups: readonly Group[], typed: string): PickerOptions[] {
  return groups
    .map(({ id, title, clients }) => {
      const shared = sharedNames(clients);
      const nameOf = ({ nickname, joined_at }: Group['clients'][number]) =>
        shared.has(nickname) ? `${nickname}, first seen ${momentText(joined_at)}` : nickname;
      const options = clients
        .filter(({ nickname }) => isNamed(nickname, typed))
        .map((one) => ({ value: `${id}.${one.id}`, name: nameOf(one) }));
      return { title, options };
    })
    .filter(({ options }) => options.length > 0);
}
