import { describe, expect, test } from 'vitest';
import { dropUnsaved, keepUnsaved, unsavedKeys } from '../../../src/lib/app/guide/unsaved-keys';
import { asks } from '../../../src/lib/app/guide/what-goes';

describe('a key that was told once', () => {
  const [reed, bay] = [
    { name: 'Reedmere', secret: 'secret-of-reed' },
    { name: 'Bay', secret: 'secret-of-bay' }
  ];

  function shelf() {
    const kept = new Map<string, string>();
    return {
      getItem: (key: string) => kept.get(key) ?? null,
      setItem: (key: string, value: string) => void kept.set(key, value)
    };
  }

  test('is kept until it is saved, beside those of other spaces', () => {
    const storage = shelf();
    keepUnsaved(storage, reed);
    keepUnsaved(storage, bay);
    expect(unsavedKeys(storage)).toEqual([bay, reed]);
    dropUnsaved(storage, bay);
    expect(unsavedKeys(storage)).toEqual([reed]);
  });

  test('is none where what is kept cannot be read', () => {
    expect(unsavedKeys({ getItem: () => '{"name":1}', setItem: () => {} })).toEqual([]);
  });
});

describe('before something goes, it is said', () => {
  test.each([
    [
      asks.deleteSpace('Reedmere', [{ clients: 2 }, { clients: 1 }], 1),
      'Delete “Reedmere”? This deletes 2 homeworks, 3 clients, 1 clinic and the space itself. You can’t undo this.'
    ],
    [
      asks.deleteSpace('Bay', [], 0),
      'Delete “Bay”? This deletes the space itself. You can’t undo this.'
    ],
    [
      asks.deleteHomework('Before Saturday', 3),
      'Delete “Before Saturday”? This deletes its link and 3 clients, with all they sent. You can’t undo this.'
    ],
    [
      asks.deleteClient('Bo', 1, 0),
      'Delete Bo? This deletes 1 try and what you wrote. You can’t undo this.'
    ],
    [
      asks.deleteClinic('May meeting', 6),
      'Delete “May meeting”? This deletes 6 phones’ answers, its summary and the links to take it home. You can’t undo this.'
    ],
    [
      asks.renew(1),
      'Make a new key? It locks out the old key, 1 passkey and every other browser. Clients’ links still work.'
    ]
  ])('%s', (said, expected) => expect(said).toBe(expected));
});
