/** "1 client", "3 clients" */
function counted(count: number, one: string, more = `${one}s`): string {
  return `${count} ${count === 1 ? one : more}`;
}

function listed(parts: readonly string[]): string {
  return parts.length > 1 ? `${parts.slice(0, -1).join(', ')} and ${parts.at(-1)}` : parts[0];
}

/** Of some counts those that are not zero: "2 homeworks, 3 clients and 1 clinic". */
function onlyThere(all: readonly [count: number, one: string, more?: string][]): string[] {
  return all.filter(([count]) => count > 0).map((one) => counted(...one));
}

const NO_WAY_BACK = 'You can’t undo this.';

/** Each says what goes with one tap, and asks. */
export const asks = {
  leave: 'Leave this browser? Homework, clients and clinics stay. Your key opens them again.',
  renew: (passkeys: number) => {
    const gone = listed([
      'the old key',
      ...onlyThere([[passkeys, 'passkey']]),
      'every other browser'
    ]);
    return `Make a new key? It locks out ${gone}. Clients’ links still work.`;
  },
  removePasskey: 'Remove this passkey? That device will need the key to get in.',
  endSession: 'End it? That browser will need the key to get in.',
  deleteSpace: (name: string, homework: readonly { clients: number }[], clinics: number) => {
    const clients = homework.reduce((sum, one) => sum + one.clients, 0);
    const gone = onlyThere([
      [homework.length, 'homework'],
      [clients, 'client'],
      [clinics, 'clinic']
    ]);
    const all = listed([...gone, 'the space itself']);
    return `Delete “${name}”? This deletes ${all}. ${NO_WAY_BACK}`;
  },
  deleteHomework: (title: string, clients: number) => {
    const gone = listed(['its link', ...onlyThere([[clients, 'client']])]);
    const sent = clients > 0 ? ', with all they sent' : '';
    return `Delete “${title}”? This deletes ${gone}${sent}. ${NO_WAY_BACK}`;
  },
  deleteClient: (name: string, tries: number, answers: number) => {
    const gone = onlyThere([
      [tries, 'try', 'tries'],
      [answers, 'answer']
    ]);
    const all = listed([...gone, 'what you wrote']);
    return `Delete ${name}? This deletes ${all}. ${NO_WAY_BACK}`;
  },
  deleteClinic: (title: string, phones: number) => {
    const gone = onlyThere([[phones, 'phone’s answers', 'phones’ answers']]);
    const all = listed([...gone, 'its summary', 'the links to take it home']);
    return `Delete “${title}”? This deletes ${all}. ${NO_WAY_BACK}`;
  }
};

/** Why the space is not left. */
export const SAVE_FIRST = 'Save your key first. Without it nobody gets back in.';
